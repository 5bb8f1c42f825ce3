"""What the client is asked before the work goes on, and what they said."""

from django.db import models

from .commissions import Commission, OrderFact


class Approval(OrderFact):
    """The client is asked for a yes or a no by a day; `waits` is what does not go on without it."""

    class About(models.TextChoices):
        COLOUR = "colour"
        PATTERN = "pattern"
        SHAPE = "shape"
        SIZE = "size"
        GLAZE = "glaze"
        OTHER = "other"

    class Waits(models.TextChoices):
        SHAPING = "shaping"
        BISQUE = "bisque"
        GLAZING = "glazing"
        DELIVERY = "delivery"

    commission = models.ForeignKey(Commission, on_delete=models.PROTECT, related_name="approvals")
    about = models.CharField(max_length=8, choices=About)
    question = models.CharField(max_length=300, blank=True)
    waits = models.CharField(max_length=8, choices=Waits)
    due_date = models.DateField()


class ApprovalAnswer(OrderFact):
    """What was answered: by the client through a link, or as somebody here was told.

    The first stands until its own teller corrects it. `share_id` is the link's, of an app above.
    """

    class Answer(models.TextChoices):
        YES = "yes"
        NO = "no"
        LET_GO = "let_go"

    class Through(models.TextChoices):
        LINK = "link"
        TOLD = "told"

    approval = models.ForeignKey(Approval, on_delete=models.PROTECT, related_name="answers")
    answer = models.CharField(max_length=6, choices=Answer)
    through = models.CharField(max_length=4, choices=Through)
    share_id = models.UUIDField(null=True)
