"""What is told of one piece: stages, parts, covers, weights, touch, place."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import checks, covers, moves, parts, stages, weighings
from pieces.actions.shapes import Visit, Warned
from pieces.domain.stages import Spot
from pieces.models import (
    Cover,
    Move,
    Part,
    PartEvent,
    Piece,
    PieceWeighing,
    StageEvent,
    TouchCheck,
)
from pieces.queries import pieces as queries
from pieces.queries import trend
from studio.api.pages import paged
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P

from .base import ADVANCE, CHECK, COVER, SCRAP, PieceView, cautions_at
from .given import (
    CoverIn,
    MoveIn,
    PartEventIn,
    PartMadeIn,
    PieceWeighingIn,
    StageEventIn,
    TouchCheckIn,
)
from .shapes import (
    CoverRowOut,
    MoveRowOut,
    PartActOut,
    PartEventRowOut,
    PartWholeOut,
    PieceActOut,
    PieceWeighingRowOut,
    StageEventRowOut,
    TouchCheckRowOut,
)
from .shown import shown_whole_part, shown_words

STUCK_ASK = {
    "code": "rest-mould",
    "detail": "It stuck: a wet mould holds on. Mark the mould to rest if it feels cool.",
}
EARLY_FOR_DRY = Warned(
    "early-for-dry",
    "Sooner than any likely guess: kept as you said it. If the tap slipped, take it back.",
)


class StageEventList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": ADVANCE}

    @extend_schema(operation_id="stage_events_list", responses=paged(StageEventRowOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List where a piece was said to come to, newest first."""
        return self.page_of(StageEvent, StageEventRowOut, request, piece=self.piece(piece_id))

    @extend_schema(request=StageEventIn, responses={201: PieceActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say that a piece came to a stage, is lost, or was found."""
        piece = self.piece(piece_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            spot = Spot(given["stage"], given["state"])
            self.may_come_to(spot, piece)
            said = cautions_at(spot, [piece])
            self._tell(piece, spot, given, act)
            return {**self.answer([piece]), "cautions": shown_words(said)}

        return self.told(StageEventIn, work)

    def _tell(self, piece: Piece, spot: Spot, given: Given, act: Act) -> None:
        if spot.stage == "lost":
            part_id = given["part_id"]
            stages.lose(
                act=act,
                pieces=[piece],
                state=spot.state,
                cause=given["cause"],
                cause_is_guess=given["cause_is_guess"],
                part=self.part(part_id, of=piece) if part_id else None,
                reclaim=given["reclaim"] or "",
            )
        elif given["reason"] == "found":
            stages.find(act=act, piece=piece, place=given["place"])
        else:
            names = ("reason", "place", "grade", "glaze_batch")
            visit = Visit(*spot, **{name: given[name] for name in names})
            stages.advance(act=act, piece=piece, visit=visit)


class PartList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": ADVANCE}

    @extend_schema(operation_id="parts_list", responses=paged(PartWholeOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List the parts of a piece, those that ended too."""
        rows = [shown_whole_part(part) for part in queries.parts_of(self.piece(piece_id))]
        return Response({"results": rows, "next": None})

    @extend_schema(request=PartMadeIn, responses={201: PartActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say that a part was made without a mould."""
        piece = self.piece(piece_id)
        self.may(ADVANCE, piece)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            part = parts.make(act=act, piece=piece, id=given["part_id"], role=given["role"])
            return self.answer([piece], part=shown_whole_part(self.part(part.pk)), asks=[])

        return self.told(PartMadeIn, work)


class PartEventList(PieceView):
    """Anybody may report a crack; what ends a part is its maker's to say."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.REPORT_DAMAGE}

    @extend_schema(operation_id="part_events_list", responses=paged(PartEventRowOut))
    def get(self, request: Request, part_id: UUID) -> Response:
        """List what happened to a part, newest first."""
        return self.page_of(PartEvent, PartEventRowOut, request, part=self.part(part_id))

    @extend_schema(request=PartEventIn, responses={201: PartActOut})
    def post(self, request: Request, part_id: UUID) -> Response:
        """Say what happened to a part."""
        part = self.part(part_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self._check_may(given["kind"], part)
            replacement = given["replacement_id"]
            parts.record_event(
                act=act,
                part=part,
                kind=given["kind"],
                how=given["stuck_how"],
                cause=given["cause"],
                replacement=self.part(replacement, of=part.piece) if replacement else None,
            )
            shown = shown_whole_part(self.part(part.pk))
            return self.answer([part.piece], part=shown, asks=_asks(given["kind"], part))

        return self.told(PartEventIn, work)

    def _check_may(self, kind: str, part: Part) -> None:
        if kind == PartEvent.Kind.SCRAPPED:
            self.may(SCRAP, part)
        elif kind != PartEvent.Kind.CRACKED:
            self.may(ADVANCE, part)


class CoverList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": COVER}

    @extend_schema(operation_id="covers_list", responses=paged(CoverRowOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List how a piece was covered, newest first."""
        return self.page_of(Cover, CoverRowOut, request, piece=self.piece(piece_id))

    @extend_schema(request=CoverIn, responses={201: PieceActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say how a piece is covered, or some of its parts."""
        piece = self.piece(piece_id)
        self.may(COVER, piece)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            parts_covered = [self.part(pk, of=piece) for pk in dict.fromkeys(given["part_ids"])]
            if parts_covered:
                covers.cover_parts(act=act, parts=parts_covered, state=given["state"])
            else:
                covers.cover(act=act, pieces=[piece], state=given["state"])
            return self.answer([piece])

        return self.told(CoverIn, work)


class PieceWeighingList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": CHECK}

    @extend_schema(operation_id="piece_weighings_list", responses=paged(PieceWeighingRowOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List the weights of a piece, newest first."""
        piece = self.piece(piece_id)
        return self.page_of(PieceWeighing, PieceWeighingRowOut, request, piece=piece)

    @extend_schema(request=PieceWeighingIn, responses={201: PieceActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Weigh a piece; a weight that cannot be is refused (422) and can be taken again."""
        piece = self.piece(piece_id)
        self.may(CHECK, piece)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            _, warnings = weighings.weigh(act=act, piece=piece, mass_g=given["mass_g"])
            return self.answer([piece], warnings=warnings)

        return self.told(PieceWeighingIn, work)


class TouchCheckList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": CHECK}

    @extend_schema(operation_id="touch_checks_list", responses=paged(TouchCheckRowOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List how a piece felt, newest first."""
        return self.page_of(TouchCheck, TouchCheckRowOut, request, piece=self.piece(piece_id))

    @extend_schema(request=TouchCheckIn, responses={201: PieceActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say how a piece, or one part of it, feels."""
        piece = self.piece(piece_id)
        self.may(CHECK, piece)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            part_id = given["part_id"]
            part = self.part(part_id, of=piece) if part_id else None
            is_early = given["feel"] == TouchCheck.Feel.BONE_DRY and trend.is_early_for_dry(
                piece, act.happened_at, part_id
            )
            checks.check(act=act, pieces=[piece], feel=given["feel"], part=part)
            return self.answer([piece], warnings=[EARLY_FOR_DRY] if is_early else [])

        return self.told(TouchCheckIn, work)


class MoveList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.MOVE_PLACE}

    @extend_schema(operation_id="moves_list", responses=paged(MoveRowOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List where a piece was put, newest first."""
        return self.page_of(Move, MoveRowOut, request, piece=self.piece(piece_id))

    @extend_schema(request=MoveIn, responses={201: PieceActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say where a piece was put; anybody may."""
        piece = self.piece(piece_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            moves.move(act=act, pieces=[piece], place=given["place"], stands_on=given["stands_on"])
            return self.answer([piece])

        return self.told(MoveIn, work)


def _asks(kind: str, part: Part) -> list[Mapping[str, object]]:
    """Return what the act suggests; nothing is set that nobody said."""
    if kind != PartEvent.Kind.STUCK or part.pressing is None:
        return []
    return [{**STUCK_ASK, "mould_set_id": part.pressing.casting.mould_set_id}]
