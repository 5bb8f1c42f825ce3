"""Links to an order, as those see them who may make them."""

from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db.models import QuerySet

from firings.models import Share
from pieces.models import Commission
from pieces.queries.commissions import pieces_of
from studio.models import Photo
from studio.queries import photos


@dataclass(frozen=True, slots=True)
class LinkNow:
    """A link, and when it was opened: quarters of an hour, the newest first."""

    share: Share
    openings: tuple[datetime, ...]

    def state(self, at: datetime) -> str:
        """Return `live`, `expired` or `revoked`."""
        if self.share.revoked_at is not None:
            return "revoked"
        return "live" if self.share.expires_at > at else "expired"


def links_of(commission: Commission) -> list[LinkNow]:
    """Return the links of an order, the newest first. Two queries."""
    rows = Share.objects.filter(commission=commission).select_related("made_by")
    rows = rows.prefetch_related("openings").order_by("-made_at", "-id")
    return [_now(row) for row in rows]


def link(share: Share) -> LinkNow:
    """Return one link with its openings."""
    return _now(share)


def photos_of(commission: Commission) -> "QuerySet[Photo]":
    """Return the photos of an order and of its pieces, newest first."""
    pieces: list[UUID] = list(pieces_of([commission]).values_list("pk", flat=True))
    return photos.about(commission.studio, commission.pk, *pieces)


def shown_photos(share: Share) -> list[Photo]:
    """Return the photos a link shows: those chosen, of acts that still stand."""
    if not share.photo_ids:
        return []
    return list(photos_of(share.commission).filter(pk__in=share.photo_ids))


def _now(row: Share) -> LinkNow:
    return LinkNow(row, tuple(sorted((o.opened_at for o in row.openings.all()), reverse=True)))
