"""Approvals: the client is asked by a day, and one answer stands."""

from datetime import date
from typing import Any, Final
from uuid import UUID

from django.db import transaction

from pieces.domain import approval_words as words
from pieces.models import Approval, ApprovalAnswer, Commission
from pieces.queries import approvals as queries
from studio.actions import reminders
from studio.actions.journal import CorrectsAnother
from studio.actions.reminders import About
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act

from . import order_rows

DUE: Final = "approval_due"
GIVEN: Final = "approval_given"
ASKED: Final = "asked_approval"
ANSWERED: Final = "answered_approval"


class ApprovalAnswered(Conflict):
    code = "approval-answered"
    title = "That was answered already."


class ApprovalReplaced(Conflict):
    code = "approval-replaced"
    title = "That was asked anew since."


class QuestionMissing(Unworkable):
    code = "question-missing"
    title = "Say what the client is asked."


@transaction.atomic
def ask(
    *,
    act: Act,
    commission: Commission,
    about: str,
    waits: str,
    due_date: date,
    question: str = "",
) -> Approval:
    """Ask the client for a yes or a no. An act that corrects an earlier one asks anew.

    Raises `CommissionClosed`, `QuestionMissing` and `ApprovalAnswered`.
    """
    commission = order_rows.open_one(commission)
    if about == Approval.About.OTHER and not question.strip():
        raise QuestionMissing("Write the question.", pointer="#/question")
    if act.corrects is not None:
        asked: Any = Approval.objects.filter(entry=act.corrects, commission=commission)
        earlier = queries.now(asked)
        if not earlier:
            raise CorrectsAnother("That was not asked about this order.")
        _check_unanswered(earlier)
        for one in earlier:
            reminders.withdraw(studio=act.studio, object_id=one.approval.pk)
    facts = {"about": about, "waits": waits, "due_date": due_date.isoformat()}
    entry = order_rows.write(act, ASKED, commission, facts)
    return Approval.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        commission=commission,
        about=about,
        waits=waits,
        due_date=due_date,
        question=question,
    )


@transaction.atomic
def answer(
    *,
    act: Act,
    approval: Approval,
    answer: str,
    through: str = ApprovalAnswer.Through.TOLD,
    share_id: UUID | None = None,
) -> ApprovalAnswer:
    """Keep what was answered. The first answer stands; only its own correction changes it.

    Raises `ApprovalAnswered` and `ApprovalReplaced`.
    """
    order_rows.locked(approval.commission)
    rows: Any = Approval.objects.filter(pk=approval.pk).standing()
    found = queries.now(rows)
    if not found:
        raise ApprovalReplaced("Answer the newer one.")
    standing = found[0].answer
    if act.corrects is None or (standing is not None and standing.entry_id != act.corrects):
        _check_unanswered(found)
    elif standing is None:
        raise CorrectsAnother("That is no answer to this.")
    facts = {"approval": approval.pk, "about": approval.about, "answer": answer, "through": through}
    entry = order_rows.write(
        act, ANSWERED, approval.commission, {**facts, "share": share_id} if share_id else facts
    )
    row = ApprovalAnswer.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        approval=approval,
        answer=answer,
        through=through,
        share_id=share_id,
    )
    reminders.withdraw(studio=act.studio, object_id=approval.pk, causes=[DUE])
    if through == ApprovalAnswer.Through.LINK:
        _tell_maker(row)
    return row


def _check_unanswered(found: list[queries.ApprovalNow]) -> None:
    for one in found:
        if one.answer is not None:
            said = words.answered(one.approval.about, one.answer.answer, one.answer.through)
            raise ApprovalAnswered(
                f"{said.capitalize()}.",
                answer=one.answer.answer,
                answered_at=one.answer.happened_at.isoformat(),
            )


def _tell_maker(row: ApprovalAnswer) -> None:
    """Tell the order's maker at once, outside quiet hours; nobody else need hear."""
    commission = row.approval.commission
    said = words.answered(row.approval.about, row.answer, row.through)
    about = About(
        cause=GIVEN,
        grade="B",
        kind="approval",
        object_id=row.approval_id,
        mark=commission.number,
        title=f"{commission.number}, {said}.",
        body="On the order stands what they wrote with it, if anything.",
        link=f"/orders/{commission.pk}",
    )
    at = row.happened_at
    reminders.set_for(studio=row.studio, person=commission.maker, about=about, due_at=at, at=at)
