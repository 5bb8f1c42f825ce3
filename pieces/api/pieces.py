"""Pieces: a list, one with all that is known of it, and its story."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.db import transaction
from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import matches, planning, stages, uses
from pieces.actions.shapes import PieceGiven
from pieces.domain import cautions, next_steps
from pieces.domain import stages as job
from pieces.domain.cautions import Caution
from pieces.domain.stages import Spot
from pieces.domain.story import Recipe, Story
from pieces.models import Piece
from pieces.queries import finding, history, sets
from pieces.queries import pieces as queries
from pieces.queries.story import tellings
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.domain.finding import words_of
from studio.domain.ids import uuid7
from studio.models import Act
from studio.permissions import P
from studio.queries import journal, photos

from .base import PLAN, PieceView
from .commission_shown import named_partners, shown_promise
from .given import PieceChangeIn, PieceFilterIn, PlanIn
from .shapes import PieceChangedOut, PieceListOut, PieceOut, PlannedOut, TellingOut
from .shown import (
    shown_briefs,
    shown_spot,
    shown_told,
    shown_visit,
    shown_whole,
    shown_whole_part,
    shown_words,
)

STORY_ROWS = 12


class PieceList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": PLAN}

    @extend_schema(operation_id="pieces_list", parameters=[PieceFilterIn], responses=PieceListOut)
    def get(self, request: Request) -> Response:
        """List pieces by their marks; `q` looks in mark, design and maker, whatever the accents."""
        wanted = self.given(PieceFilterIn, request.query_params)
        words = words_of(wanted.pop("q"))
        rows = finding.matching(queries.found(self.studio, **wanted), self.studio, words)
        # Read before the rows, so that an act heard meanwhile is laid over twice and not never.
        seq = journal.highest_seq(self.studio)
        page = keyset(rows, request, fields=("mark_key", "id"))
        return Response(
            {
                "at": timezone.now(),
                "journal_seq": seq,
                "results": shown_briefs(page.rows, self.member),
                "next": page.next,
            }
        )

    @extend_schema(request=PlanIn, responses={201: PlannedOut})
    def post(self, request: Request) -> Response:
        """Plan pieces of one design; each begins where its design is."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.may_make_for([given["maker"]], PLAN)
            line = given["line"]
            if line is not None:
                self.may(PLAN, line)
            planned = planning.plan(act=act, pieces=self._meant(given), place=given["place"])
            if line is not None:
                matches.together(act=act, line=line, pieces=planned.pieces)
            return {
                "pieces": self.briefs(planned.pieces),
                "warnings": shown_words(planned.warnings),
            }

        return self.once(PlanIn, work)

    def _meant(self, given: Given) -> list[PieceGiven]:
        named: list[dict[str, Any]] = given["pieces"] or [
            {"id": uuid7(), "mark": None} for _ in range(given["count"])
        ]
        line = given["line"]
        return [
            PieceGiven(
                piece["id"],
                given["design"],
                mark=piece["mark"],
                maker=given["maker"] or self.default_maker(),
                body=given["body"],
                use=given.get("use") or (line.commission.use if line else Piece.Use.FOOD),
                line=line,
            )
            for piece in named
        ]


