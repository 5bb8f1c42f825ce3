"""What is put on a load, moved about in it, and taken off."""

from collections.abc import Mapping, Sequence
from typing import Any
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import placing
from firings.actions.placing import PieceAsked, ThingAsked
from firings.models import Placement
from pieces.actions import bulk
from studio.api.views import Given
from studio.domain.refusals import Conflict
from studio.models import Act
from studio.permissions import P

from .base import LoadView
from .given import PlacementChangeIn, PlacementsIn, RemovalIn
from .shapes import LoadActOut, PlacedOut
from .shown_kilns import shown_words

WHERE = placing.SHIFTABLE
SIZE = ("width_mm", "depth_mm", "height_mm", "is_round")


class PlacementIdTaken(Conflict):
    code = "placement-id-taken"
    title = "That placement is there already."


class PlacementList(LoadView):
    """Anybody may put ware on a load; beyond the rules of the load goes only a technician."""

    needs = {"POST": P.PUT_ON_LOAD}

    @extend_schema(request=PlacementsIn, responses={201: PlacedOut})
    def post(self, request: Request, load_id: UUID) -> Response:
        """Put ware on an open load: all of it, or none with each exception named."""
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            left_out = set(given["except_ids"])
            rows = [row for row in given["pieces"] if row["piece_id"] not in left_out]
            self._check_ids([*rows, *given["things"]])
            placed = placing.place(
                act=act,
                load=load,
                pieces=self._pieces(rows, is_all=not given["things"]),
                things=[_thing(row) for row in given["things"]],
                may_build=P.BUILD_LOADS in self.grants,
                may_override=P.OVERRIDE_DRYNESS in self.grants,
                override_reason=given["override_reason"],
            )
            return {
                "load": self.shown(load),
                "placement_ids": [row.pk for row in placed.placements],
                "warnings": shown_words(placed.warnings),
            }

        return self.once(PlacementsIn, work)

    def _pieces(self, rows: Sequence[Mapping[str, Any]], *, is_all: bool) -> list[PieceAsked]:
        if not rows and not is_all:
            return []
        pieces = bulk.pieces_of(self.studio, [row["piece_id"] for row in rows])
        return [
            PieceAsked(piece, row.get("id"), {n: row[n] for n in WHERE if n in row})
            for piece, row in zip(pieces, rows, strict=True)
        ]

    def _check_ids(self, rows: Sequence[Mapping[str, Any]]) -> None:
        ids = [row["id"] for row in rows if "id" in row]
        if len(set(ids)) < len(ids) or Placement.objects.filter(pk__in=ids).exists():
            raise PlacementIdTaken("Make each placement with an id of its own.")


class PlacementView(LoadView):
    """What is done to one placement: by whose it is, by who asked, or by who builds loads."""

    def check_may(self, row: Placement) -> None:
        """Raise `NotPermitted` for others' ware unless the member builds loads."""
        if not (row.belongs_to(self.member) or row.asked_by_id == self.member.pk):
            self.must(P.BUILD_LOADS)


class PlacementOne(PlacementView):
    needs = {"PATCH": P.PUT_ON_LOAD}

    @extend_schema(request=PlacementChangeIn, responses=LoadActOut)
    def patch(self, request: Request, placement_id: UUID) -> Response:
        """Say on which shelf, and where on it, something stands; until the load is over."""
        row = self.placement(placement_id)
        self.check_may(row)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            placing.shift(act=act, placement=row, changes=given)
            return {"load": self.shown(row.load), "cautions": []}

        return self.once(PlacementChangeIn, work, status=200)


class RemovalList(PlacementView):
    needs = {"POST": P.PUT_ON_LOAD}

    @extend_schema(request=RemovalIn, responses={201: LoadActOut})
    def post(self, request: Request, placement_id: UUID) -> Response:
        """Take something off an open load."""
        row = self.placement(placement_id)
        self.check_may(row)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            placing.take_off(act=act, placement=row, reason=given["reason"])
            return {"load": self.shown(row.load), "cautions": []}

        return self.once(RemovalIn, work)


def _thing(row: Mapping[str, Any]) -> ThingAsked:
    return ThingAsked(
        what=row["what"],
        count=row["count"],
        id=row.get("id"),
        size={name: row[name] for name in SIZE if name in row},
        where={name: row[name] for name in WHERE if name in row},
    )
