"""The journal: the story of one thing, or everything heard since a number."""

from typing import Any
from uuid import UUID

from django.db.models import Prefetch, QuerySet
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response

from studio.models import JournalEntry
from studio.permissions import P
from studio.queries import journal, photos

from .hidden import without_money
from .pages import keyset, paged
from .related import uuid_of
from .views import StudioView


class JournalPersonOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    first_name = serializers.CharField()
    initials = serializers.CharField()


class JournalSubjectOut(serializers.Serializer[Any]):
    kind = serializers.CharField()
    id = serializers.UUIDField(source="subject_id")


class JournalNoteOut(serializers.Serializer[Any]):
    text = serializers.CharField()
    blanked_at = serializers.DateTimeField(allow_null=True)


class JournalEntryOut(serializers.ModelSerializer[JournalEntry]):
    member = JournalPersonOut()
    device = serializers.CharField(source="device.name")
    is_late = serializers.SerializerMethodField(
        help_text="Written so long after it happened that both times are worth showing."
    )
    corrected_by = serializers.UUIDField(
        allow_null=True, help_text="The act that took this one back or put it right."
    )
    subjects = JournalSubjectOut(many=True)
    notes = JournalNoteOut(many=True)
    photo_ids = serializers.SerializerMethodField(help_text="Photos said with it.")

    class Meta:
        model = JournalEntry
        fields = (
            "id",
            "seq",
            "verb",
            "member",
            "device",
            "happened_at",
            "written_at",
            "is_late",
            "clock_offset_s",
            "corrects",
            "corrected_by",
            "facts",
            "as_typed",
            "subjects",
            "notes",
            "photo_ids",
        )

    def get_is_late(self, entry: JournalEntry) -> bool:
        return journal.is_late(entry)

    def get_photo_ids(self, entry: JournalEntry) -> list[UUID]:
        return photos.ids_of(entry)


class JournalList(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="journal_list",
        parameters=[
            OpenApiParameter("subject", UUID, description="Only what tells of this thing."),
            OpenApiParameter("after", int, description="Only what was heard after this number."),
        ],
        responses=paged(JournalEntryOut),
    )
    def get(self, request: Request) -> Response:
        """Tell the story of a thing, newest first, or everything after a number, oldest first."""
        subject, after = request.query_params.get("subject"), request.query_params.get("after")
        if subject is not None:
            rows = journal.story_of(self.studio, uuid_of("subject", subject))
            return self._page(rows, request, ("-happened_at", "-seq"))
        if after is not None:
            rows = journal.heard_after(self.studio, _whole(after))
            return self._page(rows, request, ("seq",))
        return self._page(journal.heard_after(self.studio, 0), request, ("-seq",))

    def _page(
        self, rows: "QuerySet[JournalEntry]", request: Request, fields: tuple[str, ...]
    ) -> Response:
        rows = journal.with_corrections(rows).prefetch_related(
            Prefetch("subjects"), Prefetch("notes"), Prefetch("photos")
        )
        answer = keyset(rows, request, fields=fields).answer(JournalEntryOut)
        if P.SEE_ALL_PRICES not in self.grants:
            answer.data = without_money(answer.data)
        return answer


def _whole(text: str) -> int:
    if not text.isascii() or not text.isdigit() or len(text) > 18:
        raise serializers.ValidationError(
            {"after": [ErrorDetail("Give a whole number.", "invalid")]}
        )
    return int(text)
