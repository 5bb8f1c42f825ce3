"""When a cooling kiln may likely be opened, and when somebody is in to do it."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from firings.domain import cooling
from firings.domain.cooling import CoolAt, Cooling, NeverThatCool, NotCooling
from firings.domain.firing_times import Point, in_order
from firings.models import Load
from studio.domain.hours import Opening, next_open
from studio.models import Studio, StudioSettings
from studio.queries.air import Sky
from studio.queries.hours import opening_of

BASIS_WORDS: Final = {
    "readings": "from its readings as it cools",
    "known": "from how this kiln cooled before",
    "guess": "a guess: nobody has watched this kiln cool",
}


@dataclass(frozen=True, slots=True)
class OpensAt:
    """When a kiln comes down to the studio's limit: a range, where from, and when somebody is in.

    All instants are None when nothing can be said, which `words` then does.
    """

    limit_c: float
    early: datetime | None
    likely: datetime | None
    late: datetime | None
    staffed_at: datetime | None
    basis: str
    air_c: float
    k_per_h: float | None
    last_c: float | None
    last_at: datetime | None
    words: str


def openings_of(
    studio: Studio, loads: Iterable[Load], points: Mapping[UUID, Sequence[Point]], at: datetime
) -> dict[UUID, OpensAt]:
    """Return when each load that cools may likely be opened. Six queries where there is any."""
    cooling_now = [load for load in loads if load.state == Load.State.COOLING]
    if not cooling_now:
        return {}
    settings = StudioSettings.objects.get(studio=studio)
    limit_c = settings.open_kiln_below_c
    sky, hours = Sky(studio, at, at), opening_of(studio)
    zone = ZoneInfo(studio.zone)
    found = {}
    for load in cooling_now:
        over = sky.over(load.kiln.place_id)
        room_c = over.samples[-1][1] if over.samples else over.assumed_air_c
        air_c = cooling.air_at_kiln(room_c, settings.assumed_air_c)
        found[load.pk] = _opens(load, points.get(load.pk, ()), air_c, limit_c, hours, zone, at)
    return found


def _opens(
    load: Load,
    points: Sequence[Point],
    air_c: float,
    limit_c: float,
    hours: Opening,
    zone: ZoneInfo,
    at: datetime,
) -> OpensAt:
    since = load.ended_at
    falling = [point for point in in_order(points) if since is not None and point[0] >= since]
    last = falling[-1] if falling else (in_order(points)[-1] if points else None)
    if last is None:
        return _unknown(limit_c, air_c, "Nobody has read it: no telling when it will be cool.")
    how = _how(load, falling, air_c)
    try:
        cool = cooling.reaches(how, last[0], last[1], limit_c)
    except NeverThatCool as refusal:
        return _unknown(limit_c, air_c, refusal.detail)
    staffed_at = next_open(max(cool.likely, at), hours, zone)
    return OpensAt(
        limit_c=limit_c,
        early=cool.early,
        likely=cool.likely,
        late=cool.late,
        staffed_at=staffed_at,
        basis=how.basis,
        air_c=air_c,
        k_per_h=how.k_per_h,
        last_c=last[1],
        last_at=last[0],
        words=_words(cool, limit_c, staffed_at, how, zone),
    )


def _how(load: Load, falling: Sequence[Point], air_c: float) -> Cooling:
    try:
        return cooling.fit(falling, air_c)
    except NotCooling:
        if load.kiln.cooling_k_per_h is not None:
            return cooling.known(load.kiln.cooling_k_per_h, air_c)
        return cooling.guess(air_c)


def _unknown(limit_c: float, air_c: float, words: str) -> OpensAt:
    return OpensAt(limit_c, None, None, None, None, "guess", air_c, None, None, None, words)


def _words(
    cool: CoolAt, limit_c: float, staffed_at: datetime | None, how: Cooling, zone: ZoneInfo
) -> str:
    likely = cool.likely.astimezone(zone)
    said = f"About {_clock(likely)} for {limit_c:.0f} °C, {BASIS_WORDS[how.basis]}."
    if staffed_at is None:
        return f"{said} No opening hours are set. {cool.caution}"
    if staffed_at > cool.likely:
        said += f" Nobody is in then: {_clock(staffed_at.astimezone(zone))}."
    return f"{said} {cool.caution}"


def _clock(local: datetime) -> str:
    # To five minutes: more would promise what no estimate holds.
    rounded = local + timedelta(minutes=5 * round(local.minute / 5) - local.minute)
    return f"{rounded:%A %H:%M}"
