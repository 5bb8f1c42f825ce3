"""What a report says over the wire, and how it is answered what reports say of ware."""

from collections.abc import Mapping
from typing import Any

from rest_framework import serializers

from firings.models import Load
from moulds.models import Design
from pieces.api.commission_given import DayField, NameField
from pieces.api.commission_shapes import GlazeNamedOut, TestReportOut
from pieces.models import Commission, Piece, TestReport
from studio.api.envelopes import ActIn, ActOut
from studio.api.fields import FiniteField, QuantityField
from studio.api.related import RowField
from studio.models import GlazeBatch

Shape = serializers.Serializer[Any]

MOST = 1e6
DEEPEST_MM = 5000.0
TESTED = [choice for choice in Design.Contact.values if choice != Design.Contact.LID]


def _result() -> FiniteField:
    return FiniteField(min_value=0, max_value=MOST)


def _lid_mg() -> FiniteField:
    return FiniteField(
        min_value=0,
        max_value=MOST,
        required=False,
        allow_null=True,
        default=None,
        help_text="What the inside of the lid gave off, tested apart. [mg]",
    )


def _row(model: Any, source: str) -> RowField:
    return RowField(model, source=source, required=False, allow_null=True, default=None)


class TestReportIn(ActIn):
    """What a laboratory wrote. `…_is_below`: it wrote "less than" that value.

    The depth and volume of the tested ware may be left out where the piece is named: then they are
    its design's.
    """

    __test__ = False

    commission_id = _row(Commission, "commission")
    piece_id = _row(Piece, "piece")
    glaze_batch_id = _row(GlazeBatch, "glaze_batch")
    load_id = _row(Load, "load")
    occasion_name = NameField(max_length=40, required=False, allow_blank=True, default="")
    glaze = NameField(max_length=80, required=False, allow_blank=True, default="")
    laboratory = NameField(max_length=120)
    reported_on = DayField()
    lead_value = _result()
    lead_is_below = serializers.BooleanField(default=False)
    cadmium_value = _result()
    cadmium_is_below = serializers.BooleanField(default=False)
    unit = serializers.ChoiceField(TestReport.Unit.choices)
    contact = serializers.ChoiceField(TESTED, required=False, allow_null=True, default=None)
    depth_mm = QuantityField(
        unit="mm", least=0.1, most=DEEPEST_MM, required=False, allow_null=True, default=None
    )
    volume_ml = QuantityField(
        unit="ml", least=0.1, most=MOST, required=False, allow_null=True, default=None
    )
    area_dm2 = FiniteField(
        min_value=0.001, max_value=1e5, required=False, allow_null=True, default=None
    )
    lid_lead_mg = _lid_mg()
    lid_lead_is_below = serializers.BooleanField(default=False)
    lid_cadmium_mg = _lid_mg()
    lid_cadmium_is_below = serializers.BooleanField(default=False)

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        lid = ("lid_lead_mg", "lid_cadmium_mg")
        told = [name for name in lid if given[name] is not None]
        if len(told) == 1:
            other = next(name for name in lid if name not in told)
            raise _wanted(other, "Lead and cadmium of the lid go together.")
        size = "area_dm2" if given["unit"] == TestReport.Unit.PER_AREA else "volume_ml"
        if told and given[size] is None and (size == "area_dm2" or given["piece"] is None):
            raise _wanted(size, "The lid is added on the vessel's own: say how much that is.")
        return given


def _wanted(name: str, detail: str) -> serializers.ValidationError:
    return serializers.ValidationError({name: [detail]}, code="required")


class LimitsOut(Shape):
    """What may be given off by ware of its category."""

    name = serializers.ChoiceField(["flat", "fillable", "cooking"])
    words = serializers.CharField()
    lead = serializers.FloatField()
    cadmium = serializers.FloatField()
    unit = serializers.ChoiceField(TestReport.Unit.choices)


class VerdictOut(Shape):
    code = serializers.ChoiceField(["within", "over", "not_tested", "not_told"])
    words = serializers.CharField()


class JudgedReportOut(TestReportOut):
    """A report, with the limits the tested ware falls under and how its results stand to them."""

    limits = LimitsOut(allow_null=True)
    verdict = VerdictOut()


class TestReportActOut(ActOut):
    __test__ = False

    report = JudgedReportOut()
    cautions: Any = serializers.ListField(child=serializers.CharField())


class FiredOut(Shape):
    load = serializers.CharField()
    kiln = serializers.CharField()
    cone = serializers.CharField()


class CoverageOut(Shape):
    """Whether a report speaks for the piece; `words` say what it says, or what is wanting."""

    code = serializers.CharField()
    words = serializers.CharField()
    report_ids = serializers.ListField(child=serializers.UUIDField())


class PieceFoodOut(Shape):
    """A piece as something to eat from."""

    piece_id = serializers.UUIDField()
    mark = serializers.CharField()
    design_id = serializers.UUIDField()
    design = serializers.CharField()
    use = serializers.ChoiceField(Piece.Use.choices)
    limits = LimitsOut(allow_null=True)
    glaze_batches = GlazeNamedOut(many=True)
    fired = FiredOut(allow_null=True)
    coverage = CoverageOut()


class FoodContactOut(PieceFoodOut):
    jurisdiction = serializers.CharField()
    how_tested = serializers.CharField()
    sources = serializers.ListField(child=serializers.CharField())


def given_report(given: Mapping[str, Any]) -> dict[str, Any]:
    """Return what was given as the row holds it; what the piece's design knows is filled in."""
    names = {str(name) for name in TestReportIn().fields} - {str(name) for name in ActIn().fields}
    row = {name.removesuffix("_id"): given.get(name.removesuffix("_id")) for name in names}
    load, piece = row.pop("load"), row["piece"]
    if load is not None:
        row["occasion_id"], row["occasion_name"] = load.pk, load.number
    if piece is not None:
        design = piece.design
        row["depth_mm"] = row["depth_mm"] or design.inside_depth_mm
        row["volume_ml"] = row["volume_ml"] or design.capacity_ml
        row["contact"] = row["contact"] or design.contact
    row["contact"] = row["contact"] or Design.Contact.TABLE
    return row
