"""Clay bodies with their test bars, batches of colour and glaze, and blocks laid from them."""

from collections.abc import Callable, Mapping
from typing import Any, ClassVar
from uuid import UUID

from django.db.models import QuerySet
from drf_spectacular.utils import extend_schema, extend_schema_view
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import materials
from studio.models import Act, ClayBody, ColourBatch, GlazeBatch, SlabBlock, Studio, TestBar
from studio.permissions import P
from studio.queries import materials as queries
from studio.queries.journal import revision_of

from .envelopes import ActIn
from .material_shapes import (
    BarChangeIn,
    BarIn,
    BarOut,
    BatchChangeIn,
    BatchIn,
    BatchOut,
    BodyChangeIn,
    BodyIn,
    BodyOut,
    GlazeBatchChangeIn,
    GlazeBatchIn,
    GlazeBatchOut,
    SlabBlockChangeIn,
    SlabBlockIn,
    SlabBlockOut,
)
from .pages import keyset, paged
from .views import Given, StudioView

Shape = type[serializers.Serializer[Any]]

ENVELOPE = frozenset(ActIn().fields)
LISTS: dict[type[Any], Callable[[Studio], "QuerySet[Any]"]] = {
    ClayBody: queries.bodies,
    ColourBatch: queries.batches,
    GlazeBatch: queries.glaze_batches,
    SlabBlock: queries.blocks,
}


def said(given: Given) -> dict[str, Any]:
    """Return the act's own fields, without its envelope."""
    return {name: value for name, value in given.items() if name not in ENVELOPE}


class MaterialList(StudioView):
    """The list of one kind of material; subclasses say which."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.PLAN_PIECES}
    model: ClassVar[type[Any]]
    shape_in: ClassVar[Any]
    shape_out: ClassVar[Shape]
    label: ClassVar[str]

    def get(self, request: Request) -> Response:
        page = keyset(LISTS[self.model](self.studio), request, fields=(self.label, "id"))
        return page.answer(self.shape_out)

    def post(self, request: Request) -> Response:
        def work(given: Given, act: Act) -> Mapping[str, object]:
            row = materials.create(act=act, model=self.model, fields=said(given))
            return self.shape_out(row).data

        return self.once(self.shape_in, work)


class MaterialOne(StudioView):
    """One material; subclasses say of which kind."""

    needs = {"GET": P.SEE_STUDIO, "PATCH": P.PLAN_PIECES}
    model: ClassVar[type[Any]]
    shape_in: ClassVar[Any]
    shape_out: ClassVar[Shape]

    def get(self, request: Request, row_id: UUID) -> Response:
        row = self.find(self.model, id=row_id)
        return Response(self.shape_out(row).data, headers={"ETag": self._tag(row_id)})

    def patch(self, request: Request, row_id: UUID) -> Response:
        def work(given: Given, act: Act) -> Mapping[str, object]:
            row = self.find(self.model, id=row_id)
            self.check_match(int(self._tag(row_id).strip('"')), self.shape_out(row).data)
            materials.change(act=act, row=row, changes=said(given))
            return self.shape_out(row).data

        answer = self.once(self.shape_in, work, status=200)
        answer["ETag"] = self._tag(row_id)
        return answer

    def _tag(self, row_id: UUID) -> str:
        return f'"{revision_of(row_id, materials.KINDS[self.model])}"'


def _described(shape_in: Shape, shape_out: Shape, name: str) -> Any:
    return extend_schema_view(
        get=extend_schema(operation_id=f"{name}_list", responses=paged(shape_out)),
        post=extend_schema(request=shape_in, responses={201: shape_out}),
    )


def _described_one(shape_in: Shape, shape_out: Shape) -> Any:
    return extend_schema_view(
        get=extend_schema(responses=shape_out),
        patch=extend_schema(request=shape_in, responses=shape_out),
    )


@_described(BodyIn, BodyOut, "clay_bodies")
class BodyList(MaterialList):
    model, shape_in, shape_out, label = ClayBody, BodyIn, BodyOut, "code"


@_described_one(BodyChangeIn, BodyOut)
class BodyOne(MaterialOne):
    model, shape_in, shape_out = ClayBody, BodyChangeIn, BodyOut


@_described(BatchIn, BatchOut, "colour_batches")
class BatchList(MaterialList):
    model, shape_in, shape_out, label = ColourBatch, BatchIn, BatchOut, "label"


@_described_one(BatchChangeIn, BatchOut)
class BatchOne(MaterialOne):
    model, shape_in, shape_out = ColourBatch, BatchChangeIn, BatchOut


@_described(GlazeBatchIn, GlazeBatchOut, "glaze_batches")
class GlazeBatchList(MaterialList):
    model, shape_in, shape_out, label = GlazeBatch, GlazeBatchIn, GlazeBatchOut, "label"


@_described_one(GlazeBatchChangeIn, GlazeBatchOut)
class GlazeBatchOne(MaterialOne):
    model, shape_in, shape_out = GlazeBatch, GlazeBatchChangeIn, GlazeBatchOut


@_described(SlabBlockIn, SlabBlockOut, "slab_blocks")
class BlockList(MaterialList):
    model, shape_in, shape_out, label = SlabBlock, SlabBlockIn, SlabBlockOut, "label"


@_described_one(SlabBlockChangeIn, SlabBlockOut)
class BlockOne(MaterialOne):
    model, shape_in, shape_out = SlabBlock, SlabBlockChangeIn, SlabBlockOut


class BarList(StudioView):
    """The test bars of one body."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.PLAN_PIECES}

    @extend_schema(operation_id="test_bars_list", responses=paged(BarOut))
    def get(self, request: Request, row_id: UUID) -> Response:
        bars = TestBar.objects.filter(body=self.find(ClayBody, id=row_id))
        return keyset(bars, request, fields=("measured_at", "id")).answer(BarOut)

    @extend_schema(request=BarIn, responses={201: BarOut})
    def post(self, request: Request, row_id: UUID) -> Response:
        body = self.find(ClayBody, id=row_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            return BarOut(materials.measure_bar(act=act, body=body, lengths=said(given))).data

        return self.once(BarIn, work)


class BarOne(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.PLAN_PIECES}

    @extend_schema(responses=BarOut)
    def get(self, request: Request, row_id: UUID) -> Response:
        return Response(BarOut(self.find(TestBar, id=row_id)).data)

    @extend_schema(request=BarChangeIn, responses=BarOut)
    def patch(self, request: Request, row_id: UUID) -> Response:
        """Add the lengths taken after a later stage."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            bar = self.find(TestBar, id=row_id)
            return BarOut(materials.measure_again(act=act, bar=bar, lengths=said(given))).data

        return self.once(BarChangeIn, work, status=200)
