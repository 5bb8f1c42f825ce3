"""From what happened to a part to the schedule of faces that the drying model takes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from pieces.domain.drying import Cover, FaceEvent, Plaster, Section, in_mould, out_of_mould

BAT_WATER: Final = 0.10  # of what it can hold; common practice, no source
BAT_M: Final = 0.025
BAT_OPENNESS: Final = 0.5  # its far side lies on a bench, its edge is free; common practice


@dataclass(frozen=True, slots=True)
class Standing:
    """From `at_s` on the piece stands so: under this cover, shut in a cupboard, on a plaster bat,
    or open to the air below.

    `at_s` is an instant, seconds since 1970 in UTC.
    """

    at_s: float
    cover: Cover
    is_in_cupboard: bool = False
    is_on_bat: bool = False
    is_open_below: bool = False

    @property
    def factor_cover(self) -> Cover:
        """Return the tighter of the piece's own cover and the cupboard's."""
        if self.is_in_cupboard and self.cover.factor > Cover.SEALED.factor:
            return Cover.SEALED
        return self.cover


def face_events(
    section: Section,
    *,
    begun_at_s: float,
    plaster: Plaster | None,
    out_at_s: float | None,
    standings: Sequence[Standing],
) -> tuple[FaceEvent, ...]:
    """Return the faces a section met, from the pressing on.

    Parameters
    ----------
    section
        The thickest section of the part.
    begun_at_s
        The pressing, or where no mould was used the moment the piece was begun. [s since 1970]
    plaster
        The mould as it was when the clay was laid in; None where no mould was used.
    out_at_s
        The demoulding; None while the part is in its mould. [s since 1970]
    standings
        How the piece stood, in any order; before the first it stood open. Covers laid over a
        filled mould are left out: the mould's far side still gives its water to the room.

    Raises
    ------
    ValueError
        When `out_at_s` lies before `begun_at_s`.
    """
    in_air_from_s = begun_at_s if plaster is None else out_at_s
    if in_air_from_s is not None and in_air_from_s < begun_at_s:
        raise ValueError("A part cannot come out before it was pressed.")
    events: dict[int, FaceEvent] = {}
    if plaster is not None:
        events[round(begun_at_s)] = in_mould(begun_at_s, section, plaster)
    if in_air_from_s is not None:
        ordered = sorted(standings, key=lambda standing: standing.at_s)
        first = round(in_air_from_s)
        if first in events:
            first += 1  # pressed and out within the same second: the mould did nothing
        begun = [standing for standing in ordered if standing.at_s <= first]
        at_first = begun[-1] if begun else Standing(first, Cover.OPEN)
        later = [standing for standing in ordered if round(standing.at_s) > first]
        was_on_bat = False
        for at, standing in [(first, at_first), *((round(s.at_s), s) for s in later)]:
            bat = _bat(goes_on=was_on_bat) if standing.is_on_bat else None
            stands = section.open_below() if standing.is_open_below else section
            events[at] = out_of_mould(at, stands, cover=standing.factor_cover, bat=bat)
            was_on_bat = standing.is_on_bat
    return tuple(events[at] for at in sorted(events))


def _bat(*, goes_on: bool) -> Plaster:
    """Return a plaster bat under a piece: fairly dry when it is set there, nobody weighs it."""
    water = None if goes_on else BAT_WATER
    return Plaster(water, thickness_m=BAT_M, outside_factor=BAT_OPENNESS)
