"""What the studio's own looks taught: reckoned from facts, kept so that they need not be again."""

from django.db import models

from studio.models import Studio, StudioOwned

from .pieces import Part, Piece


class Lesson(StudioOwned):
    """What was seen of one part, beside what 256 draws of it say.

    `key` tells the part's story, its air and its looks, up to the last of them, from any others;
    `air_known_to` is the last reading used: hours after it were forecast.
    """

    export_order = None

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="lessons")
    part = models.OneToOneField(Part, on_delete=models.PROTECT, related_name="lesson")
    pressed_at = models.DateTimeField()
    last_look_at = models.DateTimeField()
    air_known_to = models.DateTimeField(null=True)
    key = models.CharField(max_length=64)
    looks = models.PositiveSmallIntegerField()
    told = models.JSONField()
    answers = models.BinaryField()


class Learned(models.Model):
    """What a studio believes of its clays, rooms, covers and hands by now.

    `seq` is the journal number up to which its facts were looked at; `checks` counts the looks on
    each clay.
    """

    studio = models.OneToOneField(
        Studio, primary_key=True, on_delete=models.PROTECT, related_name="learned"
    )
    seq = models.PositiveBigIntegerField(default=0)
    belief = models.JSONField()
    digest = models.CharField(max_length=16)
    checks = models.JSONField(default=dict)
    learned_at = models.DateTimeField()
