"""Castings: the one in use, its dampness, and which of its pressings want a second look."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final
from uuid import UUID

from django.db.models import Max, QuerySet

from moulds.domain import folds
from moulds.domain.folds import SinceDry, Weights
from moulds.domain.readiness import Dryness, Limits, dryness_of
from moulds.models import (
    Casting,
    Inspection,
    MouldPart,
    MouldPartEvent,
    MouldSet,
    MouldWeighing,
    Pressing,
)
from studio.models import Studio, StudioSettings

from . import facts

GOOD_LOOKS = (Inspection.Finding.CRISP, Inspection.Finding.SOFTENING)
# Common practice, no source.
PRESSES_TO_CHECK: Final = 6


@dataclass(frozen=True, slots=True)
class Damp:
    """How damp one casting is, and since what."""

    dryness: Dryness
    since: SinceDry


def in_use(mould_set: MouldSet) -> Casting | None:
    """Return the casting of a set that is in use."""
    return Casting.objects.filter(mould_set=mould_set, is_in_use=True).first()


def all_of(mould_set: MouldSet) -> "QuerySet[Casting]":
    """Return every casting that a set ever had."""
    return Casting.objects.filter(mould_set=mould_set).select_related("master")


def weighings(mould_set: MouldSet) -> "QuerySet[MouldWeighing]":
    """Return the standing weighings of every casting of a set."""
    found: Any = MouldWeighing.objects.standing().filter(casting__mould_set=mould_set)
    return found  # type: ignore[no-any-return]


def states_said(mould_part: MouldPart) -> "QuerySet[MouldPartEvent]":
    """Return what was said of a mould part and stands."""
    found: Any = MouldPartEvent.objects.standing().filter(mould_part=mould_part)
    return found  # type: ignore[no-any-return]


def inspections(mould_set: MouldSet) -> "QuerySet[Inspection]":
    """Return the standing inspections of every casting of a set."""
    found: Any = Inspection.objects.standing().filter(mould_part__casting__mould_set=mould_set)
    return found.select_related("entry").prefetch_related("entry__photos")  # type: ignore[no-any-return]


def damp_of(
    castings: Iterable[Casting], *, settings: StudioSettings, at: datetime
) -> dict[UUID, Damp]:
    """Return how damp each casting is at `at`. Two queries, however many castings.

    The castings come with `mould_set` and its `makes` (`select_related`).
    """
    castings = list(castings)
    ids = [casting.pk for casting in castings]
    weighings, pressings = facts.weighings_of(ids), facts.counts_of(ids)
    found = {}
    for casting in castings:
        scale = [weighed for weighed in weighings[casting.pk] if weighed.happened_at <= at]
        latest = folds.weights_of(scale)
        since = folds.since_dry(
            [pressed for pressed in pressings[casting.pk] if pressed.happened_at <= at],
            dry_at=folds.dry_at(
                scale,
                capacity_fraction=casting.capacity_fraction,
                dry_below=settings.mould_dry_below_fraction,
            ),
            weighed_at=latest.weighed_at,
            at=at,
        )
        dryness = dryness_of(
            # The dry weight is no matter of time: one taken later holds for earlier days too.
            Weights(casting.dry_g, latest.now_g, latest.weighed_at),
            since,
            limits=limits_of(casting.mould_set, settings),
            capacity_fraction=casting.capacity_fraction,
            clay_g=casting.mould_set.makes.clay_g,
        )
        found[casting.pk] = Damp(dryness, since)
    return found


def limits_of(mould_set: MouldSet, settings: StudioSettings) -> Limits:
    """Return the limits that a set is judged by: the studio's, and its own."""
    return Limits(
        dry_below=settings.mould_dry_below_fraction,
        usable_below=settings.mould_usable_below_fraction,
        rest_after=mould_set.rest_after_presses,
    )


def presses_since_dry(studio: Studio, *, at: datetime) -> dict[UUID, int]:
    """Return the pressings since dry of each casting in use. Three queries."""
    castings = Casting.objects.filter(studio=studio, is_in_use=True).select_related(
        "mould_set__makes"
    )
    damp = damp_of(castings, settings=studio.settings, at=at)
    return {casting_id: its.since.count for casting_id, its in damp.items()}


