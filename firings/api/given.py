"""What is told of loads and of ware that waits: shapes only, no rules."""

from typing import Any

from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail

from firings.domain.loads import OUTCOMES, RESULTS
from firings.models import FiringKind, FiringTicket, Kiln, Load, LoadEvent, Programme, WitnessCone
from pieces.models import Piece
from studio.api.envelopes import ActIn, ChangeIn
from studio.api.fields import FiniteField, QuantityField
from studio.api.related import RowField
from studio.models import Member, Place

from .given_kilns import Shape, SlotField, length, words

MANY = 200
THINGS_MOST = 999
HOTTEST_C = 5000.0


def _celsius(**kw: Any) -> QuantityField:
    return QuantityField(unit="c", least=-273.15, most=HOTTEST_C, **kw)


class LoadFields(Shape):
    """What may be said of a load besides when and where."""

    programme_id = RowField(Programme, source="programme", required=False, allow_null=True)
    watcher_id = RowField(Member, source="watcher", required=False, allow_null=True)
    reading_every_min = serializers.IntegerField(min_value=5, max_value=1440, required=False)
    expected_h = FiniteField(min_value=0.5, max_value=500.0, required=False, allow_null=True)


class LoadIn(ActIn, LoadFields):
    """A load for a slot of a kiln; without a number it gets the next one of its series.

    An unplanned one was fired before anybody wrote it down: its acts follow, dated as they were.
    """

    kiln_id = RowField(Kiln, source="kiln")
    kind = serializers.ChoiceField(FiringKind.choices)
    cone = serializers.CharField(max_length=12)
    starts_at = SlotField()
    cutoff_at = SlotField(required=False, allow_null=True, default=None)
    number = serializers.RegexField(
        r"^[A-Z]{1,3}-\d{1,6}$", required=False, allow_null=True, default=None
    )
    is_unplanned = serializers.BooleanField(default=False)


class LoadChangeIn(ChangeIn, LoadFields):
    """What is to change of a load; those with ware in it are told."""

    kiln_id = RowField(Kiln, source="kiln", required=False)
    cone = serializers.CharField(max_length=12, required=False)
    starts_at = SlotField(required=False)
    cutoff_at = SlotField(required=False)


class WhereIn(Shape):
    """Where something stands: level 1 is the lowest shelf, x and y from its middle."""

    level = serializers.IntegerField(min_value=1, max_value=40, required=False, allow_null=True)
    x_mm = QuantityField(unit="mm", least=-5000.0, most=5000.0, required=False, allow_null=True)
    y_mm = QuantityField(unit="mm", least=-5000.0, most=5000.0, required=False, allow_null=True)
    rotation_deg = FiniteField(min_value=-360.0, max_value=360.0, required=False)


class PieceForLoadIn(WhereIn):
    id = serializers.UUIDField(required=False, help_text="Of the placement.")
    piece_id = serializers.UUIDField()


class ThingForLoadIn(WhereIn):
    """So many of something that is no piece here: test bars, shelves of others."""

    id = serializers.UUIDField(required=False, help_text="Of the placement.")
    what = serializers.CharField(max_length=120)
    count = serializers.IntegerField(min_value=1, max_value=999, default=1)
    width_mm = length(required=False, allow_null=True)
    depth_mm = length(required=False, allow_null=True)
    height_mm = length(required=False, allow_null=True)
    is_round = serializers.BooleanField(default=False)


class PlacementsIn(ActIn):
    """Ware for a load: all of it, or none. `except_ids` are pieces ticked off.

    `override_reason` is a technician's, for ware without evidence of dryness or beyond what fits.
    """

    pieces = serializers.ListField(
        child=PieceForLoadIn(), required=False, default=list, max_length=MANY
    )
    things = serializers.ListField(
        child=ThingForLoadIn(), required=False, default=list, max_length=MANY
    )
    except_ids = serializers.ListField(
        child=serializers.UUIDField(), required=False, default=list, max_length=MANY
    )
    override_reason = words()

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        if not given["pieces"] and not given["things"]:
            detail = ErrorDetail("Say what goes in.", "required")
            raise serializers.ValidationError({"pieces": [detail]})
        ids = [row["piece_id"] for row in given["pieces"]]
        if len(set(ids)) < len(ids):
            detail = ErrorDetail("The same piece is there twice.", "twice")
            raise serializers.ValidationError({"pieces": [detail]})
        if sum(row["count"] for row in given["things"]) > THINGS_MOST:
            detail = ErrorDetail(f"At most {THINGS_MOST} at a time.", "too-many")
            raise serializers.ValidationError({"things": [detail]})
        return given


