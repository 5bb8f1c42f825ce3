"""Settling two stories: a person says which stands; the first answer counts."""

from collections.abc import Iterable
from uuid import UUID

from django.db import transaction

from pieces.domain import numbers
from pieces.domain.story.fold import left_out_by
from pieces.models import Clash, ClashAnswer, Piece
from studio.actions import journal
from studio.domain.refusals import Conflict, NotAllowed
from studio.models import Act, JournalEntry, Member

from . import stories


class AlreadySettled(Conflict):
    code = "already-settled"
    title = "Somebody answered that already."


class NotAsked(NotAllowed):
    code = "not-asked"
    title = "That was asked of others."


@transaction.atomic
def answer(*, act: Act, clash: Clash, choice: str, may_any: bool) -> ClashAnswer:
    """Answer a clash, and fold the piece anew.

    The maker and both writers are asked; `may_any` lets somebody else answer. Raises
    `AlreadySettled` and `NotAsked`.
    """
    if not may_any and act.member.pk not in {member.pk for member in asked(clash)}:
        raise NotAsked("The maker and the two who told it are asked.")
    first, second = (UUID(told) for told in clash.act_ids)
    journal.write(
        act=act,
        verb="settled_clash",
        subjects=[("piece", clash.piece_id), ("clash", clash.pk)],
        facts={"clash": clash.pk, "kind": clash.kind, "choice": choice, "acts": clash.act_ids},
    )
    clash = Clash.objects.select_for_update(of=("self",)).select_related("piece").get(pk=clash.pk)
    if clash.state != Clash.State.OPEN:
        raise AlreadySettled("The piece has one story again.", state=clash.state)
    is_number = clash.kind == "number_taken"
    row = ClashAnswer.objects.create(
        id=act.id,
        studio=act.studio,
        entry_id=act.id,
        happened_at=act.happened_at,
        clash=clash,
        choice=choice,
        left_out=None if is_number else left_out_by(clash.kind, choice, first, second),
    )
    if is_number and choice == ClashAnswer.Choice.SECOND:
        _swap_suffix(clash.piece)
    stories.refold([clash.piece], at=act.written_at)
    return row


@transaction.atomic
def leave_out(
    *,
    act: Act,
    entry: JournalEntry,
    piece: Piece,
    kind: str,
    choice: str,
    stands: UUID,
    left_out: Iterable[UUID],
) -> None:
    """Keep that some acts did not happen to one piece, though they did to others; fold it anew.

    For an app above, which settled it and wrote `entry`. `stands` is the act that does stand; by
    `choice` it was told first or second.
    """
    for told in left_out:
        acts = [stands, told] if choice == ClashAnswer.Choice.FIRST else [told, stands]
        pk = stories.clash_id(piece, *acts)
        clash, _ = Clash.objects.get_or_create(
            id=pk,
            defaults={
                "studio": act.studio,
                "piece": piece,
                "kind": kind,
                "act_ids": [str(one) for one in acts],
                "opened_at": act.written_at,
            },
        )
        ClashAnswer.objects.create(
            id=act.row_id(pk),
            studio=act.studio,
            entry=entry,
            happened_at=act.happened_at,
            clash=clash,
            choice=choice,
            left_out=told,
        )
    stories.refold([piece], at=act.written_at)


def asked(clash: Clash) -> list[Member]:
    """Return who is asked: the maker of the piece and the two who told of it."""
    writers = JournalEntry.objects.filter(pk__in=clash.act_ids).values("member")
    wanted = set(writers.values_list("member", flat=True))
    if clash.piece.maker_id is not None:
        wanted.add(clash.piece.maker_id)
    people = Member.objects.filter(pk__in=wanted, user__isnull=False)
    return list(people.order_by("first_name", "id"))


def _swap_suffix(piece: Piece) -> None:
    """Give the plain mark to the piece, and its suffix to the one that had the mark first."""
    key = numbers.mark_key(piece.mark)
    same = Piece.objects.select_for_update(of=("self",)).filter(
        studio=piece.studio_id, mark_key=key
    )
    holder = same.filter(suffix="").first()
    suffix = piece.suffix
    if holder is None or not suffix:
        return
    piece.suffix = "-"
    piece.save(update_fields=["suffix"])
    holder.suffix = suffix
    holder.save(update_fields=["suffix"])
    piece.suffix = ""
    piece.save(update_fields=["suffix"])