def ordinals_since_dry(castings: Iterable[Casting], *, dry_below: float) -> dict[UUID, int]:
    """Return for each standing pressing which press since dry it was. Two queries."""
    castings = list(castings)
    ids = [casting.pk for casting in castings]
    weighings, pressings = facts.weighings_of(ids), facts.counts_of(ids)
    return {
        pressing.id: folds.ordinal_of(
            pressing,
            pressings[casting.pk],
            weighings[casting.pk],
            capacity_fraction=casting.capacity_fraction,
            dry_below=dry_below,
        )
        for casting in castings
        for pressing in pressings[casting.pk]
    }


def pressings_to_check(mould_part: MouldPart, *, until: datetime) -> list[Pressing]:
    """Return the pressings with a mould part that may hold crumbs, newest first.

    When a chip is found, crumbs of plaster may be in what was pressed since somebody last found
    the part good; they pop out after firing. A look can miss the beginning of a chip, so the last
    presses are listed however lately it was found good.
    """
    looks = Inspection.objects.standing().filter(
        mould_part=mould_part, finding__in=GOOD_LOOKS, happened_at__lte=until
    )
    looked_at = looks.aggregate(latest=Max("happened_at"))["latest"]
    found: Any = Pressing.objects.standing().filter(mould_parts=mould_part, happened_at__lte=until)
    rows: list[Pressing] = list(found.order_by("-happened_at", "-id"))
    if looked_at is None:
        return rows
    last = last_presses(rows)
    return last + [row for row in rows[len(last) :] if row.happened_at > looked_at]


def pressings_to_look_over(casting: Casting, *, until: datetime) -> list[Pressing]:
    """Return the pressings of a casting that may hold crumbs, newest first.

    Of a whole part these are the last presses; of a hurt one, all since it was found good.
    """
    found = {row.pk: row for part in casting.parts.all() for row in _doubtful(part, until)}
    return sorted(found.values(), key=lambda row: (row.happened_at, row.pk), reverse=True)


def _doubtful(part: MouldPart, until: datetime) -> list[Pressing]:
    found = pressings_to_check(part, until=until)
    return last_presses(found) if part.state == MouldPart.State.WHOLE else found


def last_pressed(mould_set: MouldSet) -> Casting | None:
    """Return the casting that was pressed last: a new one gives way till its own first press."""
    rows: Any = Pressing.objects.standing().filter(casting__mould_set=mould_set)
    last = rows.select_related("casting").order_by("-happened_at", "-id").first()
    return last.casting if last is not None else None


def last_presses(newest_first: list[Pressing]) -> list[Pressing]:
    """Return the pressings that hold the last `PRESSES_TO_CHECK` presses, newest first."""
    presses = 0
    for taken, pressing in enumerate(newest_first):
        if presses >= PRESSES_TO_CHECK:
            return newest_first[:taken]
        presses += pressing.count
    return newest_first


def found_sound_at(castings: Iterable[UUID]) -> dict[UUID, int]:
    """Return each mould part's count of pressings when it was last found crisp. Four queries."""
    castings = list(castings)
    looks: dict[UUID, datetime] = {}
    crisp = Inspection.objects.standing().filter(
        mould_part__casting__in=castings, finding=Inspection.Finding.CRISP
    )
    for part_id, looked_at in crisp.order_by("happened_at").values_list(
        "mould_part_id", "happened_at"
    ):
        looks[part_id] = looked_at
    if not looks:
        return {}
    parts = MouldPart.objects.filter(pk__in=looks).values_list("pk", "casting_id", "presses_before")
    pressings = facts.pressings_of(castings)
    return {
        part_id: folds.count_of(
            part_id,
            before=before,
            pressings=[p for p in pressings[casting_id] if p.happened_at <= looks[part_id]],
        )
        for part_id, casting_id, before in parts
    }
