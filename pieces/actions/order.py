"""When an act is refused, and when it becomes a clash: could its sender have known?"""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Final
from uuid import UUID

from pieces.domain import stages
from pieces.domain.story import ClashFound, Fact, StageFact, Story
from pieces.models import Piece
from pieces.queries.story import Telling
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, JournalSubject

CLOCKS_APART: Final = timedelta(minutes=5)  # two phones never agree to the second


class StageOutOfOrder(Conflict):
    code = "stage-out-of-order"
    title = "A piece cannot go to that stage from where it is."


class BeforeItBegan(Unworkable):
    code = "before-it-began"
    title = "The piece was not there yet."


def must_have_begun(act: Act, pieces: Sequence[Piece]) -> None:
    """Raise `BeforeItBegan` for a look at what was not there yet: a clock that is hours back."""
    early = [piece for piece in pieces if act.happened_at < piece.begun_at - CLOCKS_APART]
    if early:
        detail = f"{early[0].shown_mark} was begun later than that: look at the time."
        error = {"pointer": "#/happened_at", "code": BeforeItBegan.code, "detail": detail}
        raise BeforeItBegan(detail, errors=[error])


def check(
    *,
    act: Act,
    pieces: Sequence[Piece],
    tellings: Mapping[UUID, Telling],
    new: Mapping[UUID, Sequence[Fact]],
) -> None:
    """Refuse what the sender could have known to be impossible; anything else is for the fold.

    Raises `StageOutOfOrder` and `BeforeItBegan`, naming every piece that does not go.
    """
    impossible: list[tuple[Piece, ClashFound, Story]] = []
    for piece in pieces:
        facts, telling = new.get(piece.pk, ()), tellings[piece.pk]
        clash = _opened(telling.story(*facts), act, facts)
        if clash is not None:
            impossible.append((piece, clash, telling.story()))
    if not impossible:
        return
    others = _heard_since(act, [piece.pk for piece, *_ in impossible])
    known = [case for case in impossible if case[0].pk not in others]
    if known:
        raise _refusal(known)


def _opened(story: Story, act: Act, facts: Sequence[Fact]) -> ClashFound | None:
    """Return the clash that the act opens; catching up may skip steps, but wakes nothing lost."""
    mine = [clash for clash in story.clashes if act.id in (clash.first, clash.second)]
    if any(isinstance(fact, StageFact) and fact.is_catching_up for fact in facts):
        mine = [clash for clash in mine if clash.kind == "ended_or_moved"]
    return mine[0] if mine else None


def _heard_since(act: Act, ids: list[UUID]) -> set[UUID]:
    """Return the pieces of which others told something that this device had not yet seen.

    A sender that does not say what it had seen (`based_on` 0) speaks of the present.
    """
    if act.based_on == 0:
        return set()
    told = JournalSubject.objects.filter(
        subject_id__in=ids, entry__studio=act.studio, entry__seq__gt=act.based_on
    ).exclude(entry__device=act.device)
    return set(told.values_list("subject_id", flat=True))


def _refusal(cases: list[tuple[Piece, ClashFound, Story]]) -> Conflict | Unworkable:
    refused = [_told(*case) for case in cases]
    piece, clash, story = cases[0]
    detail = str(refused[0]["detail"])
    if clash.kind == "before_it_began":
        return BeforeItBegan(detail, refused=refused)
    spot = story.now.spot if story.now else stages.TO_PRESS
    follows = stages.nexts(spot, is_one_part=False)
    return StageOutOfOrder(
        detail,
        piece=str(piece.pk),
        mark=piece.shown_mark,
        stage=spot.stage,
        state=spot.state,
        can_follow=[{"stage": s.stage, "state": s.state} for s in follows],
        refused=refused,
    )


def _told(piece: Piece, clash: ClashFound, story: Story) -> dict[str, object]:
    words = stages.words(story.now.spot.state) if story.now else "not there"
    if clash.kind == "before_it_began":
        detail = f"{piece.shown_mark} was not yet made at that time."
    elif clash.kind == "two_places":
        detail = f"{piece.shown_mark} was put somewhere else at that time."
    else:
        detail = (
            f"{piece.shown_mark} is {words}: that cannot follow. Say the reason where it goes "
            "back, or that you are catching up."
        )
    return {"id": str(piece.pk), "mark": piece.shown_mark, "detail": detail}
