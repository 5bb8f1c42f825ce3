import django.db.models.deletion
from django.db import migrations, models

import studio.domain.ids
from studio.models.append_only import install_append_only


class Migration(migrations.Migration):

    dependencies = [
        ('pieces', '0010_name_glaze_batches_of_dips_and_reports'),
        ('studio', '0003_keep_found_ware_for_some_days'),
    ]

    operations = [
        migrations.CreateModel(
            name='Approval',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('about', models.CharField(choices=[('colour', 'Colour'), ('pattern', 'Pattern'), ('shape', 'Shape'), ('size', 'Size'), ('glaze', 'Glaze'), ('other', 'Other')], max_length=8)),
                ('question', models.CharField(blank=True, max_length=300)),
                ('waits', models.CharField(choices=[('shaping', 'Shaping'), ('bisque', 'Bisque'), ('glazing', 'Glazing'), ('delivery', 'Delivery')], max_length=8)),
                ('due_date', models.DateField()),
                ('commission', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='approvals', to='pieces.commission')),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        migrations.CreateModel(
            name='ApprovalAnswer',
            fields=[
                ('id', models.UUIDField(default=studio.domain.ids.uuid7, primary_key=True, serialize=False)),
                ('happened_at', models.DateTimeField()),
                ('answer', models.CharField(choices=[('yes', 'Yes'), ('no', 'No'), ('let_go', 'Let Go')], max_length=6)),
                ('through', models.CharField(choices=[('link', 'Link'), ('told', 'Told')], max_length=4)),
                ('share_id', models.UUIDField(null=True)),
                ('approval', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='answers', to='pieces.approval')),
                ('entry', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.journalentry')),
                ('studio', models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name='+', to='studio.studio')),
            ],
            options={
                'abstract': False,
            },
        ),
        install_append_only("pieces_approval", "pieces_approvalanswer"),
    ]
