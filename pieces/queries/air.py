"""The air a piece stood in, place after place, as the drying model takes it."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final
from uuid import UUID

import numpy as np

from pieces.domain.drying import Climate, Reading, climate_from
from pieces.domain.stays import air_along
from studio.domain.climate import LOWEST_HUMIDITY
from studio.domain.room_air import HOUR_S, LONGEST_GAP_S
from studio.models import Studio
from studio.queries import air as studio_air
from studio.queries.air import Air

HIGHEST_AIR_C: Final = 50.0

Stay = tuple[datetime, UUID | None]


@dataclass(frozen=True, slots=True)
class Sky:
    """One piece's air from its pressing on.

    `last_taken_at` is when the newest of the readings used was taken; `assumed` names what was not
    measured.
    """

    studio: Studio
    climate: Climate
    sources: tuple[str, ...]
    readings: int
    last_taken_at: datetime | None
    assumed: tuple[str, ...]

    def digest(self, until: datetime) -> str:
        """Return what tells this air, up to a whole hour, from any other.

        Readings that came late, were answered or taken back, and moves to other rooms all show.
        """
        climate = self.climate
        hours = max(0, int(until.timestamp() - climate.start_s) // HOUR_S)
        # Rounded, as sums over more or fewer readings before it differ in the last figure.
        air_mk = np.round(climate.air_c[:hours] * 1e3)
        vapour_ug_m3 = np.round(climate.vapour_kg_m3[:hours] * 1e9)
        said = np.concatenate([air_mk, vapour_ug_m3]).astype("<i8").tobytes()
        return hashlib.sha256(said).hexdigest()


class Skies:
    """The air of every place of a studio, read once, put together piece by piece."""

    def __init__(self, *, studio: Studio, since: datetime, at: datetime, until: datetime) -> None:
        self.studio = studio
        self.at = at
        self.sky = studio_air.Sky(studio, since, at)
        self.start_s, self.until_s = since.timestamp(), until.timestamp()
        self.climates: dict[UUID | None, Climate] = {}

    def over(self, stays: Sequence[Stay], *, since: datetime) -> Sky:
        """Return the air over a piece that stood at `stays`, from `since` to the horizon."""
        edges = _edges(stays, since=since, until=self.at)
        airs = [self.sky.over(place) for _, place in edges]
        rooms = [
            (at.timestamp(), self._room(air)) for (at, _), air in zip(edges, airs, strict=True)
        ]
        present = airs[-1]
        climate = air_along(rooms, from_s=since.timestamp())
        return Sky(
            studio=self.studio,
            climate=climate,
            sources=tuple(dict.fromkeys(air.words for air in airs)),
            readings=sum(len(air.samples) for air in {a.source_place_id: a for a in airs}.values()),
            last_taken_at=present.samples[-1][0] if present.samples else None,
            assumed=_assumed(climate, airs, self.at),
        )

    def _room(self, air: Air) -> Climate:
        """Return the air of one room, from the studio's first wet part to the horizon."""
        if air.source_place_id not in self.climates:
            # What is assumed counts as known by now: only a change of the settings changes it.
            assumed = (air.assumed_air_c, air.assumed_humidity_fraction)
            samples = air.samples or ((self.at, *assumed),)
            readings = [_reading(*sample) for sample in samples]
            self.climates[air.source_place_id] = climate_from(readings, self.start_s, self.until_s)
        return self.climates[air.source_place_id]


def _assumed(climate: Climate, airs: Sequence[Air], at: datetime) -> tuple[str, ...]:
    """Return what of the air up to now no reading stands near: all of it, or longer gaps."""
    if any(air.is_assumed for air in airs):
        return ("air",)
    past = max(0, int(at.timestamp() - climate.start_s) // HOUR_S)
    last_s = climate.measured_to_s
    is_silent = last_s is None or at.timestamp() - last_s > LONGEST_GAP_S
    return ("air_gap",) if is_silent or bool(climate.assumed[:past].any()) else ()


def _edges(stays: Sequence[Stay], *, since: datetime, until: datetime) -> list[Stay]:
    """Return (since when, place) of each stay up to `until`; the first begins at `since`."""
    begun = [stay for stay in stays if stay[0] <= since][-1:]
    later = [stay for stay in stays if since < stay[0] <= until]
    first = begun[0][1] if begun else (later[0][1] if later else None)
    return [(since, first), *later]


def _reading(at: datetime, air_c: float, humidity_fraction: float) -> Reading:
    return Reading(
        at.timestamp(),
        min(HIGHEST_AIR_C, max(0.0, air_c)),
        min(1.0, max(LOWEST_HUMIDITY, humidity_fraction)),
    )
