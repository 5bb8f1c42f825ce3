"""Designs and masters as the API shows them."""

from rest_framework import serializers

from moulds.models import Design, DesignPart

from .shapes import CautionOut, Shape


class DesignPartOut(serializers.ModelSerializer[DesignPart]):
    class Meta:
        model = DesignPart
        fields = (
            "id",
            "role",
            "count",
            "order",
            "is_required",
            "shape",
            "method",
            "thickest_mm",
            "thinnest_mm",
            "footprint_x_mm",
            "footprint_y_mm",
            "height_mm",
            "clay_g",
        )


class DesignOut(Shape):
    """A design with its parts."""

    id = serializers.UUIDField()
    name = serializers.CharField()
    noun = serializers.CharField()
    series = serializers.CharField()
    body_id = serializers.UUIDField(allow_null=True)
    uses_moulds = serializers.BooleanField()
    footprint_x_mm = serializers.FloatField(allow_null=True)
    footprint_y_mm = serializers.FloatField(allow_null=True)
    height_mm = serializers.FloatField(allow_null=True)
    is_round = serializers.BooleanField()
    inside_depth_mm = serializers.FloatField(allow_null=True)
    capacity_ml = serializers.FloatField(allow_null=True)
    contact = serializers.ChoiceField(Design.Contact.choices)
    revision = serializers.IntegerField()
    parts = DesignPartOut(many=True)


class DesignMadeOut(DesignOut):
    """A design, and walls above the studio's limit."""

    journal_seq = serializers.IntegerField()
    warnings = CautionOut(many=True)


class MasterOut(Shape):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]
    design_id = serializers.UUIDField()
    part_id = serializers.UUIDField(allow_null=True)
    is_ready = serializers.BooleanField()
