"""The first screen in one answer."""

from __future__ import annotations

from datetime import datetime
from typing import Any, ClassVar

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.queries.press_next import PressRow, press_next
from pieces.queries import bench
from studio.api.views import StudioView
from studio.permissions import Need, Permission
from studio.queries import hours, journal

from .bench_rows import shown_bench, shown_person, shown_place
from .bench_shapes import BenchOut
from .moments import iso


class BenchList(StudioView):
    """What to look at, join, press and fire now."""

    needs: ClassVar[dict[str, Need]] = {"GET": Permission.SEE_STUDIO}

    @extend_schema(responses=BenchOut)
    def get(self, request: Request) -> Response:
        now = timezone.now()
        seq = journal.highest_seq(self.studio)
        found = bench.bench(
            self.studio,
            member=self.member,
            at=now,
            closing_at=hours.closing_at(self.studio, now),
        )
        rows = press_next(self.studio, at=now, busy=found.busy_castings)
        press = [shown_press(row) for row in rows]
        return Response(shown_bench(found, at=now, journal_seq=seq, press_next=press))


def shown_press(row: PressRow) -> dict[str, Any]:
    """Return one mould that could be pressed next."""
    mould_set, casting, dryness = row.now.mould_set, row.now.casting, row.now.dryness
    assert casting is not None  # a set without a casting is never pressed next
    booking = row.now.next_booking
    return {
        "set": {
            "id": str(mould_set.pk),
            "label": mould_set.label,
            "makes": mould_set.makes.role,
        },
        "casting": {"id": str(casting.pk), "generation": casting.generation},
        "parts": [
            {"id": str(part.pk), "name": part.name, "state": part.state} for part in row.now.parts
        ],
        "place": shown_place(mould_set.place),
        "owner": shown_person(mould_set.owner),
        "dryness": {
            "word": str(dryness.word),
            "free_water_fraction": dryness.free_water_fraction,
            "presses_since_dry": dryness.presses_since_dry,
        },
        "may_press": row.may_press,
        "reason": row.reason,
        "next_booking": booking
        and _shown_booking(booking.member, booking.from_at, booking.until_at),
    }


def _shown_booking(member: Any, from_at: datetime, until_at: datetime) -> dict[str, Any]:
    return {
        "member": shown_person(member),
        "from_at": iso(from_at.timestamp()),
        "until_at": iso(until_at.timestamp()),
    }
