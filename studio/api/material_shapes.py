"""How clays and glazes look in the API."""

from typing import Any

from drf_spectacular.utils import extend_schema_field
from rest_framework import serializers

from studio.actions import materials
from studio.domain import drying_bodies
from studio.models import ClayBody, ColourBatch, GlazeBatch, Member, SlabBlock, TestBar
from studio.queries import materials as queries

from .envelopes import ActIn, ChangeIn
from .fields import FiniteField, MomentField, QuantityField
from .related import RowField

LONGEST_BAR_MM = 2000.0
# Water weighs 1,000 g/l; no glaze slop comes near 2,500 (from memory).
DENSITY_LEAST_G_PER_L = 1000.0
DENSITY_MOST_G_PER_L = 2500.0


class BodyFields(serializers.Serializer[Any]):
    code = serializers.CharField(max_length=8, required=False)
    name = serializers.CharField(max_length=80, required=False)
    drying_body = serializers.ChoiceField(
        drying_bodies.NAMES, required=False, help_text="Whose drying figures to start from."
    )
    dry_shrinkage_fraction = QuantityField(unit="fraction", required=False, allow_null=True)
    total_shrinkage_fraction = QuantityField(unit="fraction", required=False, allow_null=True)
    top_cone = serializers.CharField(max_length=6, required=False, allow_blank=True)
    caution = serializers.CharField(max_length=300, required=False, allow_blank=True)


class BodyIn(ActIn, BodyFields):
    code = serializers.CharField(max_length=8)
    name = serializers.CharField(max_length=80)
    drying_body = serializers.ChoiceField(drying_bodies.NAMES)


class BodyChangeIn(ChangeIn, BodyFields):
    pass


class MeasuredOut(serializers.Serializer[Any]):
    bars = serializers.IntegerField()
    drying_fraction = serializers.FloatField(allow_null=True)
    total_fraction = serializers.FloatField(allow_null=True)
    total_least_fraction = serializers.FloatField(allow_null=True)
    total_most_fraction = serializers.FloatField(allow_null=True)


class BodyOut(serializers.ModelSerializer[ClayBody]):
    measured = serializers.SerializerMethodField()
    cautions = serializers.SerializerMethodField()

    class Meta:
        model = ClayBody
        fields = (
            "id",
            "code",
            "name",
            "drying_body",
            "dry_shrinkage_fraction",
            "total_shrinkage_fraction",
            "top_cone",
            "caution",
            "measured",
            "cautions",
        )

    @extend_schema_field(MeasuredOut)
    def get_measured(self, body: ClayBody) -> Any:
        return MeasuredOut(queries.measured(body.bars.all())).data

    def get_cautions(self, body: ClayBody) -> list[str]:
        return queries.cautions_of_body(body)


class BarFields(serializers.Serializer[Any]):
    dry_mm = QuantityField(unit="mm", most=LONGEST_BAR_MM, required=False, allow_null=True)
    bisque_mm = QuantityField(unit="mm", most=LONGEST_BAR_MM, required=False, allow_null=True)
    fired_mm = QuantityField(unit="mm", most=LONGEST_BAR_MM, required=False, allow_null=True)


class BarIn(ActIn, BarFields):
    wet_mm = QuantityField(unit="mm", most=LONGEST_BAR_MM, help_text="The line as scratched.")


class BarChangeIn(ChangeIn, BarFields):
    wet_mm = QuantityField(unit="mm", most=LONGEST_BAR_MM, required=False)


class BarOut(serializers.ModelSerializer[TestBar]):
    body_id = serializers.UUIDField(read_only=True)
    shrinkages = serializers.SerializerMethodField()

    class Meta:
        model = TestBar
        fields = (
            "id",
            "body_id",
            "measured_at",
            "wet_mm",
            "dry_mm",
            "bisque_mm",
            "fired_mm",
            "shrinkages",
        )

    def get_shrinkages(self, bar: TestBar) -> dict[str, float | None]:
        told = materials.shrinkages(bar)
        return {
            "drying_fraction": told.drying_fraction,
            "bisque_fraction": told.bisque_fraction,
            "glaze_fraction": told.glaze_fraction,
            "total_fraction": told.total_fraction,
        }


