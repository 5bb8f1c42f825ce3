"""What is told of ware without a name, and the forms of its answers."""

from typing import Any

from rest_framework import serializers

from pieces.domain import stages
from pieces.models import FoundPiece, Piece
from studio.api.envelopes import ActIn, ActOut
from studio.api.fields import QuantityField
from studio.api.related import RowField
from studio.models import ClayBody, Place

from .bench_shapes import PersonNamedOut, PlaceNamedOut
from .commission_given import NameField
from .shapes import BodyNamedOut

Shape = serializers.Serializer[Any]
LOOKS = ["drying", "bone_dry", "bisqued", "glazed", "glaze_fired"]


def _mm() -> QuantityField:
    return QuantityField(
        unit="mm", least=1, most=3000, required=False, allow_null=True, default=None
    )


class FoundIn(ActIn):
    """Something stood somewhere without a name: its size, its clay, how far along it looks."""

    what = NameField(max_length=120)
    mark_seen = NameField(max_length=60, required=False, allow_blank=True, default="")
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    piece_id = RowField(
        Piece,
        source="piece",
        required=False,
        allow_null=True,
        default=None,
        help_text="Its record, where there is one without a maker.",
    )
    x_mm = _mm()
    y_mm = _mm()
    height_mm = _mm()
    body_id = RowField(ClayBody, source="body", required=False, allow_null=True, default=None)
    looks = serializers.ChoiceField(LOOKS, required=False, allow_blank=True, default="")


class AskingIn(ActIn):
    member_ids = serializers.ListField(
        child=serializers.UUIDField(), allow_empty=False, max_length=20
    )


class ClaimIn(ActIn):
    """That is mine; `piece_id` says which of my pieces it is."""

    found_id = RowField(FoundPiece, source="found")
    piece_id = RowField(Piece, source="piece", required=False, allow_null=True, default=None)


class EndingIn(ActIn):
    """Given back to who claims it (`claim_id` where two do), or let go after its notice."""

    kind = serializers.ChoiceField(["returned", "disposed"])
    claim_id = serializers.UUIDField(required=False, allow_null=True, default=None)


class FoundFilterIn(Shape):
    state = serializers.ChoiceField(FoundPiece.State.choices, required=False)


class ClaimFilterIn(Shape):
    found = serializers.UUIDField(required=False)


class FoundNamedOut(Shape):
    id = serializers.UUIDField()
    mark = serializers.CharField()


class FoundOut(Shape):
    id = serializers.UUIDField()
    what = serializers.CharField()
    mark_seen = serializers.CharField()
    place = PlaceNamedOut(allow_null=True)
    x_mm = serializers.FloatField(allow_null=True)
    y_mm = serializers.FloatField(allow_null=True)
    height_mm = serializers.FloatField(allow_null=True)
    body = BodyNamedOut(allow_null=True)
    looks = serializers.CharField()
    looks_words = serializers.CharField()
    found_at = serializers.DateTimeField()
    found_by = PersonNamedOut()
    notice_date = serializers.DateField()
    is_notice_past = serializers.BooleanField()
    state = serializers.ChoiceField(FoundPiece.State.choices)
    ended_at = serializers.DateTimeField(allow_null=True)
    returned_to = PersonNamedOut(allow_null=True)
    piece = FoundNamedOut(allow_null=True)
    claims_count = serializers.IntegerField()
    photo_ids = serializers.ListField(
        child=serializers.UUIDField(), help_text="Of the thing, newest first."
    )


class LikelyPieceOut(FoundNamedOut):
    noun = serializers.CharField()
    state_words = serializers.CharField()


class LikelyOwnerOut(Shape):
    member = PersonNamedOut()
    piece = LikelyPieceOut()
    why = serializers.ListField(child=serializers.CharField())


class ClaimOut(Shape):
    id = serializers.UUIDField()
    found_id = serializers.UUIDField()
    member = PersonNamedOut()
    piece = FoundNamedOut(allow_null=True)
    happened_at = serializers.DateTimeField()


class FoundMayOut(Shape):
    """What this member may do about it now."""

    give_back = serializers.BooleanField()
    dispose = serializers.BooleanField()


class FoundWholeOut(FoundOut):
    candidates = LikelyOwnerOut(many=True)
    asked = serializers.ListField(
        child=serializers.UUIDField(), help_text="Who was asked already; each is asked once."
    )
    claims = ClaimOut(many=True)
    may = FoundMayOut()
    notice_words = serializers.CharField()


class FoundActOut(ActOut):
    found = FoundWholeOut()


def looks_words(looks: str) -> str:
    """Return how far along a found thing looks, in words."""
    return stages.WORDS[looks] if looks else ""
