"""What is done to a kiln, and found on it, written into its book."""

from dataclasses import dataclass

from django.db import transaction

from firings.models import Kiln, KilnService
from studio.actions import journal
from studio.models import Act


@dataclass(frozen=True, slots=True)
class ServiceGiven:
    """One thing done to a kiln or found on it."""

    kind: str
    over_new_fraction: float | None = None
    shelf_count: int | None = None
    words: str = ""


@transaction.atomic
def record(*, act: Act, kiln: Kiln, given: ServiceGiven) -> KilnService:
    """Write a service act; elements and sensors count their firings from their change on."""
    entry = journal.write(
        act=act,
        verb="serviced_kiln",
        subjects=[("kiln", kiln.pk)],
        facts={
            "kiln": kiln.number,
            "kind": given.kind,
            "over_new_fraction": given.over_new_fraction,
            "shelf_count": given.shelf_count,
        },
    )
    return KilnService.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        kiln=kiln,
        kind=given.kind,
        over_new_fraction=given.over_new_fraction,
        shelf_count=given.shelf_count,
        words=given.words,
    )
