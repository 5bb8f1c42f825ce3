import django.db.models.deletion
from django.db import migrations, models

import studio.domain.ids


class Migration(migrations.Migration):

    dependencies = [
        ('firings', '0002_keep_service_fees_and_answers'),
        ('pieces', '0011_ask_clients'),
        ('studio', '0004_keep_glaze_batches_and_frozen_copies'),
    ]

    operations = [
        migrations.CreateModel(
            name='Share',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('kind', models.CharField(choices=[('client', 'Client'), ('visitor', 'Visitor')], default='client', max_length=7)),
                ('shows', models.JSONField(default=list)),
                ('photo_ids', models.JSONField(default=list)),
                ('people', models.CharField(choices=[('nobody', 'Nobody'), ('initials', 'Initials'), ('first_name', 'First Name')], default='initials', max_length=10)),
                ('token_hash', models.CharField(max_length=64, unique=True)),
                ('made_at', models.DateTimeField()),
                ('expires_at', models.DateTimeField()),
                ('revoked_at', models.DateTimeField(null=True)),
                ('commission', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='shares', to='pieces.commission')),
                ('frozen', models.ForeignKey(null=True, on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.frozencopy')),
                ('made_by', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.member')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
        ),
        migrations.CreateModel(
            name='ShareOpened',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('opened_at', models.DateTimeField()),
                ('share', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='openings', to='firings.share')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
        ),
        migrations.AddIndex(
            model_name='share',
            index=models.Index(fields=['commission', '-made_at'], name='share_by_order'),
        ),
        migrations.AddConstraint(
            model_name='shareopened',
            constraint=models.UniqueConstraint(fields=('share', 'opened_at'), name='opened_once_a_quarter'),
        ),
    ]
