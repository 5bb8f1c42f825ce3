"""Ware that waits for a firing, what fits a load, when a kiln may be opened."""

from collections.abc import Iterable, Mapping
from datetime import datetime
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import cones
from firings.actions.cones import TicketGiven
from firings.domain import cautions
from firings.domain.cautions import Caution
from firings.domain.cones import zero_warning
from firings.domain.queue import RULE
from firings.models import FiringTicket
from firings.queries import picture, queue
from firings.queries.opening import openings_of
from firings.queries.queue import Group, Waiting
from firings.queries.told import points_of
from pieces.api.bench_rows import shown_person, shown_piece, shown_place
from pieces.domain.cautions import thick_wall
from pieces.domain.refire_words import wrong_and_mended
from pieces.models import Piece
from pieces.queries.pieces import makers_of
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.models import Act, StudioSettings
from studio.permissions import P
from studio.queries import journal

from .base import LoadView
from .given import FitFilterIn, QueueFilterIn, TicketIn
from .shapes import CoolingOut
from .shapes_queue import (
    CouldGoOut,
    FiringTicketOut,
    FitOut,
    QueueOut,
    TicketActOut,
)
from .shown import shown_size
from .shown_kilns import Shown, shown_opening, shown_words
from .shown_picture import shown_picture


class QueueView(LoadView):
    """What the endpoints about waiting ware share."""

    def screen(self, at: datetime, **more: Any) -> Response:
        """Answer a screen."""
        return Response({"at": at, "journal_seq": journal.highest_seq(self.studio), **more})

    def rows(self, waiting: Iterable[Waiting]) -> list[Shown]:
        """Return ware that waits, in its order. Two queries."""
        mine = makers_of(self.member)
        limit_mm = StudioSettings.objects.get(studio=self.studio).wall_limit_mm
        return [_shown_waiting(row, mine, limit_mm) for row in waiting]


class KilnQueue(QueueView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="kiln_queue", parameters=[QueueFilterIn], responses=QueueOut)
    def get(self, request: Request) -> Response:
        """Show what waits by kind and cone, each with the rule's sentence on its place."""
        wanted = self.given(QueueFilterIn, request.query_params)
        at = timezone.now()
        found = queue.groups(
            self.studio,
            at=at,
            kind=wanted.get("kind"),
            cone=wanted.get("cone"),
            with_drying=wanted["drying"],
        )
        shown = iter(self.rows([row for group in found for row in group.rows]))
        room_l = wanted.get("room_l")
        groups = [_shown_group(group, shown, room_l) for group in found]
        return self.screen(at, rule=RULE, groups=groups)


class CouldGoList(QueueView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="loads_could_go", responses=CouldGoOut)
    def get(self, request: Request, load_id: UUID) -> Response:
        """Show what waits for this kind of firing: whether it fits, and what speaks against it."""
        load, at = self.load(load_id), timezone.now()
        waiting = picture.waiting_for(load, self.studio, at=at)
        found = picture.could_go(load, waiting)
        rows = [
            {
                **shown,
                "fits": row.fits,
                "refused": {"code": row.refused.code, "detail": row.refused.detail}
                if row.refused
                else None,
            }
            for shown, row in zip(self.rows(waiting), found, strict=True)
        ]
        return self.screen(at, rule=RULE, rows=rows)


class LoadFit(QueueView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="loads_fit", parameters=[FitFilterIn], responses=FitOut)
    def get(self, request: Request, load_id: UUID) -> Response:
        """Say whether the ware fits, why, and show where it would stand."""
        load = self.load(load_id)
        wanted = self.given(FitFilterIn, request.query_params)
        samples = list(queue.waiting_pieces(self.studio, load.kind)) if load.kind != "test" else []
        more = wanted.get("pieces", [])
        found = picture.picture_of(load, more=more, samples=samples)
        return self.screen(timezone.now(), **shown_picture(found))


