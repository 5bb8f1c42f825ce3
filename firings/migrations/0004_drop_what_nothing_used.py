from django.db import migrations

from studio.models.append_only import install_append_only


class Migration(migrations.Migration):
    """Nothing ever wrote these: no row is lost."""

    dependencies = [
        ('firings', '0003_share_orders_by_links'),
    ]

    operations = [
        migrations.DeleteModel(name='LayerTurn'),
        migrations.DeleteModel(name='LoadClashAnswer'),
        migrations.RemoveField(model_name='firingticket', name='fault'),
        migrations.RemoveField(model_name='firingticket', name='mended'),
        migrations.RemoveField(model_name='load', name='warm_hold_h'),
        migrations.RemoveField(model_name='loadevent', name='looked_at'),
        install_append_only("firings_firingticket", "firings_loadevent"),
    ]
