"""Telling the story of a piece act by act, in order of time."""

from collections.abc import Set
from dataclasses import dataclass, field
from datetime import datetime
from typing import Final
from uuid import UUID

from pieces.domain import stages
from pieces.domain.stages import Spot, Step

from .clay import Clay, Heard
from .facts import CheckFact, CoverFact, Fact, MoveFact, PartFact, Recipe, StageFact, WeighingFact
from .marks import Marks
from .result import ClashFound, Doubt, Now, Said, Visited
from .whereabouts import Whereabouts

IN_KILN: Final = (stages.IN_BISQUE, stages.IN_GLAZE)
STILL_CLAY: Final = (stages.OUT, stages.JOINED, stages.DRYING, stages.BONE_DRY)
Pair = frozenset[UUID]


@dataclass(slots=True)
class Teller:
    """The story so far. `agreed` are pairs of acts that a person let stand together."""

    recipe: Recipe
    agreed: Set[Pair]
    clay: Clay = field(init=False)
    lead: Spot | None = None
    waiting: Spot | None = None
    birth: Fact | None = None
    missed: tuple[Spot, Spot | None] | None = None
    visits: list[Visited] = field(default_factory=list)
    beside: list[Said] = field(default_factory=list)
    held: list[UUID] = field(default_factory=list)
    early: list[Fact] = field(default_factory=list)
    part_clashes: list[ClashFound] = field(default_factory=list)
    doubt: Doubt | None = None
    whereabouts: Whereabouts = field(default_factory=Whereabouts)
    marks: Marks = field(default_factory=Marks)

    def __post_init__(self) -> None:
        self.clay = Clay(self.recipe)

    @property
    def spot(self) -> Spot:
        """Where the piece is after what was told so far."""
        if self.doubt is not None:
            return self.doubt.clash.stands
        return self.lead or self.clay.spot() or self.waiting or stages.TO_PRESS

    def tell(self, fact: Fact) -> None:
        """Take the next act in."""
        if self.birth is None and not self._is_birth(fact):
            if not isinstance(fact, CheckFact | WeighingFact):
                self.early.append(fact)
            return
        match fact:
            case StageFact():
                self._stage(fact)
            case PartFact() | CoverFact() | MoveFact() if self._is_lost():
                self._clash("ended_or_moved", fact, end=None)
            case PartFact():
                self._part(fact)
            case CoverFact():
                self._cover(fact)
            case MoveFact():
                self._put(fact.place, fact)
            case CheckFact():
                self._check(fact)
        self._note_visit(fact)

    def now(self, touched_at: datetime) -> Now | None:
        """Return the present, None when nothing is left of the piece."""
        if self.birth is None:
            return None
        is_gone = self.spot in (stages.SCRAPPED, stages.LET_GO, stages.DELIVERED)
        return Now(
            spot=self.spot,
            since_at=self.visits[-1].at,
            # Where a person said that both stand, the making is dated by what came before it.
            begun_at=min(self.birth.happened_at, *(visit.at for visit in self.visits)),
            touched_at=touched_at,
            place=None if is_gone else self.whereabouts.place,
            cover=self.marks.cover,
            cover_since_at=self.marks.cover_since_at,
            is_damaged=self.clay.is_damaged,
            grade=self.marks.grade,
            has_interrupted_bisque=self.marks.has_interrupted_bisque,
            look_again_at=self.clay.look_again_at,
            last_join_at=self.clay.last_join_at,
        )

    def clashes(self) -> list[ClashFound]:
        """Return every pair of acts that waits for a person."""
        found = [*self.part_clashes, *self.whereabouts.clashes, *self._begun_too_late()]
        if self.doubt is not None:
            found.append(self.doubt.clash)
        unique = {frozenset((clash.first, clash.second)): clash for clash in reversed(found)}
        return sorted(unique.values(), key=lambda clash: (clash.first.hex, clash.second.hex))

    def _is_birth(self, fact: Fact) -> bool:
        if not isinstance(fact, StageFact) and not (
            isinstance(fact, PartFact) and fact.kind == "pressed"
        ):
            return False
        self.birth = fact
        return True

    def _is_lost(self) -> bool:
        return self.doubt is None and self.lead is not None and self.lead.stage == "lost"

    def _agree(self, first: UUID, second: UUID) -> bool:
        return frozenset((first, second)) in self.agreed

    def _note_visit(self, fact: Fact) -> None:
        if self.doubt is None and (not self.visits or self.visits[-1].spot != self.spot):
            self.visits.append(Visited(self.spot, fact.happened_at, fact.act))

    def _stage(self, fact: StageFact) -> None:
        if self.birth is fact:
            self._begin(fact)
        elif fact.spot in stages.WAITING:
            self._wait(fact)
        elif self.doubt is not None:
            self._stage_in_doubt(fact, self.doubt)
        else:
            self._stage_in_order(fact)

    def _begin(self, fact: StageFact) -> None:
        if fact.spot in stages.MAKING:
            self.waiting = fact.spot
            self._visit(fact)
        else:
            self._come_to(fact)

    def _wait(self, fact: StageFact) -> None:
        is_waiting = self.lead is None and self.doubt is None and not self.clay.is_begun
        if is_waiting and stages.rank(fact.spot) > stages.rank(self.spot):
            self.waiting = fact.spot
            self._visit(fact)
        else:
            self._say_beside(fact)

    def _stage_in_doubt(self, fact: StageFact, doubt: Doubt) -> None:
        """Let an act stand to which both stories lead; let any other wait."""
        if all(self._step(end, fact.spot) in (Step.ON, Step.LOST) for end in doubt.ends):
            self.doubt = None
            self._come_to(fact)
        else:
            self.held.append(fact.act)

    def _stage_in_order(self, fact: StageFact) -> None:
        step = self._step(self.spot, fact.spot)
        if step is Step.SAME:
            self._same_again(fact)
        elif self._may(step, fact):
            self._come_to(fact, is_found=step is Step.FOUND)
        else:
            kind = "ended_or_moved" if self._is_lost() else "two_stages"
            self._clash(kind, fact, end=fact.spot)

    def _may(self, step: Step, fact: StageFact) -> bool:
        if fact.spot == stages.JOINED and step is Step.ON and self.recipe.is_moulded:
            step = Step.NONE if self.clay.is_missing_one else step
        if step in (Step.ON, Step.LOST, Step.FOUND):
            return True
        if step is Step.BACK and (fact.reason or fact.occasion_id):
            return True
        is_told_so = fact.is_catching_up and not self._is_lost()
        return is_told_so or self._agree(self.visits[-1].act, fact.act)

    def _same_again(self, fact: StageFact) -> None:
        here = self.visits[-1]
        is_elsewhere = (
            fact.spot in IN_KILN
            and None not in (here.occasion_id, fact.occasion_id)
            and here.occasion_id != fact.occasion_id
        )
        if not is_elsewhere:
            self._say_beside(fact)
        elif self._agree(here.act, fact.act):
            self._come_to(fact)
        else:
            self._clash("two_places", fact, end=fact.spot)

    def _step(self, start: Spot, end: Spot) -> Step:
        missed_at = self.missed[0] if self.missed else None
        return stages.step(start, end, is_one_part=self.recipe.is_one_part, missed_at=missed_at)

    def _come_to(self, fact: StageFact, *, is_found: bool = False) -> None:
        spot, at = fact.spot, fact.happened_at
        if is_found and self.missed is not None:
            self.lead = self.missed[1]
        elif spot.stage == "lost":
            self.missed = (self.spot, self.lead)
            self.lead = spot
        elif spot in stages.MAKING:
            self._come_to_clay(spot, at, fact.act)
        else:
            self.clay.settle(at, fact.act)
            self.lead = spot
        self.marks.remember(fact)
        if spot == stages.CHECKED:
            self.clay.accept()
        self._visit(fact)

    def _come_to_clay(self, spot: Spot, at: datetime, act: UUID) -> None:
        if self.lead is None:
            (self.clay.join if spot == stages.JOINED else self.clay.take_out)(at, act)
        self.lead = None if self.clay.spot() == spot else spot

    def _visit(self, fact: StageFact) -> None:
        self.visits.append(
            Visited(
                self.spot,
                fact.happened_at,
                fact.act,
                reason=fact.reason,
                occasion_id=fact.occasion_id,
                occasion_name=fact.occasion_name,
            )
        )
        if fact.place is not None:
            self._put(fact.place, fact)

    def _part(self, fact: PartFact) -> None:
        spot = self.spot
        is_fired = stages.rank(spot) >= stages.rank(stages.IN_BISQUE)
        if fact.kind == "replaced" and is_fired and self.doubt is None:
            self._clash("two_stages", fact, end=None)
            return
        heard = self.clay.tell(fact, is_agreed=self._agree)
        if heard is Heard.BESIDE and fact.kind == "joined" and self.lead == stages.OUT:
            self.lead = stages.JOINED
        elif heard is Heard.STANDS and fact.kind == "replaced" and spot in STILL_CLAY:
            self._reopen()
        elif heard is Heard.CLASHES:
            first = self.clay.freeze(fact.part)
            found = ClashFound("two_stages", first, fact.act, self.spot, part=fact.part)
            self.part_clashes.append(found)
        elif heard is Heard.HELD:
            self.held.append(fact.act)
        elif heard is Heard.EARLY:
            self.early.append(fact)
        elif heard is Heard.BESIDE:
            self._say_beside(fact)

    def _reopen(self) -> None:
        if self.lead is not None or self.recipe.is_one_part:
            self.clay.is_reopened = True
        self.lead = None

    def _cover(self, fact: CoverFact) -> None:
        self.marks.put_on(fact)
        is_standing = self.spot == stages.JOINED or (
            self.spot == stages.OUT and self.recipe.is_one_part
        )
        if is_standing and self.doubt is None:
            self.clay.settle(fact.happened_at, fact.act)
            self.lead = stages.DRYING

    def _check(self, fact: CheckFact) -> None:
        """Hear that the whole piece feels bone dry: that is how a person says so by touch."""
        if fact.feel != "bone_dry" or fact.part is not None or self.doubt is not None:
            return
        if self._step(self.spot, stages.BONE_DRY) is Step.ON:
            self.clay.settle(fact.happened_at, fact.act)
            self.lead = stages.BONE_DRY

    def _put(self, place: UUID, fact: Fact) -> None:
        self.whereabouts.put(place, fact, spot=self.spot, is_agreed=self._agree)

    def _say_beside(self, fact: Fact) -> None:
        self.beside.append(Said(fact.act, fact.happened_at))

    def _clash(self, kind: str, fact: Fact, *, end: Spot | None) -> None:
        last = self.visits[-1]
        if last.act == fact.act:
            self._say_beside(fact)
            return
        if len(self.visits) > 1:
            self.visits.pop()
        stands = self.visits[-1].spot
        clash = ClashFound(kind, last.act, fact.act, stands)
        self.doubt = Doubt(clash, ends=(last.spot, end or stands))

    def _begun_too_late(self) -> list[ClashFound]:
        """Return acts told of a time before the thing was made, each with the act that made it."""
        found = []
        for fact in self.early:
            began = self.clay.began.get(fact.part) if isinstance(fact, PartFact) else None
            if began is None and self.birth is not None and not isinstance(fact, PartFact):
                began = self.birth.act
            if began is not None:
                found.append(ClashFound("before_it_began", fact.act, began, self.spot))
        return found
