"""Kilns and programmes as they are shown."""

import math
from collections.abc import Iterable
from typing import Any
from zoneinfo import ZoneInfo

from firings.domain import cones
from firings.domain.cautions import Caution
from firings.domain.driving import lasts_h
from firings.domain.kiln_health import age_words, firings_words, ohms_words
from firings.models import Kiln, Load, Programme
from firings.queries.kiln_health import Health
from firings.queries.kilns import Doing, KilnNow, legs_of
from firings.queries.opening import OpensAt
from firings.queries.slots import Slot
from pieces.api.bench_rows import shown_person, shown_place

from .shapes_kilns import PostOut, ShelfOut

Shown = dict[str, Any]

# What the API calls a kiln's own columns, as they are.
COLUMNS = (
    "id",
    "number",
    "name",
    "kind",
    "chamber",
    "width_mm",
    "depth_mm",
    "diameter_mm",
    "height_mm",
    "top_c",
    "revision",
    "is_out_of_use",
    "out_of_use_reason",
    "out_of_use_since",
    "elements_changed_on",
    "firings_before",
    "hot_hours_before",
    "sensor_firings_before",
    "cooling_k_per_h",
    "remarks",
)
OPENING = (
    "limit_c",
    "early",
    "likely",
    "late",
    "staffed_at",
    "basis",
    "air_c",
    "k_per_h",
    "last_c",
    "last_at",
    "words",
)


def shown_kiln(now: KilnNow) -> Shown:
    """Return a kiln and what it is doing."""
    kiln = now.kiln
    return {
        **{name: getattr(kiln, name) for name in COLUMNS},
        "litres": round(litres_of(kiln), 1),
        "place": shown_place(kiln.place),
        "firings": now.health.elements.firings,
        "sensor_firings": now.health.sensor.firings,
        "hot_h": round(now.health.elements.hot_h, 2),
        "health": shown_health(kiln, now.health),
        "shelves": ShelfOut(kiln.shelves.all(), many=True).data,
        "posts": PostOut(kiln.posts.all(), many=True).data,
        "doing": shown_doing(now.doing),
        "opening": shown_opening(now.opening),
        "next_loads": [shown_coming(load) for load in now.coming],
    }


def shown_health(kiln: Kiln, health: Health) -> Shown:
    """Return what the book of a kiln says, in words."""
    since = health.elements.since
    return {
        "elements_words": age_words(health.elements),
        "elements_since": since.astimezone(ZoneInfo(kiln.studio.zone)).date()
        if since is not None
        else kiln.elements_changed_on,
        "sensor_words": firings_words(health.sensor),
        "ohms": [
            {"measured_at": one.measured_at, "over_new_fraction": one.over_new_fraction}
            for one in health.ohms
        ],
        "ohms_words": ohms_words(health.ohms),
        "trend": health.trend,
        "shelf_count": health.shelf_count,
        "notes": shown_words(health.notes),
    }


def shown_doing(doing: Doing) -> Shown:
    reading = doing.reading
    return {
        "word": doing.word,
        "words": doing.words,
        "till": doing.till,
        "watcher": shown_person(doing.watcher),
        "load": shown_load_name(doing.load),
        "reading": {"taken_at": reading[0], "reading_c": reading[1]} if reading else None,
    }


def shown_opening(opening: OpensAt | None) -> Shown | None:
    return {name: getattr(opening, name) for name in OPENING} if opening is not None else None


def shown_coming(load: Load) -> Shown:
    return {
        "id": load.pk,
        "number": load.number,
        "starts_at": load.starts_at,
        "kind": load.kind,
        "cone": load.cone,
        "state": load.state,
        "cutoff_at": load.cutoff_at,
        "pieces": getattr(load, "pieces_in", 0),
    }


def shown_load_name(load: Load | None) -> Shown | None:
    if load is None:
        return None
    return {"id": load.pk, "number": load.number, "starts_at": load.starts_at}


def shown_slot(slot: Slot | None) -> Shown | None:
    if slot is None:
        return None
    return {
        "words": slot.words,
        "load": shown_load_name(slot.load),
        "kiln": shown_kiln_name(slot.kiln) if slot.kiln is not None else None,
        "day": slot.day,
    }


def shown_kiln_name(kiln: Kiln) -> Shown:
    return {
        "id": kiln.pk,
        "number": kiln.number,
        "name": kiln.name,
        "place_id": kiln.place_id,
    }


def shown_programme(programme: Programme) -> Shown:
    """Return a programme, how long it takes and what its cone needs at its last rate."""
    legs = legs_of(programme)
    rate = next((leg.rate_c_per_h for leg in reversed(legs) if leg.rate_c_per_h), None)
    wanted = None
    if rate is not None and programme.cone in cones.CONES_C:
        found = cones.needed(programme.cone, rate)
        wanted = {
            "celsius": found.celsius,
            "low_c": found.low_c,
            "high_c": found.high_c,
            "rate_c_per_h": rate,
            "chart": found.chart,
        }
    said = cones.zero_warning(programme.cone, programme.kind)
    return {
        "id": programme.pk,
        "name": programme.name,
        "kind": programme.kind,
        "cone": programme.cone,
        "top_c": programme.top_c,
        "hours": lasts_h(legs),
        "segments": [
            {
                "order": row.order,
                "to_c": row.to_c,
                "rate_c_per_h": row.rate_c_per_h,
                "hold_min": row.hold_min,
            }
            for row in programme.segments.all()
        ],
        "revision": programme.revision,
        "needed": wanted,
        "warnings": shown_words([Caution("cone-and-zero", said)] if said else []),
    }


def shown_words(said: Iterable[Caution]) -> list[Shown]:
    """Return warnings or cautions, each once."""
    return [{"code": one.code, "detail": one.detail} for one in dict.fromkeys(said)]


def litres_of(kiln: Kiln) -> float:
    """Return the room inside. [l]"""
    if kiln.is_round:
        floor_mm2 = math.pi * ((kiln.diameter_mm or 0.0) / 2.0) ** 2
    else:
        floor_mm2 = (kiln.width_mm or 0.0) * (kiln.depth_mm or 0.0)
    return floor_mm2 * kiln.height_mm / 1e6
