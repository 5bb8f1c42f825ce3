"""Mould sets, their castings and mould parts."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.actions import castings, parts, sets
from moulds.domain.moisture import USUAL_CAPACITY_FRACTION
from moulds.domain.plaster import capacity_fraction
from moulds.models import Casting, MouldPart, MouldSet
from moulds.queries import castings as casting_queries
from moulds.queries import sets as queries
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView
from studio.models import Act, Member
from studio.permissions import NotPermitted, P, Scoped

from .given import (
    CastingIn,
    MouldPartEventIn,
    MouldSetChangeIn,
    MouldSetIn,
    uuid_of,
)
from .shapes import (
    CastingOut,
    CautionOut,
    MouldPartEventOut,
    MouldPartOut,
    MouldSetOut,
    PouredOut,
    PressingOut,
    StateSaidOut,
)

PAGE = 200


class SetView(StudioView):
    """What the endpoints about one set share."""

    def now(self, set_id: UUID) -> queries.SetNow:
        self.find(MouldSet, id=set_id)
        rows = queries.all_of(self.studio).filter(pk=set_id)
        return queries.now_of(rows, studio=self.studio, at=timezone.now())[0]

    def check_owner(self, owner: Member | None) -> None:
        """Raise `NotPermitted` when a set is made for, or given to, somebody out of reach."""
        if owner is not None and not self.reaches_any and not self.member.speaks_for(owner):
            raise NotPermitted("It would be somebody else's.", needed=str(P.EDIT_OWN_MOULDS))


class MouldSetList(SetView):
    needs = {"GET": P.SEE_STUDIO, "POST": Scoped(own=P.EDIT_OWN_MOULDS)}

    @extend_schema(
        operation_id="mould_sets_list",
        parameters=[
            OpenApiParameter("owner", UUID, description="Only this member's sets."),
            OpenApiParameter("design", UUID, description="Only sets for this design."),
        ],
        responses=paged(MouldSetOut),
    )
    def get(self, request: Request) -> Response:
        """List the sets with casting, dampness, wear and next booking."""
        rows = queries.all_of(self.studio)
        for name, column in (("owner", "owner"), ("design", "makes__design")):
            if wanted := request.query_params.get(name):
                rows = rows.filter(**{column: uuid_of(name, wanted)})
        page = keyset(rows, request, fields=("label", "id"), size=PAGE)
        now = queries.now_of(page.rows, studio=self.studio, at=timezone.now())
        return Response({"results": MouldSetOut(now, many=True).data, "next": page.next})

    @extend_schema(request=MouldSetIn, responses={201: MouldSetOut})
    def post(self, request: Request) -> Response:
        """Make a set; without `owner_id` it is the writer's, with null the studio's."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            habits = {name: given[name] for name in sets.EDITABLE if name in given}
            habits.setdefault("owner", self.member)
            self.check_owner(habits["owner"])
            made = sets.make(act=act, makes=given["makes"], **habits)
            return dict(MouldSetOut(self.now(made.pk)).data)

        return self.once(MouldSetIn, work)


