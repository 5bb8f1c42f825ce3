"""Forget what was reckoned by the model of four unknowns: facts stay, it is reckoned anew."""

from django.db import migrations


def forget(apps, _editor):
    for name in ("Forecast", "Lesson", "Learned"):
        apps.get_model("pieces", name).objects.all().delete()


class Migration(migrations.Migration):
    dependencies = [("pieces", "0013_keep_advice_on_covers")]

    operations = [migrations.RunPython(forget, migrations.RunPython.noop)]
