"""The forms of answers about two stories of one piece, for the schema."""

from typing import Any

from rest_framework import serializers

from studio.api.envelopes import ActOut

from .bench_shapes import PersonNamedOut, PlaceNamedOut
from .shapes import PieceBriefOut, SpotOut

Shape = serializers.Serializer[Any]


class ClashSubjectOut(Shape):
    kind = serializers.CharField()
    id = serializers.UUIDField()
    mark = serializers.CharField()
    noun = serializers.CharField()


class ClashStandsOut(SpotOut):
    place = PlaceNamedOut(allow_null=True)


class ClashActOut(Shape):
    id = serializers.UUIDField()
    verb = serializers.CharField()
    words = serializers.CharField()
    detail = serializers.CharField()
    happened_at = serializers.DateTimeField()
    written_at = serializers.DateTimeField()
    member = PersonNamedOut()
    device = serializers.CharField()
    facts = serializers.JSONField()


class ClashChoiceOut(Shape):
    choice = serializers.ChoiceField(["first", "second", "both"])
    consequence = serializers.CharField()


class ClashOut(Shape):
    """Two stories of one piece, and what each answer would come to."""

    id = serializers.UUIDField()
    kind = serializers.CharField()
    state = serializers.ChoiceField(["open", "answered", "gone"])
    subject = ClashSubjectOut()
    opened_at = serializers.DateTimeField()
    stands_meanwhile = ClashStandsOut()
    holds = serializers.ListField(child=serializers.CharField())
    asked = PersonNamedOut(many=True)
    may_answer = serializers.BooleanField()
    acts = ClashActOut(many=True)
    choices = ClashChoiceOut(many=True)


class ClashWholeOut(ClashOut):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()


class ClashAnswerOut(ActOut):
    clash = ClashOut()
    piece = PieceBriefOut()
