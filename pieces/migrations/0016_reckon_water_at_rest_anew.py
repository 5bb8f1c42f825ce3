"""Forget what was reckoned with water at rest alike in every piece: it is reckoned anew."""

from django.db import migrations


def forget(apps, _editor):
    for name in ("Forecast", "Lesson", "Learned"):
        apps.get_model("pieces", name).objects.all().delete()


class Migration(migrations.Migration):
    dependencies = [("pieces", "0015_cover_parts")]

    operations = [migrations.RunPython(forget, migrations.RunPython.noop)]