class PieceOne(PieceView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": PLAN}

    @extend_schema(operation_id="pieces_one", responses=PieceOut)
    def get(self, request: Request, piece_id: UUID) -> Response:
        """Tell one piece: where it is, its parts, what it waits for, and what was told last."""
        piece = self.piece(piece_id)
        telling = tellings([piece])[piece.pk]
        story, recipe = telling.story(), telling.recipe
        acts = history.acts_of(piece)
        line = sets.line_of(piece)
        newest = history.told(piece, list(acts[:STORY_ROWS]), story=story)
        return Response(
            {
                "at": timezone.now(),
                "journal_seq": journal.highest_seq(self.studio),
                "piece": shown_whole(piece, self.member),
                "order": shown_promise(line),
                "partners": named_partners(line, piece),
                "parts": [shown_whole_part(part) for part in queries.parts_of(piece)],
                **self._way(piece, story, recipe),
                "warnings": shown_words(self._warnings(piece)),
                "reclaim": stages.reclaims_of([piece])[piece.pk],
                "visits": [shown_visit(visit) for visit in story.visits],
                "firings": _firings(story),
                "photo_ids": photos.ids_by_subject(self.studio, [piece.pk])[piece.pk],
                "story": [shown_told(told) for told in newest],
                "history_count": acts.count(),
            },
            headers={"ETag": _tag(piece)},
        )

    @extend_schema(operation_id="pieces_change", request=PieceChangeIn, responses=PieceChangedOut)
    @transaction.atomic
    def patch(self, request: Request, piece_id: UUID) -> Response:
        """Change what a piece is meant for; only an owner lifts "display only"."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            piece = self.piece(piece_id)
            self.may(PLAN, piece)
            self.check_match(journal.revision_of(piece.pk, "piece"), self.briefs([piece])[0])
            may_lift = P.LIFT_DISPLAY_ONLY in self.grants
            uses.change(act=act, piece=piece, use=given["use"], may_lift=may_lift)
            return {"piece": shown_whole(self.piece(piece_id), self.member)}

        answer = self.once(PieceChangeIn, work, status=200)
        answer["ETag"] = _tag(self.piece(piece_id))
        return answer

    def _way(self, piece: Piece, story: Story, recipe: Recipe) -> dict[str, Any]:
        spot = Spot(piece.stage, piece.state)
        is_one_part = recipe.is_one_part
        missing = queries.missing_roles([piece])[piece.pk]
        visited = [visit.spot for visit in story.visits]
        missed_at = visited[-2] if spot == job.MISSING and len(visited) > 1 else None
        nexts = next_steps.nexts(spot, is_one_part=is_one_part, missed_at=missed_at)
        said: dict[str, Caution] = {}
        for end in nexts:
            found = cautions.on_coming_to(
                end, visited, has_interrupted_bisque=piece.has_interrupted_bisque
            )
            said |= {caution.code: caution for caution in found}
        if spot == job.OUT and not is_one_part:
            said[cautions.UNEQUAL_DAMPNESS.code] = cautions.UNEQUAL_DAMPNESS
        return {
            "nexts": [shown_spot(end) for end in nexts],
            "backs": [shown_spot(end) for end in next_steps.backs(spot, is_one_part=is_one_part)],
            "waits_for": next_steps.waits_for(spot, missing, is_one_part=is_one_part),
            "cautions": shown_words(list(said.values())),
        }

    def _warnings(self, piece: Piece) -> list[Caution]:
        said: list[Caution | None] = []
        if piece.has_clash:
            said.append(cautions.TWO_STORIES)
        if piece.is_damaged:
            said.append(cautions.DAMAGED)
        if piece.stage in ("pressing", "assembly", "drying", "bisque"):
            thickest_mm = max((p.thickest_mm for p in piece.design.parts.all()), default=0.0)
            said.append(cautions.thick_wall(thickest_mm, self.studio.settings.wall_limit_mm))
        if piece.has_interrupted_bisque:
            said.append(cautions.INTERRUPTED)
        is_food = piece.use == Piece.Use.FOOD
        said.append(cautions.FOOD_USE if is_food else cautions.DISPLAY_ONLY)
        return [caution for caution in said if caution is not None]


class PieceHistory(PieceView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="pieces_history", responses=paged(TellingOut))
    def get(self, request: Request, piece_id: UUID) -> Response:
        """Tell the story of a piece from the journal, newest first; nothing is left out of it."""
        piece = self.piece(piece_id)
        page = keyset(history.acts_of(piece), request, fields=("-happened_at", "-seq"))
        rows = [shown_told(told) for told in history.told(piece, page.rows)]
        return Response({"results": rows, "next": page.next})


def _tag(piece: Piece) -> str:
    return f'"{journal.revision_of(piece.pk, "piece")}"'


def _firings(story: Story) -> dict[str, int]:
    ends = [visit.spot for visit in story.visits if visit.reason not in job.UNFIRED]
    return {"bisque": ends.count(job.BISQUED), "glaze": ends.count(job.GLAZE_FIRED)}
