"""What the papers of an order are asked for with, and how they are answered."""

from typing import Any

from rest_framework import serializers

from firings.models import Share
from studio.api.envelopes import ActIn, ActOut

from .food_shapes import PieceFoodOut

Shape = serializers.Serializer[Any]


def _people() -> serializers.ChoiceField:
    return serializers.ChoiceField(
        Share.People.choices,
        default=Share.People.INITIALS,
        help_text="How makers are named, as was agreed with them.",
    )


class PapersQueryIn(Shape):
    people = _people()


class PapersIn(ActIn):
    """The owner signs; `declares`: by the reports the ware may be declared for food."""

    declares = serializers.BooleanField(default=False)
    people = _people()


class SignedPapersOut(Shape):
    id = serializers.UUIDField()
    title = serializers.CharField()
    signed_at = serializers.DateTimeField()
    signed_by = serializers.CharField()
    sha256 = serializers.CharField()
    is_declared = serializers.BooleanField()


class SignedOut(ActOut):
    paper = SignedPapersOut()


class MaterialToldOut(Shape):
    what = serializers.CharField()
    caution = serializers.CharField()


class PapersMayOut(Shape):
    sign = serializers.BooleanField()
    print = serializers.BooleanField()


class PapersFactsOut(Shape):
    """What the papers would say now; `missing` keeps the ware from being declared for food."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    number = serializers.CharField()
    state = serializers.ChoiceField(["display", "declared", "not_declared"])
    pieces = PieceFoodOut(many=True)
    missing = serializers.ListField(child=serializers.CharField())
    materials = MaterialToldOut(many=True)
    kept = SignedPapersOut(many=True)
    told_since = serializers.IntegerField()
    may = PapersMayOut()
