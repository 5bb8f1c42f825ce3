"""The parts of a piece while they are wet: pressed, out, joined, ended."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import StrEnum, auto
from typing import Final
from uuid import UUID

from pieces.domain.stages import DRYING, IN_MOULD, JOINED, OUT, Spot

from .facts import PartFact, Recipe
from .result import PartNow

# After "not yet": look again after a twentieth of the time in the mould so far, but no sooner and
# no later than this. Common practice, no source.
LOOK_AGAIN_LEAST: Final = timedelta(minutes=30)
LOOK_AGAIN_MOST: Final = timedelta(minutes=60)
LOOK_AGAIN_FRACTION: Final = 0.05

ADVANCEMENT: Final = {"to_press": 0, "in_mould": 1, "out": 2, "joined": 3}


class Heard(StrEnum):
    """What became of an act about a part."""

    STANDS = auto()
    BESIDE = auto()
    EARLY = auto()
    CLASHES = auto()
    HELD = auto()


@dataclass(slots=True)
class Change:
    """The act that made a part what it is, and what the part was before."""

    act: UUID
    before: PartNow


class Clay:
    """All parts of one piece, told act by act in order of time."""

    def __init__(self, recipe: Recipe) -> None:
        self.recipe = recipe
        self.parts = {part.id: PartNow(part.id, part.role) for part in recipe.parts}
        self.changes: dict[UUID, Change] = {}
        self.began: dict[UUID, UUID] = {}
        self.frozen: set[UUID] = set()
        self.is_reopened = False
        self.joined_by_others: set[UUID] = set()

    def tell(self, fact: PartFact, *, is_agreed: Callable[[UUID, UUID], bool]) -> Heard:
        """Take one act in; `is_agreed` says whether a person let two acts stand together."""
        part = self.parts.get(fact.part)
        if part is None:
            return Heard.BESIDE
        if part.id in self.frozen:
            return Heard.HELD
        heard, changed = self._heard(part, fact)
        if heard is Heard.CLASHES and is_agreed(self.changes[part.id].act, fact.act):
            heard, changed = Heard.STANDS, _forced(part, fact)
        if heard is Heard.STANDS:
            self._keep(part, changed, fact.act)
        return heard

    def freeze(self, part_id: UUID) -> UUID:
        """Put the part back to what it was before its last change, and return who made that."""
        change = self.changes[part_id]
        self.parts[part_id] = change.before
        self.frozen.add(part_id)
        return change.act

    def take_out(self, at: datetime, act: UUID) -> None:
        """Take every part out of its mould."""
        for part in self._alive():
            if part.state == "in_mould":
                self._keep(part, _out(part, at), act)

    def join(self, at: datetime, act: UUID) -> None:
        """Join every part there is."""
        self.take_out(at, act)
        for part in self._alive():
            if part.state == "out":
                self._keep(part, replace(part, state="joined", joined_at=at), act)

    def settle(self, at: datetime, act: UUID) -> None:
        """Make the parts what they must be for the piece to stand and dry."""
        if self.recipe.is_one_part:
            self.take_out(at, act)
        else:
            self.join(at, act)

    def accept(self) -> None:
        """Let cracks rest: somebody looked at the piece and accepted it."""
        for part in self._alive():
            self.parts[part.id] = replace(part, cracked_at=None)

    @property
    def is_begun(self) -> bool:
        return any(part.state != "to_press" for part in self.parts.values())

    @property
    def is_damaged(self) -> bool:
        return any(part.cracked_at for part in self._alive())

    @property
    def is_missing_one(self) -> bool:
        return self._required()[1]

    @property
    def look_again_at(self) -> datetime | None:
        return min((p.look_again_at for p in self._alive() if p.look_again_at), default=None)

    @property
    def last_join_at(self) -> datetime | None:
        return max((p.joined_at for p in self._alive() if p.joined_at), default=None)

    def spot(self) -> Spot | None:
        """Return where the parts put the piece: the least advanced that the design requires."""
        alive = self._alive()
        if not alive:
            return OUT if self.is_reopened else None
        chosen, is_missing = self._required()
        if chosen and not is_missing and all(part.state == "joined" for part in chosen):
            return JOINED
        if self.is_reopened:
            return OUT
        if any(part.state == "in_mould" for part in chosen or alive):
            return IN_MOULD
        if self.recipe.is_one_part and self.recipe.is_moulded:
            return DRYING
        # What is still to press counts like the parts that are there, so that a body in its mould
        # without a handle reads "in mould".
        return OUT

    def _required(self) -> tuple[list[PartNow], bool]:
        """Return the parts that fill the design's roles, and whether one of them is missing."""
        chosen: list[PartNow] = []
        is_missing = False
        for wanted in self.recipe.wanted:
            of_role = sorted(
                (part for part in self._alive() if part.role == wanted.role),
                key=lambda part: -ADVANCEMENT[part.state],
            )
            chosen += of_role[: wanted.count]
            is_missing |= len(of_role) < wanted.count
        return chosen, is_missing

    def _alive(self) -> list[PartNow]:
        return [part for part in self.parts.values() if part.is_alive]

    def _keep(self, part: PartNow, changed: PartNow, act: UUID) -> None:
        self.changes[part.id] = Change(act, part)
        self.parts[part.id] = changed
        if part.state == "to_press":
            self.began[part.id] = act
        if changed.state == "joined" and part.state != "joined":
            self._join_the_last(changed, act)
        if changed.state == "replaced" and part.state == "joined":
            self.is_reopened = True

    def _join_the_last(self, joined: PartNow, act: UUID) -> None:
        """Join the part that all the others were joined to: nobody taps it by itself."""
        chosen, is_missing = self._required()
        left = [part for part in chosen if part.state != "joined"]
        if is_missing or len(left) != 1 or left[0].state != "out" or left[0].id in self.frozen:
            return
        last = left[0]
        self.changes[last.id] = Change(act, last)
        self.parts[last.id] = replace(last, state="joined", joined_at=joined.joined_at)
        self.joined_by_others.add(last.id)

    def _heard(self, part: PartNow, fact: PartFact) -> tuple[Heard, PartNow]:
        if fact.kind == "pressed":
            is_first = part.state == "to_press"
            heard = Heard.STANDS if is_first else Heard.BESIDE
            return heard, self._pressed(part, fact.happened_at) if is_first else part
        if part.state == "to_press":
            return Heard.EARLY, part
        if not part.is_alive:
            # What ended cannot be joined; anything else told of it comes too late to matter.
            return (Heard.CLASHES if fact.kind == "joined" else Heard.BESIDE), part
        if fact.kind == "joined" and part.id in self.joined_by_others:
            # Somebody tapped the part that the others were joined to: no second story.
            self.joined_by_others.discard(part.id)
            return Heard.STANDS, part
        changed = _changed(part, fact)
        if changed is not None:
            return Heard.STANDS, changed
        is_joined = part.state == "joined"
        return (Heard.CLASHES if is_joined and fact.kind == "scrapped" else Heard.BESIDE), part

    def _pressed(self, part: PartNow, at: datetime) -> PartNow:
        if self.recipe.role_is_moulded(part.role):
            return replace(part, state="in_mould", pressed_at=at)
        return replace(part, state="out", pressed_at=at, out_at=at)


