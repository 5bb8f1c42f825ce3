"""Reading the journal."""

from uuid import UUID

from django.db.models import QuerySet

from studio.models import JournalEntry, JournalHead, Studio


def highest_seq(studio: Studio) -> int:
    """Return the number of the last act heard."""
    return JournalHead.objects.get(studio=studio).seq


def story_of(studio: Studio, subject_id: UUID) -> "QuerySet[JournalEntry]":
    """Return the acts about one thing, newest first."""
    return (
        JournalEntry.objects.filter(studio=studio, subjects__subject_id=subject_id)
        .select_related("member", "device")
        .prefetch_related("notes")
        .order_by("-happened_at", "-seq")
    )
