import django.db.models.deletion
from django.db import migrations, models

import studio.domain.ids
from studio.models.append_only import install_append_only


class Migration(migrations.Migration):
    """Somebody sets the rule of the queue aside for a piece, and says why."""

    dependencies = [
        ('firings', '0005_say_what_was_wrong_with_ware_fired_again'),
        ('pieces', '0014_reckon_drying_anew'),
        ('studio', '0008_say_how_the_air_moves'),
    ]

    operations = [
        migrations.CreateModel(
            name='QueueTurn',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('kind', models.CharField(choices=[('bisque', 'Bisque'), ('glaze', 'Glaze'), ('test', 'Test')], max_length=6)),
                ('reason', models.CharField(max_length=200)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('piece', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='queue_turns', to='pieces.piece')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        install_append_only("firings_queueturn"),
    ]
