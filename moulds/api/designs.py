"""Designs and masters: the form of a piece before any piece exists."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.actions import designs, masters
from moulds.models import Design, Master
from moulds.queries import designs as queries
from moulds.queries import masters as master_queries
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView
from studio.models import Act
from studio.permissions import P

from .design_shapes import DesignMadeOut, DesignOut, MasterOut
from .given import DesignChangeIn, DesignIn, MasterEventIn, MasterIn
from .shapes import CautionOut


class DesignList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.EDIT_OWN_MOULDS}

    @extend_schema(operation_id="designs_list", responses=paged(DesignOut))
    def get(self, request: Request) -> Response:
        """List the designs with their parts."""
        return keyset(queries.all_of(self.studio), request, fields=("name", "id")).answer(DesignOut)

    @extend_schema(request=DesignIn, responses={201: DesignMadeOut})
    def post(self, request: Request) -> Response:
        """Make a design; walls above the studio's limit are warned of."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            design = designs.make(
                act=act,
                name=given["name"],
                noun=given["noun"],
                series=given["series"],
                parts=given["parts"],
                body=given.get("body"),
                uses_moulds=given["uses_moulds"],
                is_round=given["is_round"],
                contact=given.get("contact", Design.Contact.TABLE),
                sizes={name: given[name] for name in designs.SIZES if name in given},
                confirmed=given["confirmed"],
            )
            return _made(design)

        return self.once(DesignIn, work)


class DesignOne(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.EDIT_OWN_MOULDS}

    @extend_schema(responses=DesignOut)
    def get(self, request: Request, design_id: UUID) -> Response:
        design = self.find(Design, id=design_id)
        return Response(DesignOut(design).data, headers={"ETag": f'"{design.revision}"'})

    @extend_schema(request=DesignChangeIn, responses=DesignMadeOut)
    def patch(self, request: Request, design_id: UUID) -> Response:
        """Change a design; its parts with an `id` are changed, those without are added."""
        design = self.find(Design, id=design_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.check_match(design.revision, DesignOut(design).data)
            changes = {name: given[name] for name in designs.EDITABLE if name in given}
            changed = designs.edit(
                act=act,
                design=design,
                changes=changes,
                parts=given.get("parts", ()),
                confirmed=given["confirmed"],
            )
            return _made(changed)

        answer = self.once(DesignChangeIn, work, status=200)
        if answer.data and "revision" in answer.data:
            answer["ETag"] = f'"{answer.data["revision"]}"'
        return answer


class MasterList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.EDIT_OWN_MOULDS}

    @extend_schema(operation_id="masters_list", responses=paged(MasterOut))
    def get(self, request: Request) -> Response:
        """List the masters."""
        rows = master_queries.all_of(self.studio)
        return keyset(rows, request, fields=("label", "id")).answer(MasterOut)

    @extend_schema(request=MasterIn, responses={201: MasterOut})
    def post(self, request: Request) -> Response:
        def work(given: Given, act: Act) -> Mapping[str, object]:
            made = masters.make(
                act=act,
                label=given["label"],
                design=given["design"],
                part=given["part"],
                is_ready=given["is_ready"],
            )
            return dict(MasterOut(made).data)

        return self.once(MasterIn, work)


class MasterEventList(StudioView):
    needs = {"POST": P.EDIT_OWN_MOULDS}

    @extend_schema(request=MasterEventIn, responses={201: MasterOut})
    def post(self, request: Request, master_id: UUID) -> Response:
        """Say that a master is ready, or lost."""
        master = self.find(Master, id=master_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            is_ready = given["kind"] == "ready"
            masters.say(act=act, master=master, is_ready=is_ready, reason=given["reason"])
            return dict(MasterOut(self.find(Master, id=master_id)).data)

        return self.once(MasterEventIn, work)


def _made(design: Design) -> Mapping[str, object]:
    warnings = CautionOut(designs.cautions(design), many=True).data
    return {**DesignOut(design).data, "warnings": warnings}
