from django.db import migrations

from studio.domain.finding import folded


def fold(apps, schema_editor):
    pieces = apps.get_model('pieces', 'Piece')
    rows = []
    for row in pieces.objects.only('mark').iterator(chunk_size=1000):
        row.find_key = folded(row.mark)
        rows.append(row)
    pieces.objects.bulk_update(rows, ['find_key'], batch_size=500)


class Migration(migrations.Migration):

    dependencies = [
        ('pieces', '0008_keep_marks_folded_for_finding'),
    ]

    operations = [
        migrations.RunPython(fold, migrations.RunPython.noop),
    ]
