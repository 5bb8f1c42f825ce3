"""Numbers for pieces, lent to a device before it goes where there is no signal."""

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import numbers
from studio.models import Act
from studio.permissions import P

from .envelopes import ActIn, ActOut
from .views import Given, StudioView


class NumberBlockIn(ActIn):
    series = serializers.RegexField(
        r"^[A-Z]{1,4}\Z", help_text="The letters before the number, as in T29."
    )


class NumberBlockOut(ActOut):
    series = serializers.CharField()
    first = serializers.IntegerField()
    last = serializers.IntegerField()


class NumberBlockList(StudioView):
    needs = {"POST": P.PRESS_OWN}

    @extend_schema(
        operation_id="number_blocks_lease", request=NumberBlockIn, responses={201: NumberBlockOut}
    )
    def post(self, request: Request) -> Response:
        """Lend this device the next twenty numbers of a series; they are never lent again."""
        return self.once(NumberBlockIn, self._lease)

    def _lease(self, given: Given, act: Act) -> dict[str, object]:
        block = numbers.lease(act=act, letters=given["series"])
        return {"series": block.letters, "first": block.first, "last": block.last}
