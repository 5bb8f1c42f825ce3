"""What the acts about pieces are told: shapes only, no rules."""

from typing import Any

from rest_framework import serializers

from moulds.models import Casting, Design
from pieces.domain import stages
from pieces.models import (
    Clash,
    ClashAnswer,
    CommissionLine,
    Move,
    PartEvent,
    Piece,
    StageEvent,
    TouchCheck,
)
from studio.api.envelopes import ActIn, ChangeIn
from studio.api.fields import QuantityField
from studio.api.related import RowField
from studio.models import ClayBody, GlazeBatch, Member, Place, SlabBlock

Shape = serializers.Serializer[Any]

MANY = 200
TOLD_OF_PARTS = [kind for kind in PartEvent.Kind.values if kind != PartEvent.Kind.PRESSED]
BULK_OF_PARTS = ["demoulded", "not_yet", "joined", "cracked"]
BULK_OF_PIECES = ["cover", "move", "check", "stage", "lose"]


def _words(most: int, **kw: Any) -> serializers.CharField:
    return serializers.CharField(
        max_length=most, required=False, allow_blank=True, default="", **kw
    )


def _glaze_batch() -> RowField:
    return RowField(
        GlazeBatch,
        source="glaze_batch",
        required=False,
        allow_null=True,
        default=None,
        help_text="What it was dipped in, where it came to be glazed.",
    )


class PlannedPieceIn(Shape):
    """A piece that is meant; without a mark it gets the next number of its series."""

    id = serializers.UUIDField()
    mark = serializers.CharField(max_length=60, required=False, allow_null=True, default=None)


class PlanIn(ActIn):
    """Pieces of one design, named one by one in `pieces`, or just `count` of them."""

    design_id = RowField(Design, source="design")
    pieces = serializers.ListField(
        child=PlannedPieceIn(), required=False, max_length=MANY, default=list
    )
    count = serializers.IntegerField(min_value=1, max_value=MANY, default=1)
    maker_id = RowField(Member, source="maker", required=False, allow_null=True, default=None)
    body_id = RowField(ClayBody, source="body", required=False, allow_null=True, default=None)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    use = serializers.ChoiceField(Piece.Use.choices, required=False)
    line_id = RowField(
        CommissionLine,
        source="line",
        required=False,
        allow_null=True,
        default=None,
        help_text="The line of the order they are for; it also says the use, left out here.",
    )


class PieceChangeIn(ChangeIn):
    """What a piece is meant for."""

    use = serializers.ChoiceField(Piece.Use.choices)


class PressedPieceIn(Shape):
    """The piece a part was pressed for; the rest is needed where the piece is new."""

    id = serializers.UUIDField()
    mark = serializers.CharField(max_length=60, required=False, allow_null=True, default=None)
    design_id = serializers.UUIDField(required=False, allow_null=True, default=None)
    maker_id = serializers.UUIDField(required=False, allow_null=True, default=None)
    use = serializers.ChoiceField(Piece.Use.choices, default=Piece.Use.FOOD)
    line_id = serializers.UUIDField(required=False, allow_null=True, default=None)


class PressedPartIn(Shape):
    """A part that came of it; `replaces_id` is the part of the same piece that it stands for."""

    id = serializers.UUIDField()
    role = serializers.CharField(max_length=24, required=False, allow_blank=True, default="")
    replaces_id = serializers.UUIDField(required=False, allow_null=True, default=None)
    piece = PressedPieceIn()


class PressingIn(ActIn):
    """Clay was pressed `count` times into those parts of the casting (as often as parts came)."""

    casting_id = RowField(Casting, source="casting")
    mould_part_ids = serializers.ListField(
        child=serializers.UUIDField(), allow_empty=False, max_length=20
    )
    count = serializers.IntegerField(
        min_value=1, max_value=999, required=False, allow_null=True, default=None
    )
    slab_block_id = RowField(
        SlabBlock, source="slab_block", required=False, allow_null=True, default=None
    )
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    parts = serializers.ListField(
        child=PressedPartIn(), required=False, max_length=MANY, default=list
    )


class PartMadeIn(ActIn):
    """A part made without a mould; its id is its own."""

    part_id = serializers.UUIDField()
    role = serializers.CharField(max_length=24)


class PartEventIn(ActIn):
    """What happened to a part; `replacement_id` is the part that stands for a replaced one."""

    kind = serializers.ChoiceField(TOLD_OF_PARTS)
    stuck_how = _words(40, help_text="hooked_edge, wet_mould, undercut, or other words.")
    cause = _words(40)
    replacement_id = serializers.UUIDField(required=False, allow_null=True, default=None)


