"""For owners: what was refused, acts that came too late, and who leaves when."""

from typing import Any
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import held, leaving
from studio.models import Act, HeldAct, Member, RefusedTry
from studio.permissions import P
from studio.queries import hands

from .envelopes import ActIn, ActOut
from .fields import MomentField
from .journal import JournalPersonOut
from .late import sent_again
from .pages import keyset, paged
from .views import Given, StudioView


class RefusedOut(serializers.ModelSerializer[RefusedTry]):
    member = JournalPersonOut()
    device = serializers.CharField(source="device.name", default=None, allow_null=True)

    class Meta:
        model = RefusedTry
        fields = ("id", "member", "device", "code", "needed", "method", "path", "tried_at")


class RefusedList(StudioView):
    for_shared_phone = False
    needs = {"GET": P.READ_EVERYTHING}

    @extend_schema(operation_id="refused_list", responses=paged(RefusedOut))
    def get(self, request: Request) -> Response:
        """List what members tried and may not do, newest first."""
        rows = hands.refused(self.studio)
        return keyset(rows, request, ("-tried_at", "-id")).answer(RefusedOut)


class HeldActOut(serializers.ModelSerializer[HeldAct]):
    member = JournalPersonOut()
    device = serializers.CharField(source="device.name")

    class Meta:
        model = HeldAct
        fields = ("id", "member", "device", "why", "path", "body", "happened_at", "written_at")


class HeldList(StudioView):
    for_shared_phone = False
    needs = {"GET": P.MANAGE_MEMBERS}

    @extend_schema(operation_id="held_list", responses=paged(HeldActOut))
    def get(self, request: Request) -> Response:
        """List acts that came after their member left or their phone was signed off."""
        return keyset(hands.held(self.studio), request).answer(HeldActOut)


class HeldAnswerIn(ActIn):
    is_taken = serializers.BooleanField(help_text="Take it into the story as it was sent, or not.")


class HeldAnswerOut(ActOut):
    is_taken = serializers.BooleanField()


class HeldAnswerList(StudioView):
    for_shared_phone = False
    needs = {"POST": P.MANAGE_MEMBERS}
    in_person = True

    @extend_schema(operation_id="held_answer", request=HeldAnswerIn, responses={201: HeldAnswerOut})
    def post(self, request: Request, held_id: UUID) -> Response:
        """Take a held act into the story, as its own member's, or refuse it; it stays kept."""
        row = self.find(HeldAct, id=held_id)

        def work(given: Given, act: Act) -> dict[str, object]:
            told = held.answer(act=act, held=row, is_taken=given["is_taken"], send=sent_again)
            return {"is_taken": told.is_taken}

        return self.once(HeldAnswerIn, work)


class LeavingIn(ActIn):
    leaves_at = MomentField(allow_null=True, help_text="From then on; null when they stay.")


class LeavingOut(ActOut):
    leaves_at = serializers.DateTimeField(allow_null=True)
    has_left = serializers.BooleanField()


class Leaving(StudioView):
    for_shared_phone = False
    needs = {"POST": P.MANAGE_MEMBERS}
    in_person = True

    @extend_schema(operation_id="members_leave", request=LeavingIn, responses={201: LeavingOut})
    def post(self, request: Request, member_id: UUID) -> Response:
        """Say when somebody leaves: their sign-in ends then, and what they did stays."""
        member = self.find(Member, id=member_id, user__isnull=False)

        def work(given: Given, act: Act) -> dict[str, Any]:
            told = leaving.say(act=act, member=member, leaves_at=given["leaves_at"])
            return {"leaves_at": told.leaves_at, "has_left": told.left_at is not None}

        return self.once(LeavingIn, work)
