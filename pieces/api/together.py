"""The same of many, and settling two stories."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import bulk, clashes
from pieces.domain.stages import Spot
from pieces.models import Clash, Piece
from pieces.queries import clashes as queries
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P
from studio.queries import journal

from .base import ADVANCE, CHECK, COVER, SCRAP, PieceView, cautions_at
from .clash_shapes import ClashAnswerOut, ClashOut, ClashWholeOut
from .given import BULK_OF_PARTS, BulkIn, ClashAnswerIn, ClashFilterIn
from .shapes import BulkOut
from .shown import shown_clash, shown_words


class BulkList(PieceView):
    """Anybody may move ware; the rest is asked kind by kind."""

    needs = {"POST": P.MOVE_PLACE}

    @extend_schema(request=BulkIn, responses={201: BulkOut})
    def post(self, request: Request) -> Response:
        """Do the same to many by one act: all of them, or none with each refusal named."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            left_out = set(given["except_ids"])
            ids = [pk for pk in dict.fromkeys(given["ids"]) if pk not in left_out]
            kind = given["kind"]
            rows: list[Any]
            if kind in BULK_OF_PARTS:
                rows = bulk.parts_of(self.studio, ids)
                pieces = [part.piece for part in rows]
            else:
                rows = pieces = bulk.pieces_of(self.studio, ids)
            self._check_may(kind, given, pieces)
            is_stage = kind == "stage"
            spot = Spot(given["stage"], given["state"]) if is_stage else None
            said = cautions_at(spot, pieces) if spot else []
            details = {**given, "state": given["cover"]} if kind == "cover" else given
            bulk.do(act=act, kind=kind, rows=rows, details=details)
            return {
                "done_ids": ids,
                "left_out_ids": sorted(left_out, key=str),
                "pieces": self.briefs(pieces),
                "cautions": shown_words(said),
            }

        return self.told(BulkIn, work)

    def _check_may(self, kind: str, given: Given, pieces: list[Piece]) -> None:
        match kind:
            case "move" | "cracked":
                return
            case "stage":
                self.may_come_to(Spot(given["stage"], given["state"]), *pieces)
            case _:
                needs = {"cover": COVER, "check": CHECK, "lose": SCRAP}
                self.may(needs.get(kind, ADVANCE), *pieces)


class ClashView(PieceView):
    """Asks the maker of the piece and the two who told of it, or who may settle any."""

    def shown(self, rows: list[Clash]) -> list[dict[str, Any]]:
        """Return clashes as they are shown to this member."""
        may_any = P.SETTLE_CLASHES_ANY in self.grants
        return [
            shown_clash(
                now,
                may_answer=now.clash.state == Clash.State.OPEN
                and (may_any or self.member.pk in {person.pk for person in now.asked}),
            )
            for now in queries.shown(rows)
        ]

    def clash(self, clash_id: UUID) -> Clash:
        """Return one clash. Raises `UnknownThing`."""
        row = self.find(Clash, id=clash_id)
        return queries.of_state(self.studio, None).get(pk=row.pk)


class ClashList(ClashView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="clashes_list", parameters=[ClashFilterIn], responses=paged(ClashOut)
    )
    def get(self, request: Request) -> Response:
        """List the stories that do not agree, newest first."""
        wanted = self.given(ClashFilterIn, request.query_params)
        rows = queries.of_state(self.studio, wanted.get("state"))
        if "piece" in wanted:
            rows = rows.filter(piece=wanted["piece"])
        page = keyset(rows, request, fields=("-opened_at", "id"))
        return Response({"results": self.shown(page.rows), "next": page.next})


class ClashOne(ClashView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="clashes_one", responses=ClashWholeOut)
    def get(self, request: Request, clash_id: UUID) -> Response:
        """Tell both stories side by side."""
        shown = self.shown([self.clash(clash_id)])[0]
        seq = journal.highest_seq(self.studio)
        return Response({"at": timezone.now(), "journal_seq": seq, **shown})


class ClashAnswerList(ClashView):
    needs = {"POST": P.SEE_STUDIO}

    @extend_schema(request=ClashAnswerIn, responses={201: ClashAnswerOut})
    def post(self, request: Request, clash_id: UUID) -> Response:
        """Say which story stands; the first answer counts."""
        clash = self.clash(clash_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            may_any = P.SETTLE_CLASHES_ANY in self.grants
            clashes.answer(act=act, clash=clash, choice=given["choice"], may_any=may_any)
            return {
                "clash": self.shown([self.clash(clash_id)])[0],
                "piece": self.briefs([clash.piece])[0],
            }

        return self.told(ClashAnswerIn, work)
