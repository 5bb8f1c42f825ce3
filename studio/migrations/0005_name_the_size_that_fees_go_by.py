from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('studio', '0004_keep_glaze_batches_and_frozen_copies'),
    ]

    operations = [
        migrations.AddField(
            model_name='studiosettings',
            name='fee_measured',
            field=models.CharField(choices=[('wet', 'Wet'), ('dry', 'Dry'), ('bisque', 'Bisque'), ('fired', 'Fired')], default='dry', max_length=6),
        ),
    ]
