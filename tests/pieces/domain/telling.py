"""Telling a story in a test: `Book` writes facts whose acts are named by short words."""

from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from typing import Any
from uuid import UUID, uuid5

from pieces.domain.stages import Spot
from pieces.domain.story import (
    AnswerFact,
    CheckFact,
    CoverFact,
    Fact,
    MoveFact,
    PartFact,
    PartMade,
    Recipe,
    StageFact,
    Story,
    Wanted,
    WeighingFact,
    fold,
)

NOON = datetime(2026, 10, 23, 12, 0, tzinfo=UTC)
SPACE = UUID(int=7)
TILE = Recipe((Wanted("tile"),), (PartMade(uuid5(SPACE, "tile"), "tile"),))
BOAT = Recipe(
    (Wanted("body"), Wanted("handle")),
    (
        PartMade(uuid5(SPACE, "body"), "body"),
        PartMade(uuid5(SPACE, "handle"), "handle"),
        PartMade(uuid5(SPACE, "handle 2"), "handle"),
    ),
)


def named(word: str) -> UUID:
    return uuid5(SPACE, word)


def told_by(act: str | UUID) -> UUID:
    return act if isinstance(act, UUID) else named(act)


class Book:
    """Facts of one piece. Times are hours after noon; acts are named, by their kind if not said."""

    def __init__(self, recipe: Recipe) -> None:
        self.recipe = recipe
        self.facts: list[Fact] = []

    def stage(self, hour: float, spot: Spot, act: str = "", **more: Any) -> "Book":
        base = self._base(hour, act or spot.state, more)
        return self._add(StageFact(**base, stage=spot.stage, state=spot.state, **more))

    def part(self, hour: float, part: str, kind: str, act: str = "", **more: Any) -> "Book":
        base = self._base(hour, act or f"{kind} {part}", more)
        return self._add(PartFact(**base, part=named(part), kind=kind))

    def cover(
        self, hour: float, state: str, act: str = "", part: str | None = None, **more: Any
    ) -> "Book":
        base = self._base(hour, act or f"cover {state}", more)
        whose = named(part) if part else None
        return self._add(CoverFact(**base, state=state, part=whose))

    def move(self, hour: float, place: str, act: str = "", **more: Any) -> "Book":
        base = self._base(hour, act or f"move {place}", more)
        return self._add(MoveFact(**base, place=named(place)))

    def check(self, hour: float, feel: str, act: str = "", **more: Any) -> "Book":
        return self._add(CheckFact(**self._base(hour, act or f"feels {feel}", more), feel=feel))

    def weigh(self, hour: float, mass_g: float, act: str = "", **more: Any) -> "Book":
        base = self._base(hour, act or f"weighs {mass_g}", more)
        return self._add(WeighingFact(**base, mass_g=mass_g))

    def answer(
        self, hour: float, kind: str, first: str | UUID, second: str | UUID, choice: str
    ) -> "Book":
        base = self._base(hour, f"answer {choice} {hour}", {})
        pair: Mapping[str, Any] = {"first": told_by(first), "second": told_by(second)}
        return self._add(AnswerFact(**base, kind=kind, choice=choice, **pair))

    def told(self) -> Story:
        return fold(self.facts, self.recipe)

    def without(self, act: str) -> Story:
        return fold([fact for fact in self.facts if fact.act != named(act)], self.recipe)

    def _base(self, hour: float, act: str, more: dict[str, Any]) -> dict[str, Any]:
        device = named(more.pop("device", "phone"))
        at = NOON + timedelta(hours=hour)
        return {"id": uuid5(named(act), str(len(self.facts))), "act": named(act)} | {
            "happened_at": at,
            "device": device,
        }

    def _add(self, fact: Fact) -> "Book":
        self.facts.append(fact)
        return self


def at(hour: float) -> datetime:
    return NOON + timedelta(hours=hour)


def pressed_tile() -> Book:
    return Book(TILE).part(0, "tile", "pressed")


def bone_dry_tile() -> Book:
    book = pressed_tile().part(16, "tile", "demoulded")
    return book.stage(200, Spot("drying", "bone_dry"))


def joined_boat() -> Book:
    book = Book(BOAT).part(0, "body", "pressed").part(1, "handle", "pressed")
    book.part(16, "body", "demoulded").part(17, "handle", "demoulded")
    return book.part(18, "handle", "joined")
