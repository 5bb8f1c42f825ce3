"""The journal: every act of every app, append-only, chained by digest."""

from typing import Self

from django.db import models

from .tenancy import Device, Member, OwnedQuerySet, Studio, StudioOwned


class JournalHead(models.Model):
    """The last number and digest of a studio's journal; its row is the lock that orders writers."""

    studio = models.OneToOneField(
        Studio, primary_key=True, on_delete=models.PROTECT, related_name="head"
    )
    seq = models.PositiveBigIntegerField(default=0)
    digest = models.CharField(max_length=64, default="")


class JournalEntry(models.Model):
    """One act: who, on which device, when it happened and when it was heard."""

    export_order = 10

    id = models.UUIDField(primary_key=True)
    studio = models.ForeignKey(Studio, on_delete=models.PROTECT, related_name="+")
    seq = models.PositiveBigIntegerField()
    verb = models.CharField(max_length=40)
    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    device = models.ForeignKey(Device, on_delete=models.PROTECT, related_name="+")
    happened_at = models.DateTimeField()
    written_at = models.DateTimeField()
    clock_offset_s = models.FloatField(default=0.0)
    based_on = models.PositiveBigIntegerField(default=0)
    corrects = models.UUIDField(null=True)
    facts = models.JSONField(default=dict)
    as_typed = models.JSONField(default=dict)
    previous_digest = models.CharField(max_length=64)
    digest = models.CharField(max_length=64)

    objects = OwnedQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["studio", "seq"], name="journal_seq_once"),
        ]
        indexes = [
            models.Index(fields=["corrects"], name="journal_corrects"),
            models.Index(fields=["studio", "-happened_at"], name="journal_by_time"),
        ]


class JournalSubject(models.Model):
    """One thing that an entry tells of."""

    export_order = 11

    entry = models.ForeignKey(JournalEntry, on_delete=models.PROTECT, related_name="subjects")
    kind = models.CharField(max_length=20)
    subject_id = models.UUIDField()
    happened_at = models.DateTimeField()

    class Meta:
        indexes = [
            models.Index(fields=["subject_id", "-happened_at"], name="subject_by_time"),
        ]


class Note(StudioOwned):
    """Free text said with an act. Its words can be blanked; the journal keeps their sha256."""

    entry = models.ForeignKey(JournalEntry, on_delete=models.PROTECT, related_name="notes")
    text = models.TextField(blank=True)
    sha256 = models.CharField(max_length=64)
    blanked_at = models.DateTimeField(null=True)


class FactQuerySet(OwnedQuerySet):
    """Facts of one studio."""

    def standing(self) -> Self:
        """Leave out what a later act took back or corrected."""
        corrected = JournalEntry.objects.filter(corrects=models.OuterRef("entry_id"))
        return self.filter(~models.Exists(corrected))


class Fact(StudioOwned):
    """Something that happened: a row that is never changed, written by one act."""

    export_order = 30

    entry = models.ForeignKey(JournalEntry, on_delete=models.PROTECT, related_name="+")
    happened_at = models.DateTimeField()

    objects = FactQuerySet.as_manager()  # type: ignore[misc]  # a narrower manager

    class Meta:
        abstract = True