class MouldSetOne(SetView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": Scoped(own=P.EDIT_OWN_MOULDS)}

    @extend_schema(responses=MouldSetOut)
    def get(self, request: Request, set_id: UUID) -> Response:
        now = self.now(set_id)
        tag = f'"{now.mould_set.revision}"'
        return Response(MouldSetOut(now).data, headers={"ETag": tag})

    @extend_schema(request=MouldSetChangeIn, responses=MouldSetOut)
    def patch(self, request: Request, set_id: UUID) -> Response:
        row = self.own(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.check_match(row.revision, MouldSetOut(self.now(set_id)).data)
            changes = {name: given[name] for name in sets.EDITABLE if name in given}
            self.check_owner(changes.get("owner"))
            sets.edit(act=act, mould_set=row, changes=changes)
            return dict(MouldSetOut(self.now(set_id)).data)

        answer = self.once(MouldSetChangeIn, work, status=200)
        if answer.data and "revision" in answer.data:
            answer["ETag"] = f'"{answer.data["revision"]}"'
        return answer


class CastingList(SetView):
    needs = {"GET": P.SEE_STUDIO, "POST": Scoped(own=P.EDIT_OWN_MOULDS)}

    @extend_schema(operation_id="castings_list", responses=paged(CastingOut))
    def get(self, request: Request, set_id: UUID) -> Response:
        """List the castings of a set, the newest first."""
        rows = casting_queries.all_of(self.find(MouldSet, id=set_id))
        return keyset(rows, request, fields=("-generation", "id")).answer(CastingOut)

    @extend_schema(request=CastingIn, responses={201: PouredOut})
    def post(self, request: Request, set_id: UUID) -> Response:
        """Record a pouring; the casting before it is laid aside, its last presses listed."""
        row = self.own(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            if given["made_from"] == "fired_piece":
                castings.refuse_fired(row, fired_mm=given.get("fired_mm"))
            poured = castings.pour(
                act=act,
                mould_set=row,
                master=given["master"],
                blocks=[castings.Block(**block) for block in given.get("parts", ())],
                generation=given.get("generation"),
                poured_at=given.get("poured_at"),
                capacity_fraction=_capacity(given),
                is_in_use=given["is_in_use"],
            )
            return _poured(poured)

        return self.once(CastingIn, work)


class MouldPartOne(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(responses=MouldPartOut)
    def get(self, request: Request, part_id: UUID) -> Response:
        return Response(MouldPartOut(self.find(MouldPart, id=part_id)).data)


class MouldPartEventList(StudioView):
    """Anybody may say that a part is chipped or missing; the rest is for whoever may edit it."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.REPORT_DAMAGE}

    @extend_schema(operation_id="mould_part_events_list", responses=paged(StateSaidOut))
    def get(self, request: Request, part_id: UUID) -> Response:
        """List what was said of a mould part, the newest first."""
        rows = casting_queries.states_said(self.find(MouldPart, id=part_id))
        return keyset(rows, request, fields=("-happened_at", "-id")).answer(StateSaidOut)

    @extend_schema(request=MouldPartEventIn, responses={201: MouldPartEventOut})
    def post(self, request: Request, part_id: UUID) -> Response:
        """Say what happened to a mould part; a chip answers with the presses to look over."""
        part = self.find(MouldPart, id=part_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            if given["kind"] not in parts.DAMAGE:
                self._check_editor(part)
            told = parts.tell(act=act, mould_part=part, kind=given["kind"], reason=given["reason"])
            return {
                "part": MouldPartOut(told.mould_part).data,
                "pressings_to_check": PressingOut(told.to_check, many=True).data,
            }

        return self.once(MouldPartEventIn, work)

    def _check_editor(self, part: MouldPart) -> None:
        need = Scoped(own=P.EDIT_OWN_MOULDS)
        if need.own not in self.grants:
            raise NotPermitted("Say that it is chipped or missing.", needed=str(need.own))
        if not self.standing.reaches_any(need) and not part.belongs_to(self.member):
            raise NotPermitted("It is somebody else's.", needed=str(need.own))


def _capacity(given: Given) -> float:
    if "capacity_fraction" in given:
        return float(given["capacity_fraction"])
    if "parts_water" in given:
        return capacity_fraction(given["parts_water"])
    return USUAL_CAPACITY_FRACTION


def _poured(poured: castings.Poured) -> Mapping[str, object]:
    casting: Casting = poured.casting
    laid_aside: Any = CastingOut(poured.laid_aside).data if poured.laid_aside else None
    blocks = casting.parts.order_by("order", "name")
    return {
        "casting": CastingOut(casting).data,
        "parts": MouldPartOut(blocks, many=True).data,
        "laid_aside": laid_aside,
        "pressings_to_check": PressingOut(poured.to_check, many=True).data,
        "warnings": CautionOut(poured.cautions, many=True).data,
    }
