"""Pieces come to a stage, are lost, are found."""

from collections.abc import Sequence
from typing import Final
from uuid import UUID

from django.db import transaction

from pieces.domain import stages as job
from pieces.domain.stages import Spot
from pieces.models import Part, Piece, StageEvent
from pieces.queries.story import stories as told_of
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, JournalEntry, Place

from . import stories
from .rows import one_each
from .shapes import Visit

LOST_VERBS: Final = {"scrapped": "scrapped", "missing": "went_missing", "let_go": "let_go"}


class NoSuchSpot(Unworkable):
    code = "no-such-spot"
    title = "That state does not belong to that stage."


class NotMissing(Conflict):
    code = "not-missing"
    title = "That piece is not missing."


class NotGlazing(Unworkable):
    code = "not-glazing"
    title = "A glaze batch is named where a piece is glazed."


class FiredClay(Unworkable):
    code = "fired-clay"
    title = "Fired clay cannot be reclaimed."


class PressedInstead(Unworkable):
    code = "press-instead"
    title = "A piece comes into its mould by being pressed."


@transaction.atomic
def advance(
    *, act: Act, piece: Piece, visit: Visit, entry: JournalEntry | None = None
) -> StageEvent:
    """Record that a piece came to a spot of the job.

    Raises `NoSuchSpot`, `PressedInstead`, `NotGlazing`, `StageOutOfOrder` and `BeforeItBegan`.
    """
    return advance_all(act=act, visits=[(piece, visit)], entry=entry)[0]


@transaction.atomic
def advance_all(
    *,
    act: Act,
    visits: Sequence[tuple[Piece, Visit]],
    entry: JournalEntry | None = None,
) -> list[StageEvent]:
    """Record that several pieces came to their spots by one act; all or none.

    Raises `NoSuchSpot`, `PressedInstead`, `NotGlazing`, `StageOutOfOrder` and `BeforeItBegan`.
    """
    is_one = len(visits) == 1 and entry is None
    rows = []
    for piece, visit in visits:
        _check_spot(visit.spot)
        if visit.glaze_batch is not None and visit.spot != job.GLAZED:
            raise NotGlazing(f"{visit.state} is not glazed.", pointer="#/glaze_batch_id")
        row = _row(act, piece, visit)
        row.id = act.id if is_one else act.row_id(piece.pk)
        rows.append(row)
    facts = {"visits": [{"piece": piece.pk, **_facts(visit)} for piece, visit in visits]}
    stories.append(act=act, rows=rows, verb="came_to", facts=facts, entry=entry)
    return rows


@transaction.atomic
def lose(
    *,
    act: Act,
    pieces: Sequence[Piece],
    state: str = "scrapped",
    cause: str = "",
    cause_is_guess: bool = False,
    part: Part | None = None,
    reclaim: str = "",
) -> list[StageEvent]:
    """Record that pieces are scrapped, missing or let go; where the clay goes, and from what cause.

    Where nobody says, marbled clay goes to the mixed reclaim and fired clay nowhere. Raises
    `FiredClay`, `NoSuchSpot`, `StageOutOfOrder` and `BeforeItBegan`.
    """
    _check_spot(Spot("lost", state))
    suggested = reclaims_of(pieces)
    rows = one_each(
        StageEvent,
        act=act,
        pieces=pieces,
        stage="lost",
        state=state,
        cause=cause,
        cause_is_guess=cause_is_guess,
        part=part,
    )
    for row in rows:
        row.reclaim = _reclaim(row.piece, state, reclaim, suggested=suggested[row.piece_id])
    facts = {
        "state": state,
        "cause": cause,
        "cause_is_guess": cause_is_guess,
        "part": part.pk if part else None,
        "reclaim": sorted({row.reclaim for row in rows}),
    }
    stories.append(act=act, rows=rows, verb=LOST_VERBS[state], facts=facts)
    return rows


@transaction.atomic
def find(*, act: Act, piece: Piece, place: Place | None = None) -> StageEvent:
    """Record that a missing piece was found; it is again where it was in the job.

    Raises `NotMissing`.
    """
    visits = told_of([piece])[piece.pk].visits
    if piece.state != job.MISSING.state or len(visits) < 2:
        raise NotMissing(f"{piece.shown_mark} was not said to be missing.")
    spot = visits[-2].spot
    row = _row(act, piece, Visit(spot.stage, spot.state, reason="found", place=place))
    row.id = act.id
    facts = {"stage": spot.stage, "state": spot.state, "place": place.pk if place else None}
    stories.append(act=act, rows=[row], verb="found", facts=facts)
    return row


def reclaims_of(pieces: Sequence[Piece]) -> dict[UUID, str]:
    """Return for each piece where its clay would go: `mixed` when marbled, `none` when fired."""
    parts = Part.objects.filter(piece__in=pieces, pressing__slab_block__isnull=False)
    blocks = parts.values_list("piece_id", "pressing__slab_block__bodies")
    bodies: dict[UUID, set[UUID | None]] = {}
    for piece_id, body_id in blocks:
        bodies.setdefault(piece_id, set()).add(body_id)
    return {
        piece.pk: "none"
        if _is_fired(piece)
        else ("mixed" if len(bodies.get(piece.pk, ())) > 1 else "plain")
        for piece in pieces
    }


def _reclaim(piece: Piece, state: str, given: str, *, suggested: str) -> str:
    if given in (StageEvent.Reclaim.PLAIN, StageEvent.Reclaim.MIXED) and _is_fired(piece):
        detail = f"{piece.shown_mark} is {job.words(piece.state)}: its clay is no clay any more."
        raise FiredClay(detail, mark=piece.shown_mark)
    return given or (suggested if state == job.SCRAPPED.state else StageEvent.Reclaim.NONE)


def _is_fired(piece: Piece) -> bool:
    spot = Spot(piece.stage, piece.state)
    return job.rank(job.BISQUED) <= job.rank(spot) <= job.rank(job.DELIVERED)


def _check_spot(spot: Spot) -> None:
    if not job.is_spot(*spot):
        states = [s.state for s in job.SPOTS if s.stage == spot.stage]
        raise NoSuchSpot(
            f"{spot.stage} has the states {', '.join(states)}.", stage=spot.stage, states=states
        )
    if spot in (job.TO_PRESS, job.IN_MOULD):
        raise PressedInstead("Record a pressing from its mould set.", stage=spot.stage)


def _row(act: Act, piece: Piece, visit: Visit) -> StageEvent:
    return StageEvent(
        studio=act.studio,
        piece=piece,
        happened_at=act.happened_at,
        stage=visit.stage,
        state=visit.state,
        reason=visit.reason,
        place=visit.place,
        occasion_id=visit.occasion_id,
        occasion_name=visit.occasion_name,
        grade=visit.grade,
        is_interrupted=visit.is_interrupted,
        glaze_batch=visit.glaze_batch,
    )


def _facts(visit: Visit) -> dict[str, object]:
    told = {
        "stage": visit.stage,
        "state": visit.state,
        "reason": visit.reason,
        "place": visit.place.pk if visit.place else None,
        "occasion_id": visit.occasion_id,
        "occasion_name": visit.occasion_name,
        "grade": visit.grade,
        "is_interrupted": visit.is_interrupted,
        "glaze_batch": visit.glaze_batch.pk if visit.glaze_batch else None,
    }
    return {name: value for name, value in told.items() if value}
