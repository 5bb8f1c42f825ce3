"""Two stories of one load, or of a piece in two kilns: shaped as those of pieces."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import load_clashes as actions
from firings.domain import load_rules
from firings.domain.load_clashes import CHOICES, CONSEQUENCES
from firings.queries import load_clashes as queries
from firings.queries.load_clashes import LoadClash
from pieces.api.bench_rows import shown_person, shown_place
from pieces.api.clash_shapes import ClashOut, ClashWholeOut
from pieces.api.shapes import Shape
from pieces.domain import history_words
from studio.api.envelopes import ActIn, ActOut
from studio.api.views import Given, UnknownThing
from studio.models import Act, JournalEntry
from studio.permissions import P
from studio.queries import journal

from .base import LoadView
from .shapes import LoadOut

Shown = dict[str, Any]


class LoadClashFilterIn(Shape):
    state = serializers.ChoiceField(["open", "answered"], required=False, default="open")


class LoadClashAnswerIn(ActIn):
    choice = serializers.ChoiceField(CHOICES)


class LoadClashListOut(Shape):
    """All of them: they are few, and never more than one page."""

    results = ClashOut(many=True)
    next = serializers.CharField(allow_null=True)


class LoadClashAnswerOut(ActOut):
    clash = ClashOut()
    load = LoadOut()


class LoadClashView(LoadView):
    """Asks the two who told it and whoever watches, or who settles loads."""

    def clash(self, clash_id: UUID) -> LoadClash:
        """Return one, answered ones too. Raises `UnknownThing`."""
        rows = [*queries.open_ones(self.studio), *queries.answered(self.studio)]
        found = queries.find(rows, clash_id)
        if found is None:
            raise UnknownThing("No such two stories here.")
        return found

    def shown_clash(self, clash: LoadClash) -> Shown:
        """Return one as this member may see it."""
        is_asked = self.member.pk in {person.pk for person in clash.asked}
        may = clash.is_open and (P.SETTLE_LOADS in self.grants or is_asked)
        return _shown(clash, may_answer=may)


class LoadClashList(LoadClashView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="load_clashes_list",
        parameters=[LoadClashFilterIn],
        responses=LoadClashListOut,
    )
    def get(self, request: Request) -> Response:
        """List the stories of loads that do not agree, newest first."""
        wanted = self.given(LoadClashFilterIn, request.query_params)
        is_open = wanted["state"] == "open"
        rows = (queries.open_ones if is_open else queries.answered)(self.studio)
        return Response({"results": [self.shown_clash(row) for row in rows], "next": None})


class LoadClashOne(LoadClashView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="load_clashes_one", responses=ClashWholeOut)
    def get(self, request: Request, clash_id: UUID) -> Response:
        """Tell both stories side by side."""
        shown = self.shown_clash(self.clash(clash_id))
        seq = journal.highest_seq(self.studio)
        return Response({"at": timezone.now(), "journal_seq": seq, **shown})


class LoadClashAnswerList(LoadClashView):
    needs = {"POST": P.SEE_STUDIO}

    @extend_schema(request=LoadClashAnswerIn, responses={201: LoadClashAnswerOut})
    def post(self, request: Request, clash_id: UUID) -> Response:
        """Say which story stands; the first answer counts."""
        clash = self.clash(clash_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            may_any = P.SETTLE_LOADS in self.grants
            actions.answer(act=act, clash=clash, choice=given["choice"], may_any=may_any)
            return {
                "clash": self.shown_clash(self.clash(clash_id)),
                "load": self.shown(self.load(clash.load.pk)),
            }

        return self.once(LoadClashAnswerIn, work)


def _shown(clash: LoadClash, *, may_answer: bool) -> Shown:
    load = clash.load
    ware = clash.placements[0].piece if clash.placements else None
    subject = {"kind": "load", "id": load.pk, "mark": load.number, "noun": f"{load.kind} load"}
    if ware is not None:
        subject |= {"kind": "piece", "id": ware.pk, "mark": ware.shown_mark}
        subject |= {"noun": ware.design.noun}
    return {
        "id": clash.id,
        "kind": clash.kind,
        "state": "open" if clash.is_open else "answered",
        "subject": subject,
        "opened_at": clash.opened_at,
        "stands_meanwhile": {
            "stage": load.kind,
            "state": load.state,
            "words": load_rules.STATE_WORDS[load.state],
            "place": shown_place(load.kiln.place),
        },
        "holds": ["load"] if clash.is_open else [],
        "asked": [shown_person(person) for person in clash.asked],
        "may_answer": may_answer,
        "acts": [_act(entry) for entry in clash.acts],
        "choices": [
            {"choice": choice, "consequence": text}
            for choice, text in zip(CHOICES, CONSEQUENCES[clash.kind], strict=True)
        ],
    }


def _act(entry: JournalEntry) -> Shown:
    said = history_words.LOADS.get(entry.verb, entry.verb.replace("_", " "))
    reason = str(entry.facts.get("reason") or "")
    return {
        "id": entry.pk,
        "verb": entry.verb,
        "words": said.format(entry.facts.get("load", "a load")),
        "detail": " ".join([reason, *(note.text for note in entry.notes.all())]).strip(),
        "happened_at": entry.happened_at,
        "written_at": entry.written_at,
        "member": shown_person(entry.member),
        "device": entry.device.name,
        "facts": entry.facts,
    }