class BatchFields(serializers.Serializer[Any]):
    label = serializers.CharField(max_length=20, required=False)  # type: ignore[assignment]
    body_id = RowField(ClayBody, source="body", required=False)
    mixed_on = serializers.DateField(required=False, allow_null=True)
    stain_g = QuantityField(unit="g", least=0.0, required=False, allow_null=True)
    clay_g = QuantityField(unit="g", least=0.0, required=False, allow_null=True)
    caution = serializers.CharField(max_length=300, required=False, allow_blank=True)


class BatchIn(ActIn, BatchFields):
    label = serializers.CharField(max_length=20)
    body_id = RowField(ClayBody, source="body")


class BatchChangeIn(ChangeIn, BatchFields):
    pass


class BatchOut(serializers.ModelSerializer[ColourBatch]):
    body_id = serializers.UUIDField(read_only=True)
    body_code = serializers.CharField(source="body.code", read_only=True)
    cautions = serializers.SerializerMethodField()

    class Meta:
        model = ColourBatch
        fields = (
            "id",
            "label",
            "body_id",
            "body_code",
            "mixed_on",
            "stain_g",
            "clay_g",
            "caution",
            "cautions",
        )

    def get_cautions(self, batch: ColourBatch) -> list[str]:
        return queries.cautions_of_batch(batch)


class GlazeBatchFields(serializers.Serializer[Any]):
    label = serializers.CharField(max_length=20, required=False)  # type: ignore[assignment]
    name = serializers.CharField(max_length=80, required=False)
    mixed_on = serializers.DateField(required=False, allow_null=True)
    mixed_by_id = RowField(Member, source="mixed_by", required=False, allow_null=True)
    density_g_per_l = FiniteField(
        min_value=DENSITY_LEAST_G_PER_L,
        max_value=DENSITY_MOST_G_PER_L,
        required=False,
        allow_null=True,
        help_text="Of the slop as it was dipped.",
    )
    cone = serializers.CharField(max_length=4, required=False, allow_blank=True)
    caution = serializers.CharField(max_length=300, required=False, allow_blank=True)


class GlazeBatchIn(ActIn, GlazeBatchFields):
    label = serializers.CharField(max_length=20)
    name = serializers.CharField(max_length=80)


class GlazeBatchChangeIn(ChangeIn, GlazeBatchFields):
    pass


class GlazeBatchOut(serializers.ModelSerializer[GlazeBatch]):
    mixed_by = serializers.SerializerMethodField()
    cautions = serializers.SerializerMethodField()

    class Meta:
        model = GlazeBatch
        fields = (
            "id",
            "label",
            "name",
            "mixed_on",
            "mixed_by",
            "density_g_per_l",
            "cone",
            "caution",
            "cautions",
        )

    def get_mixed_by(self, batch: GlazeBatch) -> str | None:
        return batch.mixed_by.first_name if batch.mixed_by else None

    def get_cautions(self, batch: GlazeBatch) -> list[str]:
        return queries.cautions_of_glaze(batch)


class SlabBlockFields(serializers.Serializer[Any]):
    label = serializers.CharField(max_length=20, required=False)  # type: ignore[assignment]
    laid_on = serializers.DateField(required=False, allow_null=True)
    body_ids = RowField(ClayBody, source="bodies", many=True, required=False)
    batch_ids = RowField(ColourBatch, source="batches", many=True, required=False)
    used_up_at = MomentField(required=False, allow_null=True)


class SlabBlockIn(ActIn, SlabBlockFields):
    label = serializers.CharField(max_length=20)
    body_ids = RowField(ClayBody, source="bodies", many=True, allow_empty=False)


class SlabBlockChangeIn(ChangeIn, SlabBlockFields):
    pass


class SlabBlockOut(serializers.ModelSerializer[SlabBlock]):
    bodies = serializers.SerializerMethodField()
    batches = serializers.SerializerMethodField()
    cautions = serializers.SerializerMethodField()

    class Meta:
        model = SlabBlock
        fields = ("id", "label", "laid_on", "used_up_at", "bodies", "batches", "cautions")

    def get_bodies(self, block: SlabBlock) -> list[dict[str, str]]:
        return [{"id": str(body.pk), "code": body.code} for body in block.bodies.all()]

    def get_batches(self, block: SlabBlock) -> list[dict[str, str]]:
        return [{"id": str(batch.pk), "label": batch.label} for batch in block.batches.all()]

    def get_cautions(self, block: SlabBlock) -> list[str]:
        return queries.cautions_of_block(block)
