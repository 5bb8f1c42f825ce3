"""Pressings: each wears the mould parts it used, whether or not the clay lives."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from moulds.domain import cautions
from moulds.domain.cautions import Caution
from moulds.domain.readiness import say_dryness, wants_rest
from moulds.domain.words import ordinal
from moulds.models import Casting, MouldPart, Pressing
from moulds.queries.castings import Damp, damp_of
from studio.domain.refusals import Unworkable
from studio.models import Act, JournalEntry, SlabBlock

from . import meetings
from .folds import refold_casting


class PartOfAnotherCasting(Unworkable):
    code = "part-of-another-casting"
    title = "Those mould parts do not belong together."


class BeforePoured(Unworkable):
    code = "before-it-was-poured"
    title = "The casting was not there yet."


@dataclass(frozen=True, slots=True)
class Recorded:
    """The pressing, which press since dry it was, and what to mind."""

    pressing: Pressing
    casting: Casting
    press_since_dry: int
    cautions: tuple[Caution, ...]


def record(
    *,
    act: Act,
    entry: JournalEntry,
    casting: Casting,
    mould_parts: Sequence[MouldPart],
    count: int = 1,
    slab_block: SlabBlock | None = None,
    in_use_until: datetime | None = None,
    busy: Collection[UUID] = (),
) -> Recorded:
    """Record `count` pressings with exactly those mould parts, inside the caller's transaction.

    It happened, so a wet, chipped or booked mould only warns; whoever had booked it is told, once.
    `in_use_until` is when the clay is likely to leave, where the caller knows better than the set's
    own `release_h`; `busy` are castings with clay in them, never offered instead. Raises
    `PartOfAnotherCasting` and `BeforePoured`.
    """
    casting = (
        Casting.objects.select_for_update(of=("self",))
        .select_related("mould_set__makes", "studio__settings")
        .get(pk=casting.pk)
    )
    _check(act, casting, mould_parts)
    damp = damp_of([casting], settings=act.studio.settings, at=act.happened_at)[casting.pk]
    is_first = not casting.pressings.exists() and not any(part.presses for part in mould_parts)
    pressing = Pressing.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        casting=casting,
        count=count,
        slab_block=slab_block,
    )
    pressing.mould_parts.set(mould_parts)
    folded = refold_casting(casting)
    press = damp.since.count + 1
    met = meetings.tell(
        act=act,
        casting=casting,
        press_since_dry=damp.since.count + count,
        in_use_until=in_use_until,
        busy=busy,
    )
    said = [
        *([cautions.FIRST_PRESS] if is_first else []),
        *_about_parts(casting, mould_parts),
        *_about_water(damp, press=damp.since.count + count, casting=casting),
        *met,
    ]
    return Recorded(pressing, folded, press, tuple(said))


def _check(act: Act, casting: Casting, mould_parts: Sequence[MouldPart]) -> None:
    if not mould_parts or any(part.casting_id != casting.pk for part in mould_parts):
        error = {
            "pointer": "#/mould_part_ids",
            "code": PartOfAnotherCasting.code,
            "detail": "Name parts of the casting that was pressed.",
        }
        raise PartOfAnotherCasting("Name parts of the casting that was pressed.", errors=[error])
    if casting.poured_at is not None and act.happened_at < casting.poured_at:
        raise BeforePoured(
            "Pressed before it was poured: look at the time, or at the casting.",
            poured_at=casting.poured_at.isoformat(),
        )


def _about_parts(casting: Casting, mould_parts: Sequence[MouldPart]) -> list[Caution]:
    states = {part.state for part in mould_parts}
    said = [] if casting.is_in_use else [cautions.RETIRED]
    for state, caution in (
        (MouldPart.State.CHIPPED, cautions.CHIPPED),
        (MouldPart.State.OUT_OF_USE, cautions.OUT_OF_USE),
        (MouldPart.State.MISSING, cautions.MISSING),
    ):
        if state in states:
            said.append(caution)
    return said


def _about_water(damp: Damp, *, press: int, casting: Casting) -> list[Caution]:
    if damp.dryness.word == "rest":
        which = ordinal(press).capitalize()
        detail = (
            f"{which} press since dry, {say_dryness(damp.dryness)} before it: "
            "expect it to stick and to be slow."
        )
        return [Caution(cautions.EDGE_OF_USE.code, detail)]
    rest_after = casting.mould_set.rest_after_presses
    if wants_rest(press, damp.dryness, rest_after=rest_after):
        return [cautions.wants_rest(press, rest_after)]
    return []
