"""The demo's kilns with their furniture, how they are driven, and when one was out of use."""

from __future__ import annotations

from datetime import datetime

from firings.actions import kilns, programmes
from firings.models import Kiln, Programme

from . import tables
from .kiln_tables import KILNS, OUT_OF_USE, POST_FOOTPRINT_MM, PROGRAMMES, KilnRow
from .teller import Teller


def make_kilns(teller: Teller) -> dict[str, Kiln]:
    """Make the three kilns; queue what took one of them out of use and back."""
    at = teller.clock.at(tables.FOUNDED)
    made = {row.number: _kiln(teller, row, at) for row in KILNS}
    for number, kind, wall, reason in OUT_OF_USE:
        _queue_event(teller, made[number], kind, teller.clock.at(wall), reason)
    return made


def make_programmes(teller: Teller) -> dict[str, Programme]:
    """Make the programmes, by what they are for."""
    at = teller.clock.at(tables.FOUNDED)
    return {
        kind: programmes.make(
            act=teller.act("piet", at),
            fields={"name": name, "kind": kind, "cone": cone, "top_c": top_c},
            segments=[
                {"to_c": to_c, "rate_c_per_h": rate, "hold_min": hold}
                for to_c, rate, hold in segments
            ],
        )
        for name, kind, cone, top_c, segments in PROGRAMMES
    }


def _kiln(teller: Teller, row: KilnRow, at: datetime) -> Kiln:
    changed_on = row.elements_changed_on
    return kilns.make(
        act=teller.act("piet", at),
        place=teller.place(row.number),
        fields={
            "number": row.number,
            "name": row.name,
            "top_c": row.top_c,
            "elements_changed_on": teller.clock.day(changed_on) if changed_on else None,
            "firings_before": row.firings_before,
            "hot_hours_before": row.hot_hours_before,
            "sensor_firings_before": row.sensor_firings_before,
            "cooling_k_per_h": row.cooling_k_per_h,
            "remarks": row.remarks,
            **row.chamber,
        },
        shelves=[row.shelf],
        posts=[
            {"height_mm": height_mm, "count": count, "footprint_mm": POST_FOOTPRINT_MM}
            for height_mm, count in row.posts
        ],
    )


def _queue_event(teller: Teller, kiln: Kiln, kind: str, at: datetime, reason: str) -> None:
    def tell() -> None:
        kilns.tell(act=teller.act("piet", at), kiln=kiln, kind=kind, reason=reason)

    teller.then(at, tell)
