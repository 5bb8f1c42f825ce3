from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('pieces', '0007_say_seen_and_fine'),
    ]

    operations = [
        migrations.AddField(
            model_name='piece',
            name='find_key',
            field=models.CharField(default='', max_length=160),
            preserve_default=False,
        ),
    ]
