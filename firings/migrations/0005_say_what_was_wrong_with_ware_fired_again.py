from django.db import migrations, models

from studio.models.append_only import install_append_only


class Migration(migrations.Migration):
    """A ticket says what was wrong with the ware, and what was mended since."""

    dependencies = [
        ("firings", "0004_drop_what_nothing_used"),
    ]

    operations = [
        migrations.AddField(
            model_name="firingticket",
            name="fault",
            field=models.CharField(
                blank=True,
                choices=[
                    ("crawled", "Crawled"),
                    ("blistered", "Blistered"),
                    ("pinholed", "Pinholed"),
                    ("crazed", "Crazed"),
                    ("underfired", "Underfired"),
                    ("thin", "Thin"),
                    ("ran", "Ran"),
                    ("colour", "Colour"),
                    ("other", "Other"),
                ],
                max_length=10,
            ),
        ),
        migrations.AddField(
            model_name="firingticket",
            name="mended",
            field=models.JSONField(default=list),
        ),
        install_append_only("firings_firingticket"),
    ]
