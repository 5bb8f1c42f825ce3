"""The air a piece stood in, place after place, as the drying model takes it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Final
from uuid import UUID

from pieces.domain.drying import Climate, Reading, climate_from
from studio.domain.climate import LOWEST_HUMIDITY
from studio.models import ClimateReading, Studio
from studio.queries import air as studio_air
from studio.queries.air import Air

HIGHEST_AIR_C: Final = 50.0

Stay = tuple[datetime, UUID | None]


@dataclass(frozen=True, slots=True)
class Sky:
    """One piece's air from its pressing on.

    `last_taken_at` is when the newest of the readings used was taken, `heard_at` when the newest
    of all was heard; `assumed` names what was not measured.
    """

    studio: Studio
    climate: Climate
    sources: tuple[str, ...]
    readings: int
    last_taken_at: datetime | None
    heard_at: datetime | None
    changed: tuple[tuple[datetime, datetime], ...]
    assumed: tuple[str, ...]

    def earliest_heard_after(self, at: datetime | None) -> datetime | None:
        """Return the earliest instant about which something was heard after `at`."""
        fresh = [taken for taken, heard in self.changed if at is None or heard > at]
        return min(fresh, default=None)


class Skies:
    """The air of every place of a studio, read once, put together piece by piece."""

    def __init__(self, *, studio: Studio, since: datetime, at: datetime, until: datetime) -> None:
        self.studio = studio
        self.at = at
        self.until = until
        self.sky = studio_air.Sky(studio, since, at)
        self.heard = _heard(studio, since, at)
        self.climates: dict[tuple[object, ...], Climate] = {}

    def over(self, stays: Sequence[Stay], *, since: datetime) -> Sky:
        """Return the air over a piece that stood at `stays`, from `since` to the horizon."""
        spans = list(_spans(stays, since=since, until=self.at))
        airs = [(self.sky.over(place), start, end) for start, end, place in spans]
        key = tuple((air.source_place_id, start, end) for air, start, end in airs)
        if key not in self.climates:
            readings = [reading for span in airs for reading in _readings(*span)]
            start_s, until_s = since.timestamp(), self.until.timestamp()
            self.climates[key] = climate_from(readings, start_s, until_s)
        changed = tuple(
            told for air, *_ in airs for told in self.heard.get(air.source_place_id, ())
        )
        return Sky(
            studio=self.studio,
            climate=self.climates[key],
            sources=tuple(dict.fromkeys(air.words for air, *_ in airs)),
            readings=sum(
                len(air.samples) for air in {a.source_place_id: a for a, *_ in airs}.values()
            ),
            last_taken_at=max(
                (air.samples[-1][0] for air, *_ in airs if air.samples), default=None
            ),
            heard_at=max((heard for _, heard in changed), default=None),
            changed=changed,
            assumed=("air",) if any(air.is_assumed for air, *_ in airs) else (),
        )


def _spans(
    stays: Sequence[Stay], *, since: datetime, until: datetime
) -> list[tuple[datetime, datetime, UUID | None]]:
    """Return (start, end, place) of each stay from `since` on; the first reaches back to it."""
    begun = [stay for stay in stays if stay[0] <= since][-1:]
    later = [stay for stay in stays if since < stay[0] < until]
    first = begun[0][1] if begun else (later[0][1] if later else None)
    edges = [(since, first), *later]
    ends = [start for start, _ in edges[1:]] + [until]
    return [(start, end, place) for (start, place), end in zip(edges, ends, strict=True)]


def _readings(air: Air, start: datetime, end: datetime) -> list[Reading]:
    """Return the readings of one stay, with the nearest ones outside it, fit for the model."""
    if air.is_assumed:
        assumed = (air.assumed_air_c, air.assumed_humidity_fraction)
        return [_reading(at, *assumed) for at in (start, end)]
    before = [sample for sample in air.samples if sample[0] < start]
    inside = [sample for sample in air.samples if start <= sample[0] <= end]
    return [_reading(*sample) for sample in (*before, *inside)]


def _reading(at: datetime, air_c: float, humidity_fraction: float) -> Reading:
    return Reading(
        at.timestamp(),
        min(HIGHEST_AIR_C, max(0.0, air_c)),
        min(1.0, max(LOWEST_HUMIDITY, humidity_fraction)),
    )


def _heard(
    studio: Studio, since: datetime, at: datetime
) -> dict[UUID | None, tuple[tuple[datetime, datetime], ...]]:
    """Return, for each place, when each of its readings was taken and when it was heard."""
    rows = ClimateReading.objects.filter(
        studio=studio, taken_at__gte=since - studio_air.LOOK_BACK, taken_at__lte=at
    ).values_list("place_id", "taken_at", "entry__written_at")
    found: dict[UUID | None, list[tuple[datetime, datetime]]] = {}
    for place_id, taken_at, heard_at in rows:
        found.setdefault(place_id, []).append((taken_at.astimezone(UTC), heard_at))
    return {place: tuple(sorted(told)) for place, told in found.items()}
