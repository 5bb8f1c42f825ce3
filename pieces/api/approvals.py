"""Approvals of an order: asked by a day, answered by the client or written down by somebody."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import approvals
from pieces.domain import approval_words as words
from pieces.models import Approval, ApprovalAnswer, Commission
from pieces.queries import approvals as queries
from studio.api.envelopes import ActIn, ActOut
from studio.api.views import Given, UnknownThing
from studio.models import Act
from studio.permissions import P, Scoped
from studio.queries import journal

from .bench_rows import shown_person
from .bench_shapes import PersonNamedOut
from .commission_base import CommissionView
from .commission_given import DayField, NameField

Shape = serializers.Serializer[Any]
SHARE = Scoped(own=P.SHARE_OWN)


class ApprovalIn(ActIn):
    """What the client is asked, by when; `corrects` names the asking that it takes the place of."""

    about = serializers.ChoiceField(Approval.About.choices)
    question = NameField(max_length=300, required=False, allow_blank=True, default="")
    waits = serializers.ChoiceField(Approval.Waits.choices)
    due_date = DayField()


class ApprovalAnswerIn(ActIn):
    """What the client said to somebody here; `let_go` where it need not be asked any more."""

    answer = serializers.ChoiceField(ApprovalAnswer.Answer.choices)


class ApprovalAnswerOut(Shape):
    id = serializers.UUIDField()
    answer = serializers.ChoiceField(ApprovalAnswer.Answer.choices)
    through = serializers.ChoiceField(ApprovalAnswer.Through.choices)
    words = serializers.CharField()
    client_words = serializers.CharField()
    happened_at = serializers.DateTimeField()
    member = PersonNamedOut(allow_null=True, help_text="Who wrote it down; null by a link.")


class ApprovalOut(Shape):
    id = serializers.UUIDField()
    about = serializers.ChoiceField(Approval.About.choices)
    title = serializers.CharField()
    question = serializers.CharField()
    waits = serializers.ChoiceField(Approval.Waits.choices)
    waits_words = serializers.CharField()
    due_date = serializers.DateField()
    asked_at = serializers.DateTimeField()
    asked_by = PersonNamedOut()
    clay_words = serializers.CharField(help_text="Until when the clay waits; empty once answered.")
    message = serializers.CharField(help_text="To send to the client by oneself; empty once done.")
    answer = ApprovalAnswerOut(allow_null=True)


class ApprovalListOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    results = ApprovalOut(many=True)


class ApprovalActOut(ActOut):
    approval = ApprovalOut()


class ApprovalView(CommissionView):
    """An endpoint about what a client is asked."""

    for_shared_phone = False

    def asked_of(self, row: Commission) -> list[dict[str, Any]]:
        """Return everything that a client was asked about an order."""
        found = queries.approvals_of(row)
        clocks = queries.clocks(row, found)
        return [_shown(one, clocks.get(one.approval.pk, "")) for one in found]

    def asked_one(self, approval: Approval) -> Mapping[str, Any]:
        """Return one approval as it stands."""
        rows = self.asked_of(approval.commission)
        return {"approval": next(row for row in rows if row["id"] == approval.pk)}


class ApprovalList(ApprovalView):
    needs = {"GET": P.SEE_STUDIO, "POST": SHARE}

    @extend_schema(operation_id="approvals_list", responses=ApprovalListOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """List what the client of an order was asked, the nearest day first."""
        row = self.commission(commission_id)
        seq = journal.highest_seq(self.studio)
        return Response({"at": timezone.now(), "journal_seq": seq, "results": self.asked_of(row)})

    @extend_schema(request=ApprovalIn, responses={201: ApprovalActOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Ask the client for a yes or a no by a day; it stands on the page they are shown."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            named = {name: given[name] for name in ("about", "question", "waits", "due_date")}
            return self.asked_one(approvals.ask(act=act, commission=row, **named))

        return self.once(ApprovalIn, work)


class ApprovalAnswerList(ApprovalView):
    needs = {"POST": SHARE}

    @extend_schema(request=ApprovalAnswerIn, responses={201: ApprovalActOut})
    def post(self, request: Request, approval_id: UUID) -> Response:
        """Write down what the client said; the first answer stands until its teller corrects it."""
        row = Approval.objects.of(self.studio).filter(pk=approval_id).first()
        if not isinstance(row, Approval):
            raise UnknownThing("Nothing like that was asked here.")
        self.own_commission(row.commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            approvals.answer(act=act, approval=row, answer=given["answer"])
            return self.asked_one(row)

        return self.once(ApprovalAnswerIn, work)


def _shown(one: queries.ApprovalNow, clock: str) -> dict[str, Any]:
    row, is_open = one.approval, one.is_open
    number = row.commission.number
    return {
        "id": row.pk,
        "about": row.about,
        "title": words.title(row.about),
        "question": row.question,
        "waits": row.waits,
        "waits_words": words.WAITS[row.waits],
        "due_date": row.due_date,
        "asked_at": row.happened_at,
        "asked_by": shown_person(row.entry.member),
        "clay_words": clock,
        "message": words.message(number, row.about, row.due_date) if is_open else "",
        "answer": _answer(one),
    }


def _answer(one: queries.ApprovalNow) -> dict[str, Any] | None:
    said = one.answer
    if said is None:
        return None
    is_told = said.through == ApprovalAnswer.Through.TOLD
    return {
        "id": said.pk,
        "answer": said.answer,
        "through": said.through,
        "words": words.ANSWERED[said.answer, said.through],
        "client_words": one.client_words,
        "happened_at": said.happened_at,
        "member": shown_person(said.entry.member) if is_told else None,
    }
