"""Two stories of a load that cannot both be so: which acts, and what each answer comes to."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final, Literal
from uuid import NAMESPACE_OID, UUID, uuid5

from firings.domain.loads import Quarrel

Kind = Literal["two_load_stories", "two_kilns"]
CHOICES: Final = ("first", "second")
CONSEQUENCES: Final[dict[str, tuple[str, str]]] = {
    "two_load_stories": (
        "What was told first stands; the second, and what was told on top of it, did not happen "
        "to this load.",
        "What was told second stands; the first did not happen, and its ware goes with the second.",
    ),
    "two_kilns": (
        "It is in the load that was told first; it is taken off the other, and what that fire did "
        "is struck through in its story.",
        "It is in the load that was told second; it is taken off the first, and what that fire did "
        "is struck through in its story.",
    ),
}


@dataclass(frozen=True, slots=True)
class Stories:
    """The act told first, and the ones that cannot follow it, in the order they happened."""

    first: UUID
    second: UUID
    on_top: tuple[UUID, ...] = ()

    @property
    def id(self) -> UUID:
        return clash_id(self.first, self.second)


def clash_id(first: UUID, second: UUID) -> UUID:
    """Return the id of a clash of two acts, the same on every phone."""
    return uuid5(NAMESPACE_OID, " ".join(sorted((str(first), str(second)))))


def stories(quarrels: Iterable[Quarrel]) -> list[Stories]:
    """Return the quarrels of a load, those with one and the same act as one clash.

    What cannot follow though nothing was told before it has no second story: it is taken back.
    """
    found: dict[UUID, list[UUID]] = {}
    for quarrel in quarrels:
        if quarrel.against is not None:
            found.setdefault(quarrel.against, []).append(quarrel.misfit)
    return [Stories(first, told[0], tuple(told[1:])) for first, told in found.items()]


def left_out(told: Stories, choice: str) -> tuple[UUID, ...]:
    """Return the acts that an answer takes back, the last first."""
    if choice == "first":
        return (*reversed(told.on_top), told.second)
    return (told.first,)
