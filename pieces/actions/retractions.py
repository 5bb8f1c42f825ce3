"""Taking an act back: a second act, never an eraser."""

from typing import Final

from django.db import transaction

from moulds.actions.folds import refold_after
from pieces.models import Piece
from studio.actions import journal
from studio.actions.journal import CorrectsNothing
from studio.domain.refusals import NotAllowed, Unworkable
from studio.models import Act, JournalEntry

from . import stories

# What other people were promised by it is undone by an act of its own, not by taking it back.
NOT_HERE: Final = frozenset(
    {"load", "kiln", "programme", "commission", "found", "member", "device", "photo"}
)
SAID_ANEW: Final = frozenset({"changed_piece"})
# That a found thing is mine is nobody's but my own word.
OWN_WORD: Final = frozenset({"claimed_ware"})


class SomebodyElses(NotAllowed):
    code = "somebody-elses-act"
    title = "Only who told it can take it back."


class UndoneOtherwise(Unworkable):
    code = "undone-otherwise"
    title = "That is undone in another way."


@transaction.atomic
def retract(*, act: Act, may_any: bool, minded: frozenset[str] = frozenset()) -> JournalEntry:
    """Take the act back that `act.corrects` names, and fold anew all that it told of.

    `may_any` lets somebody take back what others told; `minded` are kinds of things that an app
    above folds anew itself. Raises `SomebodyElses`, `UndoneOtherwise`, and what the journal refuses
    to correct.
    """
    named = None
    if act.corrects is not None:
        named = JournalEntry.objects.filter(studio=act.studio, pk=act.corrects).first()
    if named is None:
        raise CorrectsNothing(f"No act {act.corrects} in this studio.", corrects=str(act.corrects))
    if named.member_id != act.member.pk and not may_any:
        raise SomebodyElses(f"{named.member.first_name} told it; ask them, or the owner.")
    told_of = list(named.subjects.values_list("kind", "subject_id"))
    elsewhere = sorted({kind for kind, _ in told_of} & (NOT_HERE - minded))
    if elsewhere and named.verb not in OWN_WORD:
        raise UndoneOtherwise(
            f"It concerns a {elsewhere[0]}: change that instead.", concerns=elsewhere
        )
    if named.verb in SAID_ANEW:
        raise UndoneOtherwise("Say it anew instead.", concerns=[named.verb])
    facts = {"verb": named.verb, "happened_at": named.happened_at}
    entry = journal.write(act=act, verb="took_back", subjects=told_of, facts=facts)
    pieces = Piece.objects.filter(pk__in=[pk for kind, pk in told_of if kind == "piece"])
    stories.refold(pieces, at=act.written_at)
    refold_after(act=act, entry=named)
    return entry
