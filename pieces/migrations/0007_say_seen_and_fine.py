from django.db import migrations, models

from studio.models.append_only import install_append_only


class Migration(migrations.Migration):

    dependencies = [
        ('pieces', '0006_take_orders_and_found_ware'),
    ]

    operations = [
        migrations.AlterField(
            model_name='touchcheck',
            name='feel',
            field=models.CharField(choices=[('fine', 'Fine'), ('soft', 'Soft'), ('leather_hard', 'Leather Hard'), ('too_stiff', 'Too Stiff'), ('bone_dry', 'Bone Dry')], max_length=14),
        ),
        install_append_only("pieces_touchcheck"),
    ]
