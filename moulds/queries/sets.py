"""Mould sets as they are now: casting, parts, dampness, wear and who has them next."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db.models import Prefetch, QuerySet

from moulds.domain.readiness import Dryness
from moulds.domain.wear import Wear, wear_of
from moulds.models import Booking, Casting, MouldPart, MouldSet
from studio.models import Studio

from .castings import Damp, damp_of, found_sound_at

UNFIT = (MouldPart.State.MISSING, MouldPart.State.OUT_OF_USE)


@dataclass(frozen=True, slots=True)
class SetNow:
    """One mould set as it is now; without a casting in use it is only a label."""

    mould_set: MouldSet
    casting: Casting | None
    parts: tuple[MouldPart, ...]
    damp: Damp | None
    wear: Wear
    next_booking: Booking | None

    @property
    def dryness(self) -> Dryness:
        if self.damp is None:
            return Dryness("unknown", None, 0, "nothing")
        return self.damp.dryness

    @property
    def unfit(self) -> str | None:
        """`missing` or `out_of_use` when one of its parts is; the set cannot be pressed."""
        states = {part.state for part in self.parts}
        return next((state.value for state in UNFIT if state in states), None)

    @property
    def is_chipped(self) -> bool:
        return any(part.state == MouldPart.State.CHIPPED for part in self.parts)

    @property
    def presses(self) -> int:
        """Pressings of its most used part."""
        return max((part.presses for part in self.parts), default=0)


def all_of(studio: Studio) -> "QuerySet[MouldSet]":
    """Return the mould sets of a studio with what a row of them shows. Three queries when read."""
    blocks = MouldPart.objects.select_related("presses_before_by").order_by("order", "name")
    parts = Prefetch("parts", queryset=blocks)
    castings = (
        Casting.objects.filter(is_in_use=True).select_related("master").prefetch_related(parts)
    )
    return (
        MouldSet.objects.filter(studio=studio)
        .select_related("makes__design", "owner", "place")
        .prefetch_related(Prefetch("castings", queryset=castings, to_attr="in_use"))
    )


def now_of(
    sets: Iterable[MouldSet], *, studio: Studio, at: datetime, with_looks: bool = True
) -> list[SetNow]:
    """Return each set (from `all_of`) as it is at `at`. At most eight queries, however many sets.

    `with_looks` takes inspections into account for wear.
    """
    sets = list(sets)
    castings = {row.pk: _casting(row) for row in sets}
    known = [casting for casting in castings.values() if casting is not None]
    damp = damp_of(known, settings=studio.settings, at=at)
    sound = found_sound_at(casting.pk for casting in known) if with_looks else {}
    bookings = next_bookings(sets, at=at)
    found = []
    for row in sets:
        casting = castings[row.pk]
        parts = tuple(casting.parts.all()) if casting is not None else ()
        found.append(
            SetNow(
                mould_set=row,
                casting=casting,
                parts=parts,
                damp=damp[casting.pk] if casting is not None else None,
                wear=_wear(row, parts, sound),
                next_booking=bookings.get(row.pk),
            )
        )
    return found


def next_bookings(sets: Iterable[MouldSet], *, at: datetime) -> dict[UUID, Booking]:
    """Return the booking of each set that is running or comes next. One query."""
    rows = (
        Booking.objects.filter(mould_set__in=[row.pk for row in sets], given_up_at=None)
        .filter(until_at__gt=at)
        .select_related("member")
        .order_by("-from_at")
    )
    return {booking.mould_set_id: booking for booking in rows}


def bookings(mould_set: MouldSet) -> "QuerySet[Booking]":
    """Return the bookings of a set that were not given up."""
    return Booking.objects.filter(mould_set=mould_set, given_up_at=None).select_related("member")


def makes_the_same(mould_set: MouldSet, *, busy: Iterable[UUID] = (), at: datetime) -> list[SetNow]:
    """Return the other sets that could be pressed now for the same clay part, driest first."""
    others = all_of(mould_set.studio).filter(makes=mould_set.makes_id).exclude(pk=mould_set.pk)
    taken = set(busy)
    fit = [
        row
        for row in now_of(others.order_by("label"), studio=mould_set.studio, at=at)
        if row.casting is not None
        and row.casting.pk not in taken
        and row.unfit is None
        and row.dryness.word in ("dry", "usable")
    ]
    return sorted(fit, key=lambda row: row.dryness.word != "dry")


def _casting(row: MouldSet) -> Casting | None:
    found: list[Casting] = row.in_use  # type: ignore[attr-defined]  # prefetched by all_of
    if not found:
        return None
    found[0].mould_set = row
    return found[0]


def _wear(row: MouldSet, parts: tuple[MouldPart, ...], sound: dict[UUID, int]) -> Wear:
    most = max(parts, key=lambda part: part.presses, default=None)
    return wear_of(
        most.presses if most else 0,
        inspect_at=row.inspect_at_presses,
        retire_at=row.retire_at_presses,
        found_sound_at=sound.get(most.pk) if most else None,
    )
