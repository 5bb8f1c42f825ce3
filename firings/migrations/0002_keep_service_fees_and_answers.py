import django.db.models.deletion
from django.db import migrations, models

import studio.domain.ids
from studio.models.append_only import install_append_only


class Migration(migrations.Migration):

    dependencies = [
        ('firings', '0001_initial'),
        ('pieces', '0007_say_seen_and_fine'),
        ('studio', '0005_name_the_size_that_fees_go_by'),
    ]

    operations = [
        migrations.AddField(
            model_name='firingticket',
            name='fault',
            field=models.CharField(blank=True, choices=[('crawled', 'Crawled'), ('blistered', 'Blistered'), ('pinholed', 'Pinholed'), ('crazed', 'Crazed'), ('underfired', 'Underfired'), ('thin', 'Thin'), ('ran', 'Ran'), ('colour', 'Colour'), ('other', 'Other')], max_length=10),
        ),
        migrations.AddField(
            model_name='firingticket',
            name='mended',
            field=models.CharField(blank=True, max_length=200),
        ),
        migrations.AddField(
            model_name='load',
            name='warm_hold_h',
            field=models.FloatField(default=0.0),
        ),
        migrations.AddField(
            model_name='loadevent',
            name='looked_at',
            field=models.JSONField(default=list),
        ),
        migrations.CreateModel(
            name='LayerTurn',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('reason', models.CharField(max_length=200)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('load', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='turns', to='firings.load')),
                ('piece', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='turns', to='pieces.piece')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='LoadClashAnswer',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('clash_id', models.UUIDField(db_index=True)),
                ('choice', models.CharField(choices=[('first', 'First'), ('second', 'Second'), ('both', 'Both')], max_length=6)),
                ('act_ids', models.JSONField(default=list)),
                ('left_out', models.UUIDField(null=True)),
                ('beside', models.UUIDField(null=True)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('load', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='clash_answers', to='firings.load')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='LoadFees',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('basis', models.CharField(max_length=6)),
                ('currency', models.CharField(max_length=3)),
                ('cost_minor', models.PositiveIntegerField(null=True)),
                ('per_litre_minor', models.PositiveIntegerField(null=True)),
                ('measured', models.CharField(max_length=6)),
                ('shares', models.JSONField(default=list)),
                ('words', models.CharField(blank=True, max_length=200)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('load', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='fees', to='firings.load')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='KilnService',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('kind', models.CharField(choices=[('elements', 'Elements'), ('ohms', 'Ohms'), ('sensor', 'Sensor'), ('vent', 'Vent'), ('relay', 'Relay'), ('shelves', 'Shelves'), ('note', 'Note')], max_length=8)),
                ('over_new_fraction', models.FloatField(null=True)),
                ('shelf_count', models.PositiveSmallIntegerField(null=True)),
                ('words', models.CharField(blank=True, max_length=200)),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('kiln', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='services', to='firings.kiln')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'indexes': [models.Index(fields=['kiln', 'happened_at'], name='kiln_service_by_time')],
            },
        ),
        install_append_only("firings_firingticket", "firings_loadevent", "firings_layerturn", "firings_loadclashanswer", "firings_loadfees", "firings_kilnservice"),
    ]
