"""What the endpoints of pieces share."""

from collections.abc import Mapping, Sequence
from typing import Any, TypeVar
from uuid import UUID

from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response

from pieces import tasks
from pieces.domain import cautions, stages
from pieces.domain.cautions import Caution
from pieces.domain.stages import Spot
from pieces.models import Part, Piece
from pieces.models.facts import PieceFact
from pieces.queries import pieces as queries
from pieces.queries.story import stories
from studio.api.envelopes import ActIn
from studio.api.pages import keyset
from studio.api.views import StudioView, UnknownThing, Work
from studio.models import Member, StudioOwned
from studio.permissions import HELPER_ADVANCES_UP_TO, NotPermitted, P, Role, Scoped

from .shown import shown_briefs, shown_words

Row = TypeVar("Row", bound=StudioOwned)

ADVANCE = Scoped(own=P.ADVANCE_OWN, any=P.ADVANCE_ANY)
SCRAP = Scoped(own=P.SCRAP_OWN)
PRESS = Scoped(own=P.PRESS_OWN)
PLAN = Scoped(own=P.PLAN_PIECES)
COVER = Scoped(own=P.COVER_OWN)
CHECK = Scoped(own=P.CHECK_OWN)


class PieceView(StudioView):
    """An endpoint about pieces."""

    def piece(self, piece_id: UUID) -> Piece:
        """Return a piece that is there. Raises `UnknownThing`."""
        piece = queries.listed(self.studio).filter(pk=piece_id).first()
        if piece is None:
            raise UnknownThing("No such piece here.")
        return piece

    def part(self, part_id: UUID | None, *, of: Piece | None = None) -> Part:
        """Return a part, of the given piece where one is given. Raises `UnknownThing`."""
        rows = Part.objects.of(self.studio).exclude(state=Part.State.TO_PRESS)
        rows = rows.select_related("piece__design", "piece__maker", "design_part")
        rows = rows.select_related("pressing__casting__mould_set", "pressing__slab_block")
        part = rows.filter(pk=part_id).first() if part_id else None
        if part is None or (of is not None and part.piece_id != of.pk):
            raise UnknownThing("No such part here.")
        return part

    def may(self, need: Scoped, *rows: StudioOwned) -> None:
        """Raise `NotPermitted` unless the member may do that to all of the rows."""
        self._check(need)
        if self.standing.reaches_any(need):
            return
        for row in rows:
            if not row.belongs_to(self.member):
                self._refuse(need.any or need.own, "It is somebody else's.")

    def may_come_to(self, spot: Spot, *pieces: Piece) -> None:
        """Raise `NotPermitted` unless the member may say that the pieces came there."""
        if spot.stage == "lost":
            self.may(SCRAP, *pieces)
            return
        self.may(ADVANCE, *pieces)
        is_past = stages.rank(spot) > stages.rank(stages.BONE_DRY) if _known(spot) else True
        if is_past and not {Role.OWNER, Role.MAKER} & set(self.member.roles):
            raise NotPermitted(
                f"A helper takes pieces up to {HELPER_ADVANCES_UP_TO}; the rest is the maker's "
                "word.",
                needed=str(P.SCRAP_OWN),
            )

    def may_make_for(self, makers: Sequence[Member | None], need: Scoped) -> None:
        """Raise `NotPermitted` when a piece would be somebody's the member cannot speak for."""
        if self.standing.reaches_any(need):
            return
        if any(maker is not None and not self.member.speaks_for(maker) for maker in makers):
            self._refuse(need.own, "It would be somebody else's.")

    def default_maker(self) -> Member:
        """Return whose a new piece is when nobody says: the writer's, or the maker's he helps."""
        makes_own = P.PLAN_PIECES in self.grants
        helped = [] if makes_own else list(self.member.helps.all()[:2])
        return helped[0] if len(helped) == 1 else self.member

    def told(self, shape: type[ActIn], work: Work) -> Response:
        """Carry out an act that may change what dries, and have the drying reckoned soon."""
        response = self.once(shape, work)
        tasks.ask_for_forecasts(self.studio.pk)
        return response

    def answer(
        self, pieces: Sequence[Piece], *, warnings: Sequence[Any] = (), **more: Any
    ) -> Mapping[str, Any]:
        """Return the answer to an act about one piece, as it is now."""
        brief = self.briefs(pieces)[0]
        return {"piece": brief, "warnings": shown_words(warnings), "cautions": [], **more}

    def briefs(self, pieces: Sequence[Piece]) -> list[dict[str, Any]]:
        """Return pieces as they are now."""
        rows = queries.all_of(self.studio).filter(pk__in=[piece.pk for piece in pieces])
        return shown_briefs(rows.order_by("mark_key", "suffix"), self.member)

    def page_of(
        self,
        model: type[PieceFact],
        shape: type[serializers.Serializer[Any]],
        request: Request,
        **about: Any,
    ) -> Response:
        """Answer a list of standing facts, newest first."""
        rows = model.objects.of(self.studio).filter(**about).standing()
        return keyset(rows, request, fields=("-happened_at", "-id")).answer(shape)


def cautions_at(spot: Spot, pieces: Sequence[Piece]) -> list[Caution]:
    """Return what to mind as the pieces come to a spot, each thing once."""
    told = stories(pieces)
    found: dict[str, Caution] = {}
    for piece in pieces:
        visited = [visit.spot for visit in told[piece.pk].visits]
        said = cautions.on_coming_to(
            spot, visited, has_interrupted_bisque=piece.has_interrupted_bisque
        )
        found |= {caution.code: caution for caution in said}
    return list(found.values())


def wrong(field: str, detail: str, code: str = "invalid") -> serializers.ValidationError:
    """Return a 400 that names the field."""
    return serializers.ValidationError({field: [ErrorDetail(detail, code)]})


def _known(spot: Spot) -> bool:
    return stages.is_spot(*spot)
