"""What the person is to be told, and their answers."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import reminders as actions
from studio.models import Act, Reminder
from studio.permissions import P, Scoped
from studio.queries import reminders as queries

from .envelopes import ActIn, ActOut
from .fields import MomentField
from .pages import keyset, paged
from .views import Given, StudioView

STATES = ("due", "snoozed", "done")


class ReminderObjectOut(serializers.Serializer[Any]):
    kind = serializers.CharField(source="object_kind")
    id = serializers.UUIDField(source="object_id")
    mark = serializers.CharField(source="object_mark")


class ReminderOut(serializers.ModelSerializer[Reminder]):
    kind = serializers.CharField(source="cause")
    objects = serializers.SerializerMethodField()
    asks = serializers.SerializerMethodField(help_text="`let_go` after the third time put off.")

    class Meta:
        model = Reminder
        fields = (
            "id",
            "kind",
            "title",
            "body",
            "link",
            "due_at",
            "state",
            "snoozes",
            "snoozed_until",
            "objects",
            "asks",
        )

    def get_fields(self) -> dict[str, serializers.Field[Any, Any, Any, Any]]:
        # `class` is a word of Python's own, so it cannot be an attribute like the others.
        grade = serializers.ChoiceField(list("ABCD"), source="grade", read_only=True)
        return {**super().get_fields(), "class": grade}

    def get_objects(self, reminder: Reminder) -> list[dict[str, Any]]:
        return [dict(ReminderObjectOut(reminder).data)]

    def get_asks(self, reminder: Reminder) -> str | None:
        return "let_go" if actions.asks_to_let_go(reminder) else None


class ReminderAnswerIn(ActIn):
    answer = serializers.ChoiceField(["done", "snooze", "let_go"])
    until = MomentField(required=False, help_text="Until when it is put off.")

    def validate(self, attrs: dict[str, Any]) -> dict[str, Any]:
        if attrs["answer"] == "snooze" and "until" not in attrs:
            detail = ErrorDetail("Say until when.", "required")
            raise serializers.ValidationError({"until": [detail]})
        return attrs


class ReminderAnswerOut(ActOut):
    reminder = ReminderOut()


class ReminderList(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="reminders_list",
        parameters=[OpenApiParameter("state", str, enum=STATES, default="due")],
        responses=paged(ReminderOut),
    )
    def get(self, request: Request) -> Response:
        """List my reminders: those that are due, put off, or done with."""
        state = request.query_params.get("state", "due")
        if state not in STATES:
            detail = ErrorDetail(f"One of {', '.join(STATES)}.", "invalid-choice")
            raise serializers.ValidationError({"state": [detail]})
        rows = queries.mine(self.member, state, timezone.now())
        order = ("-due_at", "id") if state == "done" else ("due_at", "id")
        return keyset(rows, request, fields=order).answer(ReminderOut)


class ReminderAnswerList(StudioView):
    needs = {"POST": Scoped(own=P.SEE_STUDIO, any=P.READ_EVERYTHING)}

    @extend_schema(request=ReminderAnswerIn, responses={201: ReminderAnswerOut})
    def post(self, request: Request, reminder_id: UUID) -> Response:
        """Say that it is done, put it off, or let it go."""
        reminder = self.own(Reminder, id=reminder_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            answered = actions.answer(
                act=act, reminder=reminder, answer=given["answer"], until=given.get("until")
            )
            return {"reminder": ReminderOut(answered).data}

        return self.once(ReminderAnswerIn, work)