def look_again_at(pressed_at: datetime | None, at: datetime) -> datetime:
    """Return when to look again at a part that was not yet ready at `at`, to five minutes."""
    stood = at - pressed_at if pressed_at else timedelta(0)
    pause = min(max(stood * LOOK_AGAIN_FRACTION, LOOK_AGAIN_LEAST), LOOK_AGAIN_MOST)
    again = at + pause
    return again - timedelta(
        minutes=again.minute % 5, seconds=again.second, microseconds=again.microsecond
    )


def _out(part: PartNow, at: datetime) -> PartNow:
    return replace(part, state="out", out_at=at, look_again_at=None)


def _joined(part: PartNow, at: datetime) -> PartNow:
    """Join the part; one still in its mould came out of it then."""
    out_at = part.out_at or at
    return replace(part, state="joined", out_at=out_at, joined_at=at, look_again_at=None)


def _ended(part: PartNow, kind: str, at: datetime) -> PartNow:
    return replace(part, state=kind, ended_at=at, look_again_at=None)


def _forced(part: PartNow, fact: PartFact) -> PartNow:
    """Return the part after both of two clashing acts: the later one has the last word."""
    if fact.kind == "joined":
        return replace(_joined(part, fact.happened_at), ended_at=None)
    return _ended(part, fact.kind, fact.happened_at)


def _changed(part: PartNow, fact: PartFact) -> PartNow | None:
    """Return what the act makes of a part that is there, None where it cannot follow."""
    at, in_mould = fact.happened_at, part.state == "in_mould"
    match fact.kind:
        case "demoulded" if in_mould:
            changed = _out(part, at)
        case "not_yet" if in_mould:
            changed = replace(part, look_again_at=look_again_at(part.pressed_at, at))
        case "stuck" if in_mould:
            changed = part
        case "joined" if part.state != "joined":
            changed = _joined(part, at)
        case "cracked" if part.cracked_at is None:
            changed = replace(part, cracked_at=at)
        case "replaced":
            changed = _ended(part, "replaced", at)
        case "scrapped" if part.state != "joined":
            changed = _ended(part, "scrapped", at)
        case _:
            return None
    return changed
