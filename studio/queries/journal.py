"""Reading the journal."""

from datetime import timedelta
from uuid import UUID

from django.db.models import OuterRef, QuerySet, Subquery

from studio.models import JournalEntry, JournalHead, Studio

# A note made on the spot reaches the server within minutes; common sense, no source.
LATE_AFTER = timedelta(minutes=10)


def highest_seq(studio: Studio) -> int:
    """Return the number of the last act heard."""
    return JournalHead.objects.get(studio=studio).seq


def story_of(studio: Studio, subject_id: UUID) -> "QuerySet[JournalEntry]":
    """Return the acts about one thing, newest first."""
    return (
        JournalEntry.objects.filter(studio=studio, subjects__subject_id=subject_id)
        .select_related("member", "device")
        .prefetch_related("notes", "photos")
        .order_by("-happened_at", "-seq")
    )


def heard_after(studio: Studio, seq: int) -> "QuerySet[JournalEntry]":
    """Return the acts heard after a number."""
    return JournalEntry.objects.filter(studio=studio, seq__gt=seq).select_related(
        "member", "device"
    )


def with_corrections(entries: "QuerySet[JournalEntry]") -> "QuerySet[JournalEntry]":
    """Add to each act, as `corrected_by`, the act that took it back or put it right."""
    later = JournalEntry.objects.filter(corrects=OuterRef("pk")).values("pk")[:1]
    return entries.annotate(corrected_by=Subquery(later))


def is_late(entry: JournalEntry) -> bool:
    """Say whether it was written so long after it happened that both times must be shown."""
    return entry.written_at - entry.happened_at > LATE_AFTER


def revision_of(subject_id: UUID, kind: str) -> int:
    """Return how often an editable row was made or changed, which is what `If-Match` names."""
    return JournalEntry.objects.filter(
        subjects__subject_id=subject_id, verb__in=[f"made_{kind}", f"changed_{kind}"]
    ).count()
