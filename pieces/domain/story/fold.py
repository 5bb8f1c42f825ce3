"""What is so now, as a pure function of what was told."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from uuid import UUID

from pieces.domain import stages

from .facts import AnswerFact, Fact, PartFact, Recipe, StageFact
from .result import Story
from .teller import Pair, Teller

Key = tuple[object, ...]


def fold(facts: Iterable[Fact], recipe: Recipe) -> Story:
    """Return the story that the acts tell, whatever the order they were heard in.

    Parameters
    ----------
    facts
        What stands of all that was told of one piece: the caller leaves out what was taken back.
        The same fact twice is one fact.
    recipe
        What the design requires, and the parts begun.

    Returns
    -------
    The present, the visits, and the pairs of acts that cannot both be true. Acts are taken by
    `(happened_at, act)`, and inside an act what makes a thing before what puts it somewhere.
    """
    unique = {fact.id: fact for fact in facts}
    answers = _answers(unique.values())
    left_out = {act for answer in answers.values() for act in _left_out(answer)}
    told = [
        fact
        for fact in unique.values()
        if fact.act not in left_out and not isinstance(fact, AnswerFact)
    ]
    agreed = {pair for pair, answer in answers.items() if not set(_left_out(answer))}
    teller = Teller(recipe, agreed)
    for fact in _in_order(told, [answers[pair] for pair in agreed]):
        teller.tell(fact)
    touched_at = max((fact.happened_at for fact in told), default=None)
    return Story(
        now=teller.now(touched_at) if touched_at is not None else None,
        parts={
            pk: replace(part, cover=teller.marks.part_covers.get(pk, ""))
            for pk, part in teller.clay.parts.items()
        },
        visits=tuple(teller.visits),
        also_said=tuple(teller.beside),
        held=tuple(teller.held),
        clashes=tuple(teller.clashes()),
    )


def left_out_by(kind: str, choice: str, first: UUID, second: UUID) -> UUID | None:
    """Return the act that an answer leaves out, None where both stand.

    What was told of a time before the making stands by dating the making earlier, never by taking
    the making back.
    """
    if choice == "second":
        return first
    return second if choice == "first" and kind != "before_it_began" else None


def _left_out(answer: AnswerFact) -> list[UUID]:
    act = left_out_by(answer.kind, answer.choice, answer.first, answer.second)
    return [] if act is None else [act]


def _answers(facts: Iterable[Fact]) -> Mapping[Pair, AnswerFact]:
    """Return the first answer to each clash; later ones change nothing."""
    answers: dict[Pair, AnswerFact] = {}
    given = [fact for fact in facts if isinstance(fact, AnswerFact)]
    for answer in sorted(given, key=_key):
        answers.setdefault(frozenset((answer.first, answer.second)), answer)
    return answers


def _in_order(facts: list[Fact], both: list[AnswerFact]) -> list[Fact]:
    """Sort by time; where two acts stand together, put them in the order that makes sense."""
    by_act: dict[UUID, list[Fact]] = {}
    for fact in facts:
        by_act.setdefault(fact.act, []).append(fact)
    keys: dict[UUID, Key] = {fact.id: (*_key(fact)[:2], 0, *_key(fact)[1:]) for fact in facts}
    for answer in sorted(both, key=_key):
        first, second = by_act.get(answer.first, []), by_act.get(answer.second, [])
        if first and second:
            keys.update(_swapped(answer, first, second))
    return sorted(facts, key=lambda fact: keys[fact.id])


def _swapped(answer: AnswerFact, first: list[Fact], second: list[Fact]) -> dict[UUID, Key]:
    """Return new keys where the first told has to come after the second to make sense."""
    if answer.kind == "before_it_began":
        anchor = min(first, key=_key)
        return {fact.id: (*_key(anchor)[:2], -1, *_key(fact)[1:]) for fact in second}
    if _rank(first) <= _rank(second):
        return {}
    anchor = max(second, key=_key)
    return {fact.id: (*_key(anchor)[:2], 1, *_key(fact)[1:]) for fact in first}


def _rank(facts: list[Fact]) -> int:
    """Return how far along the job the act puts the piece; the lost come last."""
    return max((stages.rank(f.spot) for f in facts if isinstance(f, StageFact)), default=0)


def _key(fact: Fact) -> Key:
    # One act may make a thing and put it somewhere: making comes first.
    makes = isinstance(fact, StageFact) or (isinstance(fact, PartFact) and fact.kind == "pressed")
    return (fact.happened_at, fact.act.hex, not makes, fact.id.hex)
