"""Settling two stories of a load: a person says which stands; the first answer counts."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any
from uuid import UUID

from django.db import transaction

from firings.domain.load_clashes import left_out
from firings.domain.loads import Kind
from firings.models import Load, LoadEvent
from firings.queries import load_clashes as queries
from firings.queries import told
from firings.queries.load_clashes import LoadClash
from pieces.actions import clashes
from pieces.actions.clashes import AlreadySettled, NotAsked
from pieces.models import StageEvent
from studio.actions import journal
from studio.models import Act, JournalEntry, JournalHead

from . import events, folds, moving, placing, retractions


@transaction.atomic
def answer(*, act: Act, clash: LoadClash, choice: str, may_any: bool) -> None:
    """Take back what did not happen, and fold the load anew.

    The two who told it and whoever watches are asked; `may_any` lets somebody else answer. Ware
    goes by what stands now, if it waited for that. Raises `AlreadySettled` and `NotAsked`.
    """
    if not may_any and act.member.pk not in {person.pk for person in clash.asked}:
        raise NotAsked("The two who told it and whoever watches are asked.")
    JournalHead.objects.select_for_update().get(studio=act.studio)
    if not clash.is_open or queries.find(queries.open_ones(act.studio), clash.id) is None:
        raise AlreadySettled("The load has one story again.", state="answered")
    told_of = [clash.told.first, clash.told.second, *clash.told.on_top]
    entry = journal.write(
        act=act,
        verb=queries.SETTLED,
        subjects=_subjects(clash),
        facts={
            "clash": clash.id,
            "kind": clash.kind,
            "choice": choice,
            "acts": told_of,
            "load": clash.load.pk,
            "loads": [row.load.number for row in clash.placements],
        },
    )
    if clash.kind == "two_kilns":
        _take_out(act, entry, clash, choice)
        return
    before = told.nows([clash.load])[clash.load.pk]
    for pk in left_out(clash.told, choice):
        back = replace(act, id=act.row_id(pk), corrects=pk, note="", photos=())
        retractions.retract(act=back, may_any=True)
    _move_on(act, entry, clash.load, before.misfits)


def _subjects(clash: LoadClash) -> list[tuple[str, UUID]]:
    pieces = {row.piece_id for row in clash.placements if row.piece_id is not None}
    return [("load", clash.load.pk), ("clash", clash.id), *(("piece", pk) for pk in pieces)]


def _take_out(act: Act, entry: JournalEntry, clash: LoadClash, choice: str) -> None:
    """Take the piece off the load that it was not in; what that fire did is not told of it."""
    first, second = clash.placements
    gone, stays = (second, first) if choice == "first" else (first, second)
    placing.remove([gone], act=act, reason="it was in the other kiln")
    # What holds the piece by now is found anew: the one that stays, until its load is over.
    folds.refold([first.load, second.load], at=act.written_at)
    assert gone.piece is not None  # only pieces are in two kilns
    visits = StageEvent.objects.filter(piece=gone.piece, occasion_id=gone.load_id).standing()
    told_by = visits.order_by("happened_at", "id").values_list("entry_id", flat=True)
    clashes.leave_out(
        act=act,
        entry=entry,
        piece=gone.piece,
        kind=clash.kind,
        choice=choice,
        stands=stays.act_id,
        left_out=dict.fromkeys(told_by),
    )


def _move_on(act: Act, entry: JournalEntry, load: Load, waited: Sequence[UUID]) -> None:
    """Let the ware go by the events that fit by now; on a word that did not fit it went nowhere."""
    load = folds.locked(load)
    now = told.nows([load])[load.pk]
    standing: Any = LoadEvent.objects.filter(pk__in=set(waited) - set(now.misfits)).standing()
    moves = (Kind.LOADING, Kind.UNLOADED, Kind.CALLED_OFF)
    for row in standing.filter(kind__in=moves).order_by("happened_at", "id"):
        given = events.Given(
            row.kind,
            outcome=row.outcome,
            results=[events.Result(UUID(pk), result) for pk, result in row.results.items()],
            place=row.place,
        )
        goings = events.going_with(act, load, now, moving.of(load), given)
        if row.kind == Kind.LOADING:
            moving.remember(goings)
        moving.go(act, entry, load, goings)