class LoadCooling(QueueView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="loads_cooling", responses=CoolingOut)
    def get(self, request: Request, load_id: UUID) -> Response:
        """Say when the kiln may likely be opened; null unless it is cooling."""
        load, at = self.load(load_id), timezone.now()
        found = openings_of(self.studio, [load], points_of([load]), at).get(load.pk)
        said = shown_words([cautions.HOT_WHEN_OPENED, cautions.NOT_A_SAFETY_DEVICE])
        return self.screen(at, opening=shown_opening(found), cautions=said)


class TicketList(QueueView):
    """The maker, or whoever builds loads, says which cone a piece waits for."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.PUT_ON_LOAD}

    @extend_schema(operation_id="firing_tickets_list", responses=paged(FiringTicketOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """List which cones were asked for a piece, newest first."""
        rows = FiringTicket.objects.filter(piece=self.find(Piece, id=piece_id)).standing()
        return keyset(rows, request, fields=("-happened_at", "-id")).answer(FiringTicketOut)

    @extend_schema(request=TicketIn, responses={201: TicketActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say which cone a piece waits for; fired ware with a ticket waits to be fired again."""
        piece = self.find(Piece, id=piece_id, is_undone=False)
        if not piece.belongs_to(self.member):
            self.must(P.BUILD_LOADS)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            names = ("kind", "cone", "words", "fault", "mended")
            asked = TicketGiven(**{name: given[name] for name in names})
            row = cones.ask_for(act=act, piece=piece, given=asked)
            said = zero_warning(row.cone, row.kind)
            doubts = [Caution("cone-and-zero", said)] if said else []
            if row.kind == "glaze" and piece.state in queue.AGAIN:
                doubts.append(cautions.FIRED_AGAIN)
            return {"ticket": FiringTicketOut(row).data, "warnings": shown_words(doubts)}

        return self.once(TicketIn, work)


def _shown_group(group: Group, shown: Iterable[Shown], room_l: float | None) -> Shown:
    rows = iter(shown)
    return {
        "kind": group.kind,
        "cone": group.cone,
        "litres": round(group.litres, 2),
        "oldest_days": group.oldest_days,
        "rows": [next(rows) for _ in group.rows],
        "layer": _shown_layer(group, room_l) if room_l is not None else None,
    }


def _shown_layer(group: Group, room_l: float) -> Shown:
    shared = group.shared(room_l)
    return {
        "room_l": room_l,
        "taken": [row.ask.id for row in shared.taken],
        "put_off": [{"piece_id": row.ask.id, "reason": row.reason} for row in shared.put_off],
        "left_l": round(shared.left_l, 2),
        "offer": shared.offer,
    }


def _shown_waiting(row: Waiting, mine: set[UUID], limit_mm: float) -> Shown:
    piece, ticket = row.piece, row.ticket
    order = piece.line.commission if piece.line is not None else None
    thick = thick_wall(row.thickest_mm, limit_mm) if row.thickest_mm is not None else None
    return {
        "piece": shown_piece(piece),
        "maker": shown_person(piece.maker),
        "mine": piece.maker_id in mine,
        "place": shown_place(piece.place),
        "due_date": row.due_date,
        "commission": {"id": order.pk, "number": order.number} if order else None,
        "waiting_since": row.since,
        "waits_days": row.waits_days,
        "litres": round(row.size.litres, 2) if row.size else None,
        "size": shown_size(row.size),
        "dry_evidence": {
            "word": row.evidence.word,
            "ok": row.evidence.is_ok,
            "detail": row.evidence.detail,
        },
        "thickest_mm": row.thickest_mm,
        "warnings": [{"code": thick.code, "detail": thick.detail}] if thick else [],
        "reason": row.reason,
        "is_put_first": row.is_put_first,
        "ticket": _shown_ticket(ticket) if ticket is not None else None,
    }


def _shown_ticket(row: FiringTicket) -> Shown:
    return {"cone": row.cone, "words": row.words, "why": wrong_and_mended(row.fault, row.mended)}
