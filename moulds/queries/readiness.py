"""One set in full: may it be pressed, since when, until when, and what to do with it next."""

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np

from moulds.domain.cautions import KEEP_COOL
from moulds.domain.mould_drying import Air, ReadyIn, capacity_kg_m2, ready_in
from moulds.domain.readiness import Advice, Dryness, advise
from moulds.domain.wear import Wear, expected_left, left_with_chance
from moulds.domain.words import clock
from moulds.models import MouldSet
from studio.domain.room_air import HOUR_S, Reading, climate_from, constant_climate
from studio.models import Studio
from studio.queries import air as skies

from . import sets
from .sets import SetNow

# Large moulds take 10-14 days at 27 °C with moving air, http://potters.org/subject81292.htm; a cold
# room twice that.
HORIZON: Final = timedelta(days=28)


@dataclass(frozen=True, slots=True)
class Times:
    """Instants reached with 10, 50 and 90 % chance, None beyond the horizon."""

    p10: datetime | None
    p50: datetime | None
    p90: datetime | None
    p_never: float


@dataclass(frozen=True, slots=True)
class Left:
    """Pressings still to come, with the studio's limit as the count that most moulds reach."""

    p10: int
    p50: int
    p90: int
    expected: float


@dataclass(frozen=True, slots=True)
class Readiness:
    """Everything about whether to press a set."""

    now: SetNow
    usable_at: Times | None
    dry_at: Times | None
    air: skies.Air | None
    expected_pressings_left: Left | None
    advice: Advice
    cautions: tuple[str, ...]

    @property
    def dryness(self) -> Dryness:
        return self.now.dryness

    @property
    def wear(self) -> Wear:
        return self.now.wear


def readiness(mould_set: MouldSet, *, at: datetime) -> Readiness:
    """Return the readiness of a set as it is at `at`; about twelve queries."""
    studio = mould_set.studio
    now = sets.now_of(sets.all_of(studio).filter(pk=mould_set.pk), studio=studio, at=at)[0]
    usable_at, dry_at, air = _forecast(now, studio, at)
    return Readiness(
        now=now,
        usable_at=usable_at,
        dry_at=dry_at,
        air=air,
        expected_pressings_left=_left(now),
        advice=_advice(now, usable_at, studio, at),
        cautions=(KEEP_COOL.detail,) if now.dryness.word == "rest" else (),
    )


def _forecast(
    now: SetNow, studio: Studio, at: datetime
) -> tuple[Times | None, Times | None, skies.Air | None]:
    """Return when it is usable and dry, from the latest weighing or the presses after it."""
    fraction, began_at = now.dryness.free_water_fraction, _began_at(now)
    if fraction is None or began_at is None or now.dryness.word == "dry":
        return None, None, None
    place = now.mould_set.place
    sky = skies.Sky(studio, began_at, at)
    air = sky.over(place.pk if place else None)
    settings = studio.settings
    limits = [settings.mould_usable_below_fraction, settings.mould_dry_below_fraction]
    capacity = capacity_kg_m2(wall_mm=now.mould_set.plaster_mm)
    usable, dry = ready_in(
        [fraction, fraction], limits, [capacity, capacity], _hourly(air, began_at, at + HORIZON)
    )
    usable_at = _times(usable, began_at) if now.dryness.word == "rest" else None
    return usable_at, _times(dry, began_at), air


def _began_at(now: SetNow) -> datetime | None:
    """Return since when the mould has been drying: its last weighing, or the press after it."""
    if now.casting is None or now.casting.weighed_at is None or now.damp is None:
        return None
    last_at = now.damp.since.last_at
    return max(now.casting.weighed_at, last_at) if last_at else now.casting.weighed_at


def _hourly(air: skies.Air, from_at: datetime, until_at: datetime) -> Air:
    start_s, until_s = from_at.timestamp(), until_at.timestamp()
    if air.samples:
        readings = [
            Reading(taken_at.timestamp(), air_c, humidity)
            for taken_at, air_c, humidity in air.samples
        ]
        climate = climate_from(readings, start_s, until_s)
    else:
        climate = constant_climate(
            start_s, until_s, air.assumed_air_c, air.assumed_humidity_fraction
        )
    return Air(climate.air_c, climate.vapour_kg_m3)


def _times(ready: ReadyIn, began_at: datetime) -> Times:
    start_s = began_at.timestamp() // HOUR_S * HOUR_S  # the air's hours are whole ones

    def instant(hours: float) -> datetime | None:
        if np.isinf(hours):
            return None
        reached = datetime.fromtimestamp(start_s + hours * HOUR_S, tz=UTC)
        return max(reached, began_at)

    return Times(instant(ready.p10_h), instant(ready.p50_h), instant(ready.p90_h), ready.p_never)


def _left(now: SetNow) -> Left | None:
    life = now.mould_set.retire_at_presses
    if life is None:
        return None
    p90, p50, p10 = (
        int(left_with_chance(chance, now.presses, life=life)) for chance in (0.1, 0.5, 0.9)
    )
    return Left(p10, p50, p90, round(expected_left(now.presses, life=life), 1))


def _advice(now: SetNow, usable_at: Times | None, studio: Studio, at: datetime) -> Advice:
    if now.casting is None:
        return Advice("pour", "There is no casting in use: pour one from its master.")
    return advise(
        now.dryness,
        now.wear,
        part_states=[(part.name, part.state) for part in now.parts],
        usable_from=_say_when(usable_at, studio, at),
    )


def _say_when(usable_at: Times | None, studio: Studio, at: datetime) -> str | None:
    if usable_at is None:
        return None
    if usable_at.p50 is None:
        return "not within four weeks in this air: warm it or move the air"
    if usable_at.p50 <= at:
        return "by now, by reckoning: weigh it"
    return f"from about {clock(usable_at.p50, zone=ZoneInfo(studio.zone), beside=at)}"
