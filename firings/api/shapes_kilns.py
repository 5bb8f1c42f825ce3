"""The forms of answers about kilns and programmes, for the schema."""

from rest_framework import serializers

from firings.models import Post, Shelf
from pieces.api.bench_shapes import PersonNamedOut, PlaceNamedOut
from pieces.api.shapes import Shape, WordOut
from studio.api.envelopes import ActOut

from .service_shapes import KilnHealthOut


class ShelfOut(serializers.ModelSerializer[Shelf]):
    class Meta:
        model = Shelf
        fields = (
            "id",
            "shape",
            "width_mm",
            "depth_mm",
            "diameter_mm",
            "thickness_mm",
            "count",
        )


class PostOut(serializers.ModelSerializer[Post]):
    class Meta:
        model = Post
        fields = ("id", "height_mm", "count", "footprint_mm", "stands_inside")


class LoadNamedOut(Shape):
    id = serializers.UUIDField()
    number = serializers.CharField()
    starts_at = serializers.DateTimeField()


class KilnNamedOut(Shape):
    id = serializers.UUIDField()
    number = serializers.CharField()
    name = serializers.CharField()
    place_id = serializers.UUIDField()


class LastReadingOut(Shape):
    reading_c = serializers.FloatField()
    taken_at = serializers.DateTimeField()


class DoingOut(Shape):
    """What a kiln is doing; the state of its load, or empty, or out of use."""

    word = serializers.CharField()
    words = serializers.CharField()
    till = serializers.DateTimeField(allow_null=True)
    watcher = PersonNamedOut(allow_null=True)
    load = LoadNamedOut(allow_null=True)
    reading = LastReadingOut(allow_null=True)


class KilnOpeningOut(Shape):
    """When a kiln may likely be opened; only a measured temperature opens it."""

    limit_c = serializers.FloatField()
    early = serializers.DateTimeField(allow_null=True)
    likely = serializers.DateTimeField(allow_null=True)
    late = serializers.DateTimeField(allow_null=True)
    staffed_at = serializers.DateTimeField(
        allow_null=True, help_text="When somebody is in first, once it is likely cool enough."
    )
    basis = serializers.ChoiceField(["readings", "known", "guess"])
    air_c = serializers.FloatField()
    k_per_h = serializers.FloatField(allow_null=True)
    last_c = serializers.FloatField(allow_null=True)
    last_at = serializers.DateTimeField(allow_null=True)
    words = serializers.CharField()


class ComingOut(LoadNamedOut):
    kind = serializers.CharField()
    cone = serializers.CharField()
    state = serializers.CharField()
    cutoff_at = serializers.DateTimeField()
    pieces = serializers.IntegerField()


class KilnOut(Shape):
    """A kiln, and what it is doing now."""

    id = serializers.UUIDField()
    number = serializers.CharField()
    name = serializers.CharField()
    kind = serializers.ChoiceField(["front", "top"])
    chamber = serializers.ChoiceField(["rect", "round"])
    width_mm = serializers.FloatField(allow_null=True)
    depth_mm = serializers.FloatField(allow_null=True)
    diameter_mm = serializers.FloatField(allow_null=True)
    height_mm = serializers.FloatField()
    litres = serializers.FloatField()
    top_c = serializers.FloatField()
    place = PlaceNamedOut()
    revision = serializers.IntegerField()
    is_out_of_use = serializers.BooleanField()
    out_of_use_reason = serializers.CharField()
    out_of_use_since = serializers.DateTimeField(allow_null=True)
    elements_changed_on = serializers.DateField(allow_null=True)
    firings_before = serializers.IntegerField()
    hot_hours_before = serializers.FloatField()
    sensor_firings_before = serializers.IntegerField()
    cooling_k_per_h = serializers.FloatField(allow_null=True)
    firings = serializers.IntegerField(
        help_text="Since its elements were changed; what was taken over counts until then."
    )
    sensor_firings = serializers.IntegerField()
    hot_h = serializers.FloatField(help_text="Hours driven above 600 °C.")
    health = KilnHealthOut()
    remarks = serializers.CharField()
    shelves = ShelfOut(many=True)
    posts = PostOut(many=True)
    doing = DoingOut()
    opening = KilnOpeningOut(allow_null=True)
    next_loads = ComingOut(many=True)


class KilnsOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    results = KilnOut(many=True)
    cautions = WordOut(many=True)


class KilnActOut(ActOut):
    kiln = KilnOut()
    affected = LoadNamedOut(many=True)


class KilnEventOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    kind = serializers.CharField()
    reason = serializers.CharField()


class SegmentOut(Shape):
    order = serializers.IntegerField()
    to_c = serializers.FloatField()
    rate_c_per_h = serializers.FloatField(allow_null=True)
    hold_min = serializers.IntegerField()


class NeededOut(Shape):
    """What the cone needs at the rate of the last leg, by which chart. [°C]"""

    celsius = serializers.FloatField()
    low_c = serializers.FloatField()
    high_c = serializers.FloatField()
    rate_c_per_h = serializers.FloatField()
    chart = serializers.CharField()


class ProgrammeOut(Shape):
    id = serializers.UUIDField()
    name = serializers.CharField()
    kind = serializers.ChoiceField(["bisque", "glaze", "test"])
    cone = serializers.CharField()
    top_c = serializers.FloatField()
    hours = serializers.FloatField(allow_null=True)
    segments = SegmentOut(many=True)
    revision = serializers.IntegerField()
    needed = NeededOut(allow_null=True)
    warnings = WordOut(many=True)


class ProgrammeActOut(ActOut):
    programme = ProgrammeOut()
