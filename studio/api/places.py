"""Rooms and shelves."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.db import transaction
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import places
from studio.models import Act, Place
from studio.permissions import P
from studio.queries import places as queries
from studio.queries.journal import revision_of

from .envelopes import ActIn, ChangeIn
from .fields import FiniteField
from .pages import keyset, paged
from .related import RowField
from .views import Given, StudioView


class PlaceFields(serializers.Serializer[Any]):
    name = serializers.CharField(max_length=80)
    kind = serializers.ChoiceField(Place.Kind.choices)
    parent_id = RowField(Place, source="parent", allow_null=True, default=None)
    air_from_id = RowField(Place, source="air_from", allow_null=True, default=None)
    order = serializers.IntegerField(min_value=0, max_value=32000, default=0)
    air_m_s = FiniteField(min_value=0.0, max_value=5.0, allow_null=True, default=None)


class PlaceIn(ActIn, PlaceFields):
    """A new place; its id is the act's."""


class PlaceChangeIn(ChangeIn):
    """What is to change; what is left out stays."""

    name = serializers.CharField(max_length=80, required=False)
    kind = serializers.ChoiceField(Place.Kind.choices, required=False)
    parent_id = RowField(Place, source="parent", allow_null=True, required=False)
    air_from_id = RowField(Place, source="air_from", allow_null=True, required=False)
    order = serializers.IntegerField(min_value=0, max_value=32000, required=False)
    air_m_s = FiniteField(min_value=0.0, max_value=5.0, allow_null=True, required=False)


class PlaceOut(serializers.ModelSerializer[Place]):
    parent_id = serializers.UUIDField(allow_null=True, read_only=True)
    air_from_id = serializers.UUIDField(allow_null=True, read_only=True)

    class Meta:
        model = Place
        fields = ("id", "name", "kind", "parent_id", "air_from_id", "order", "air_m_s")


class PlaceList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.MANAGE_SETTINGS}

    @extend_schema(operation_id="places_list", responses=paged(PlaceOut))
    def get(self, request: Request) -> Response:
        """List every place; `parent_id` makes the tree."""
        rows = queries.all_of(self.studio)
        return keyset(rows, request, fields=("order", "name", "id"), size=500).answer(PlaceOut)

    @extend_schema(request=PlaceIn, responses={201: PlaceOut})
    def post(self, request: Request) -> Response:
        def work(given: Given, act: Act) -> Mapping[str, object]:
            fields = {name: given[name] for name in places.CHANGES}
            return PlaceOut(places.create(act=act, **fields)).data

        return self.once(PlaceIn, work)


class PlaceOne(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.MANAGE_SETTINGS}

    @extend_schema(responses=PlaceOut)
    def get(self, request: Request, place_id: UUID) -> Response:
        place = self.find(Place, id=place_id)
        tag = f'"{revision_of(place.pk, "place")}"'
        return Response(PlaceOut(place).data, headers={"ETag": tag})

    @extend_schema(request=PlaceChangeIn, responses=PlaceOut)
    @transaction.atomic
    def patch(self, request: Request, place_id: UUID) -> Response:
        def work(given: Given, act: Act) -> Mapping[str, object]:
            place = self.find(Place, id=place_id)
            self.check_match(revision_of(place.pk, "place"), PlaceOut(place).data)
            changes = {name: given[name] for name in places.CHANGES & given.keys()}
            return PlaceOut(places.change(act=act, place=place, changes=changes)).data

        answer = self.once(PlaceChangeIn, work, status=200)
        answer["ETag"] = f'"{revision_of(place_id, "place")}"'
        return answer