class StageEventIn(ActIn):
    """A piece came to a spot of the job. Going back wants a `reason`; a loss may say its cause.

    `reason` "catching_up" lets a step stand that skips others; "found" brings a missing piece back.
    """

    stage = serializers.ChoiceField(stages.STAGES)
    state = serializers.ChoiceField(stages.STATES)
    reason = _words(200)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    grade = serializers.ChoiceField(
        StageEvent.Grade.choices, required=False, allow_blank=True, default=""
    )
    glaze_batch_id = _glaze_batch()
    cause = _words(40)
    cause_is_guess = serializers.BooleanField(default=False)
    part_id = serializers.UUIDField(required=False, allow_null=True, default=None)
    reclaim = serializers.ChoiceField(
        StageEvent.Reclaim.choices, required=False, allow_blank=True, allow_null=True, default=""
    )


class CoverIn(ActIn):
    """How the piece is covered; with `part_ids` those parts of it only, otherwise than the rest."""

    state = serializers.ChoiceField(Piece.CoverState.choices)
    part_ids = serializers.ListField(
        child=serializers.UUIDField(), required=False, default=list, max_length=MANY
    )


class PieceWeighingIn(ActIn):
    mass_g = QuantityField(unit="g", least=0.001, most=500_000)


class TouchCheckIn(ActIn):
    """How it feels; without a part, the whole piece."""

    feel = serializers.ChoiceField(TouchCheck.Feel.choices)
    part_id = serializers.UUIDField(required=False, allow_null=True, default=None)


class MoveIn(ActIn):
    """Where it was put; said again of the place where it stands, what it stands on there."""

    place_id = RowField(Place, source="place")
    stands_on = serializers.ChoiceField(
        Move.On.choices,
        required=False,
        allow_blank=True,
        default="",
        help_text="A board, a plaster bat or slats open below; left out, as is usual there.",
    )


class BulkIn(ActIn):
    """The same of many: `ids` are pieces, or parts for the kinds that concern parts.

    `except_ids` are those of them that it was not done to.
    """

    kind = serializers.ChoiceField([*BULK_OF_PIECES, *BULK_OF_PARTS])
    ids = serializers.ListField(child=serializers.UUIDField(), allow_empty=False, max_length=MANY)
    except_ids = serializers.ListField(
        child=serializers.UUIDField(), required=False, default=list, max_length=MANY
    )
    cover = serializers.ChoiceField(Piece.CoverState.choices, required=False)
    feel = serializers.ChoiceField(TouchCheck.Feel.choices, required=False)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    stage = serializers.ChoiceField(stages.STAGES, required=False)
    state = serializers.ChoiceField(stages.STATES, required=False)
    reason = _words(200)
    grade = serializers.ChoiceField(
        StageEvent.Grade.choices, required=False, allow_blank=True, default=""
    )
    glaze_batch_id = _glaze_batch()
    cause = _words(40)
    cause_is_guess = serializers.BooleanField(default=False)
    reclaim = serializers.ChoiceField(
        StageEvent.Reclaim.choices, required=False, allow_blank=True, default=""
    )

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        needed = {
            "cover": ("cover",),
            "move": ("place",),
            "check": ("feel",),
            "stage": ("stage", "state"),
            "lose": ("state",),
        }.get(given["kind"], ())
        absent = [name for name in needed if not given.get(name)]
        if absent:
            names = {"place": "place_id"}
            raise serializers.ValidationError(
                {names.get(name, name): ["Say this too."] for name in absent}, code="required"
            )
        return given


class RetractionIn(ActIn):
    """Takes back the act that `corrects` names."""

    corrects = serializers.UUIDField()


class ClashAnswerIn(ActIn):
    choice = serializers.ChoiceField(ClashAnswer.Choice.choices)


class PieceFilterIn(Shape):
    """What a list of pieces can be asked for."""

    stage = serializers.ChoiceField(stages.STAGES, required=False)
    state = serializers.ChoiceField(stages.STATES, required=False)
    place = serializers.UUIDField(required=False)
    maker = serializers.UUIDField(required=False)
    q = serializers.CharField(max_length=60, required=False, default="", allow_blank=True)


class ClashFilterIn(Shape):
    """Which clashes."""

    state = serializers.ChoiceField(Clash.State.choices, required=False)
    piece = serializers.UUIDField(required=False)
