"""What the holder of a link is shown, for programs; the pages under /c/ show the same."""

from typing import Any

from django.utils import timezone
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from firings.actions import shares
from firings.queries.client_view import view_of
from studio.domain.refusals import Refusal
from studio.domain.text import clean_note

from .client_pages import WORDS_MOST
from .link_guard import guarded, hushed

Shape = serializers.Serializer[Any]


class ShareAnswerIn(Shape):
    approval_id = serializers.UUIDField()
    answer = serializers.ChoiceField(["yes", "no"])
    words = serializers.CharField(
        required=False, allow_blank=True, default="", max_length=WORDS_MOST
    )

    def validate_words(self, words: str) -> str:
        try:
            return clean_note(words, most=WORDS_MOST)
        except Refusal as refusal:
            raise serializers.ValidationError(refusal.detail, code=refusal.code) from refusal


class ShareAnswerOut(Shape):
    id = serializers.UUIDField()
    answer = serializers.ChoiceField(["yes", "no"])
    happened_at = serializers.DateTimeField()


class _Open(APIView):
    """Answers whoever holds a link: no member, no session, and nothing that keeps the answer."""

    authentication_classes = ()
    permission_classes = (AllowAny,)

    def finalize_response(
        self, request: Request, response: Response, *args: object, **kwargs: object
    ) -> Response:
        finished = super().finalize_response(request, response, *args, **kwargs)
        hushed(finished)
        return finished


class ShareShown(_Open):
    @extend_schema(operation_id="shares_one", responses=OpenApiTypes.OBJECT)
    def get(self, request: Request, token: str) -> Response:
        """Tell what a link shows; only what was chosen is in it."""
        with guarded(request._request):
            share = shares.at_hand(key=token, at=timezone.now())
        return Response(view_of(share, at=timezone.now()))


class ShareApprovalList(_Open):
    @extend_schema(
        operation_id="shares_answer", request=ShareAnswerIn, responses={201: ShareAnswerOut}
    )
    def post(self, request: Request, token: str) -> Response:
        """Say yes or no to what is asked; the first answer stands."""
        with guarded(request._request):
            share = shares.at_hand(key=token, at=timezone.now())
            shape = ShareAnswerIn(data=request.data)
            shape.is_valid(raise_exception=True)
            row = shares.answer(share=share, at=timezone.now(), **shape.validated_data)
        return Response(ShareAnswerOut(row).data, status=201)
