"""Links by which somebody without an account sees one order, or one history kept as it was."""

from django.db import models

from pieces.models import Commission
from studio.models import FrozenCopy, Member, StudioOwned


class Share(StudioOwned):
    """A link to what was chosen of an order; of its key only the hash is kept.

    `shows` lists what a client sees, from `firings.domain.client_words.ITEMS`; a visitor sees the
    history in `frozen`. It is for its holder alone: it names no other client, price or note.
    """

    class Kind(models.TextChoices):
        CLIENT = "client"
        VISITOR = "visitor"

    class People(models.TextChoices):
        NOBODY = "nobody"
        INITIALS = "initials"
        FIRST_NAME = "first_name"

    commission = models.ForeignKey(Commission, on_delete=models.PROTECT, related_name="shares")
    kind = models.CharField(max_length=7, choices=Kind, default=Kind.CLIENT)
    shows = models.JSONField(default=list)
    photo_ids = models.JSONField(default=list)
    people = models.CharField(max_length=10, choices=People, default=People.INITIALS)
    frozen = models.ForeignKey(FrozenCopy, null=True, on_delete=models.PROTECT, related_name="+")
    token_hash = models.CharField(max_length=64, unique=True)
    made_by = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    made_at = models.DateTimeField()
    expires_at = models.DateTimeField()
    revoked_at = models.DateTimeField(null=True)

    class Meta:
        indexes = [models.Index(fields=["commission", "-made_at"], name="share_by_order")]

    def belongs_to(self, member: Member) -> bool:
        return self.commission.belongs_to(member)


class ShareOpened(StudioOwned):
    """A link was opened within a quarter of an hour; of who or where from nothing is kept."""

    share = models.ForeignKey(Share, on_delete=models.PROTECT, related_name="openings")
    opened_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["share", "opened_at"], name="opened_once_a_quarter")
        ]
