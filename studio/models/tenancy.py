"""The studio, its people and their devices: the tenant and who speaks in it."""

from typing import ClassVar, Self

from django.conf import settings
from django.db import models

from studio.domain.ids import uuid7


class Studio(models.Model):
    """One shared studio: the tenant that every other row belongs to."""

    id = models.UUIDField(primary_key=True, default=uuid7, editable=False)
    slug = models.SlugField(unique=True, max_length=60)
    name = models.CharField(max_length=120)
    zone = models.CharField(max_length=60, default="Europe/London")

    def __str__(self) -> str:
        return self.name


class OwnedQuerySet(models.QuerySet["models.Model"]):
    """Rows of one studio; every read starts with `of`."""

    def of(self, studio: Studio) -> Self:
        return self.filter(studio=studio)


class StudioOwned(models.Model):
    """A row that belongs to one studio and is named by a UUID its writer made.

    `export_order` is where its table stands when the studio takes everything away with it; None
    for what is a key, or can be reckoned anew.
    """

    export_order: ClassVar[int | None] = 20

    id = models.UUIDField(primary_key=True, default=uuid7)
    studio = models.ForeignKey(Studio, on_delete=models.PROTECT, related_name="+")

    objects = OwnedQuerySet.as_manager()

    class Meta:
        abstract = True

    def belongs_to(self, member: "Member") -> bool:
        """Say whether the row counts as the member's own; most rows belong to the whole studio."""
        return False


class Member(StudioOwned):
    """A person in a studio, or the studio's own clockwork (`user` is empty)."""

    user = models.ForeignKey(
        settings.AUTH_USER_MODEL, null=True, on_delete=models.PROTECT, related_name="memberships"
    )
    first_name = models.CharField(max_length=60)
    full_name = models.CharField(max_length=120)
    initials = models.CharField(max_length=4)
    email = models.EmailField(blank=True)
    roles = models.JSONField(default=list)
    helps = models.ManyToManyField("self", symmetrical=False, related_name="helped_by", blank=True)
    length_unit = models.CharField(max_length=8, default="mm")
    mass_unit = models.CharField(max_length=8, default="g")
    temperature_unit = models.CharField(max_length=8, default="c")
    is_left_handed = models.BooleanField(default=False)
    theme = models.CharField(max_length=8, default="phone")
    text_percent = models.PositiveSmallIntegerField(default=100)
    pin_hash = models.CharField(max_length=200, blank=True)
    quiet_from = models.TimeField(null=True)
    quiet_until = models.TimeField(null=True)
    wants_email = models.BooleanField(default=True)
    # Said beforehand; the sweep sets `left_at` when it has come.
    leaves_at = models.DateTimeField(null=True)
    left_at = models.DateTimeField(null=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["studio", "user"], name="one_membership_each"),
            models.UniqueConstraint(fields=["studio", "initials"], name="initials_once_a_studio"),
        ]

    def __str__(self) -> str:
        return self.first_name

    @property
    def is_clockwork(self) -> bool:
        return self.user_id is None

    def speaks_for(self, maker: "Member | None") -> bool:
        """Say whether the maker's things are this member's own: mine, or of a maker I help."""
        if maker is None:
            return False
        return maker.pk == self.pk or self.helps.filter(pk=maker.pk).exists()


class Invitation(StudioOwned):
    """A link that makes its holder a member, once."""

    export_order = None

    email = models.EmailField(blank=True)
    roles = models.JSONField(default=list)
    token_hash = models.CharField(max_length=64, unique=True)
    invited_by = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    invited_at = models.DateTimeField()
    expires_at = models.DateTimeField()
    taken_by = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    withdrawn_at = models.DateTimeField(null=True)


class Device(StudioOwned):
    """A phone, a browser or a script that acts are written on.

    A shared phone has no member of its own: each act names who holds it.
    """

    member = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="devices")
    name = models.CharField(max_length=80)
    is_shared = models.BooleanField(default=False)
    key_hash = models.CharField(max_length=64, null=True, unique=True)
    wrong_pins = models.PositiveSmallIntegerField(default=0)
    added_at = models.DateTimeField()
    seen_at = models.DateTimeField(null=True)
    revoked_at = models.DateTimeField(null=True)

    def __str__(self) -> str:
        return self.name

    def belongs_to(self, member: Member) -> bool:
        return self.member_id == member.pk


class AccessToken(StudioOwned):
    """A named key for a script or a sensor; only its hash is kept."""

    export_order = None

    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="tokens")
    device = models.ForeignKey(Device, on_delete=models.PROTECT, related_name="+")
    name = models.CharField(max_length=80)
    prefix = models.CharField(max_length=12)
    key_hash = models.CharField(max_length=64, unique=True)
    grants = models.JSONField(default=list)
    made_at = models.DateTimeField()
    used_at = models.DateTimeField(null=True)
    revoked_at = models.DateTimeField(null=True)

    def belongs_to(self, member: Member) -> bool:
        return self.member_id == member.pk


class SignInTry(models.Model):
    """A wrong password, counted so that guessing is slow."""

    key = models.CharField(max_length=64, db_index=True)
    tried_at = models.DateTimeField(db_index=True)
