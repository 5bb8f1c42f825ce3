from django.db import migrations

from studio.models.append_only import install_append_only


class Migration(migrations.Migration):
    """Which mould parts a pressing used is as much a fact as the pressing."""

    dependencies = [
        ("moulds", "0002_add_habits_of_sets"),
    ]

    operations = [
        install_append_only("moulds_pressing_mould_parts"),
    ]
