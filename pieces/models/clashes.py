"""Two acts that cannot both be true, and what a person said about them."""

from django.db import models

from studio.models import Fact, StudioOwned

from .pieces import Piece


class Clash(StudioOwned):
    """An open question about one piece; its id is made from the ids of its acts."""

    class State(models.TextChoices):
        OPEN = "open"
        ANSWERED = "answered"
        GONE = "gone"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="clashes")
    kind = models.CharField(max_length=20)
    state = models.CharField(max_length=10, choices=State, default=State.OPEN, db_index=True)
    act_ids = models.JSONField(default=list)
    stands_meanwhile = models.JSONField(default=dict)
    opened_at = models.DateTimeField()


class ClashAnswer(Fact):
    """Which story stands: the first answer counts. `left_out` names the act that did not."""

    class Choice(models.TextChoices):
        FIRST = "first"
        SECOND = "second"
        BOTH = "both"

    clash = models.ForeignKey(Clash, on_delete=models.PROTECT, related_name="answers")
    choice = models.CharField(max_length=6, choices=Choice)
    left_out = models.UUIDField(null=True)