class RemovalIn(ActIn):
    reason = words()


class PlacementChangeIn(ChangeIn, WhereIn):
    """Where it stands."""


class ResultIn(Shape):
    """How one thing came out, and where it was put."""

    placement_id = serializers.UUIDField()
    result = serializers.ChoiceField(RESULTS)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)


class LoadEventIn(ActIn):
    """What happened to a load. Opening wants a temperature or a reason, unloading an outcome.

    `place_id` is where fired ware was put that no result names a place for. `is_catching_up` lets
    steps between be missing.
    """

    happened_at = SlotField(help_text="When it happened, as the person says.")
    kind = serializers.ChoiceField(LoadEvent.Kind.choices)
    celsius = _celsius(required=False, allow_null=True, default=None)
    outcome = serializers.ChoiceField(OUTCOMES, required=False, allow_blank=True, default="")
    reason = words()
    results = serializers.ListField(child=ResultIn(), required=False, default=list, max_length=MANY)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    is_catching_up = serializers.BooleanField(default=False)


class ConeRowIn(Shape):
    level = serializers.IntegerField(
        min_value=1, max_value=40, required=False, allow_null=True, default=None
    )
    role = serializers.ChoiceField(WitnessCone.Role.choices)
    cone = serializers.CharField(max_length=12)
    clock_hand = serializers.IntegerField(
        min_value=0,
        max_value=12,
        required=False,
        allow_null=True,
        default=None,
        help_text="As the hand of a clock: 12 upright, 6 down with its tip level with its base.",
    )
    words = words()


class ConesIn(ActIn):
    cones = serializers.ListField(child=ConeRowIn(), allow_empty=False, max_length=MANY)


class TicketIn(ActIn):
    """Which cone a piece waits for, and what to mind; `fault` and `mended` of ware fired before."""

    kind = serializers.ChoiceField([FiringKind.BISQUE.value, FiringKind.GLAZE.value])
    cone = serializers.CharField(max_length=12)
    words = words()
    fault = serializers.ChoiceField(
        FiringTicket.Fault.choices, required=False, allow_blank=True, default=""
    )
    mended = serializers.ListField(
        child=serializers.ChoiceField(FiringTicket.Mended.choices),
        required=False,
        default=list,
        max_length=len(FiringTicket.Mended),
    )


class TurnIn(ActIn):
    """A piece is put first for its next firing of a kind, with a reason that all can read."""

    kind = serializers.ChoiceField([FiringKind.BISQUE.value, FiringKind.GLAZE.value])
    reason = words()


class LoadFilterIn(Shape):
    state = serializers.CharField(
        required=False, help_text="One or several of the states, with commas between."
    )
    kiln = serializers.UUIDField(required=False)
    piece = serializers.UUIDField(required=False, help_text="Loads that this piece is or was in.")
    until = SlotField(required=False)

    def get_fields(self) -> dict[str, Any]:
        # `from` is a word of Python.
        return {**super().get_fields(), "from": SlotField(required=False)}

    def validate_state(self, value: str) -> list[str]:
        states = [word.strip() for word in value.split(",") if word.strip()]
        unknown = sorted(set(states) - set(Load.State.values))
        if unknown:
            raise serializers.ValidationError(f"No such state: {unknown[0][:20]}.", "invalid")
        return states


class QueueFilterIn(Shape):
    kind = serializers.ChoiceField(
        [FiringKind.BISQUE.value, FiringKind.GLAZE.value], required=False
    )
    cone = serializers.CharField(required=False, max_length=12)
    drying = serializers.BooleanField(
        required=False, default=False, help_text="Show ware that is not called bone dry too."
    )
    room_l = serializers.FloatField(
        required=False,
        min_value=0.1,
        max_value=10_000.0,
        help_text="Room of a layer: say whose ware gets it.",
    )


class FitFilterIn(Shape):
    pieces = serializers.CharField(
        required=False, help_text="Ids of pieces to try beside what is placed, commas between."
    )

    def validate_pieces(self, value: str) -> list[Piece]:
        view = self.context["view"]
        field = serializers.UUIDField()
        ids = [field.run_validation(word.strip()) for word in value.split(",") if word.strip()]
        rows = Piece.objects.of(view.studio).filter(pk__in=ids[:MANY], is_undone=False)
        return list(rows.select_related("design", "body"))
