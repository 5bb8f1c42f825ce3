"""Who is away, and who minds their things meanwhile."""

from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import settings
from studio.models import Act, Away, Member
from studio.permissions import P, Scoped
from studio.queries import habits

from .envelopes import ActIn, ActOut
from .pages import keyset, paged
from .related import RowField
from .views import Given, StudioView


class AwayIn(ActIn):
    member_id = RowField(
        Member, source="member", required=False, help_text="Me, when left out; others by an owner."
    )
    from_date = serializers.DateField()
    until_date = serializers.DateField(help_text="The last day away.")
    buddy_id = RowField(Member, source="buddy", allow_null=True, default=None)

    def validate(self, given: Given) -> Given:
        if given["until_date"] < given["from_date"]:
            detail = "The last day is not before the first."
            raise serializers.ValidationError({"until_date": [detail]}, code="ends-first")
        return given


class AwayOut(serializers.ModelSerializer[Away]):
    member_id = serializers.UUIDField()
    buddy_id = serializers.UUIDField(allow_null=True)

    class Meta:
        model = Away
        fields = ("id", "member_id", "from_date", "until_date", "buddy_id")


class AwayMadeOut(ActOut):
    away = AwayOut()


class AwayList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS)}

    @extend_schema(operation_id="away_list", responses=paged(AwayOut))
    def get(self, request: Request) -> Response:
        """List who is or was away, last first; what was called off is left out."""
        return keyset(habits.away(self.studio), request, ("-from_date", "-id")).answer(AwayOut)

    @extend_schema(operation_id="away_say", request=AwayIn, responses={201: AwayMadeOut})
    def post(self, request: Request) -> Response:
        """Say that I am away, or for an owner, that somebody else is."""
        return self.once(AwayIn, self._go)

    def _go(self, given: Given, act: Act) -> dict[str, object]:
        away = Away(
            id=act.id,
            studio=self.studio,
            member=given.get("member", self.member),
            from_date=given["from_date"],
            until_date=given["until_date"],
            buddy=given["buddy"],
        )
        self.check_reach(away)
        return {"away": AwayOut(settings.go_away(act=act, away=away)).data}


class AwayDetail(StudioView):
    needs = {"DELETE": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS)}

    @extend_schema(operation_id="away_call_off", responses={204: None})
    def delete(self, request: Request, away_id: UUID) -> Response:
        """Say that the member is not away after all."""
        settings.call_off(act=self.act({}), away=self.own(Away, id=away_id))
        return Response(status=204)
