"""The forms of answers about loads, for the schema."""

from rest_framework import serializers

from firings.models import FiringKind, KilnReading, Load, LoadEvent, WitnessCone
from pieces.api.bench_shapes import PersonNamedOut, PieceNamedOut, PlaceNamedOut
from pieces.api.shapes import Shape, WordOut
from studio.api.envelopes import ActOut

from .shapes_kilns import KilnNamedOut, KilnOpeningOut, LoadNamedOut, ProgrammeOut


class LoadTimesOut(Shape):
    settled_at = serializers.DateTimeField(allow_null=True)
    loaded_at = serializers.DateTimeField(allow_null=True)
    started_at = serializers.DateTimeField(allow_null=True)
    stopped_at = serializers.DateTimeField(allow_null=True)
    resumed_at = serializers.DateTimeField(allow_null=True)
    ended_at = serializers.DateTimeField(allow_null=True)
    opened_at = serializers.DateTimeField(allow_null=True)
    unloaded_at = serializers.DateTimeField(allow_null=True)
    called_off_at = serializers.DateTimeField(allow_null=True)


class MakerInLoadOut(Shape):
    person = PersonNamedOut(allow_null=True)
    pieces = serializers.IntegerField()
    litres = serializers.FloatField()


class LoadBriefOut(Shape):
    """A load as a row of a list."""

    id = serializers.UUIDField()
    number = serializers.CharField()
    kind = serializers.ChoiceField(FiringKind.choices)
    cone = serializers.CharField()
    state = serializers.ChoiceField(Load.State.choices)
    state_words = serializers.CharField()
    outcome = serializers.CharField()
    kiln = KilnNamedOut()
    starts_at = serializers.DateTimeField()
    cutoff_at = serializers.DateTimeField()
    expected_end_at = serializers.DateTimeField(allow_null=True)
    watcher = PersonNamedOut(allow_null=True)
    is_unplanned = serializers.BooleanField()
    is_interrupted = serializers.BooleanField()
    is_in_doubt = serializers.BooleanField(help_text="Two people told what cannot both be so.")
    needs_kiln = serializers.BooleanField(help_text="Its kiln is out of use.")
    pieces = serializers.IntegerField()
    things = serializers.IntegerField()
    makers = MakerInLoadOut(many=True)
    litres = serializers.FloatField()
    times = LoadTimesOut()
    firing_h = serializers.FloatField(
        allow_null=True, help_text="Hours that really passed from lighting to the end."
    )
    revision = serializers.IntegerField()


class SizeOut(Shape):
    x_mm = serializers.FloatField()
    y_mm = serializers.FloatField()
    height_mm = serializers.FloatField()
    is_round = serializers.BooleanField()
    measured = serializers.ChoiceField(["dry", "bisque"])
    is_assumed = serializers.BooleanField(help_text="The clay's shrinkage is not known.")


class CameFromOut(Shape):
    stage = serializers.CharField()
    state = serializers.CharField()
    place = PlaceNamedOut(allow_null=True)


class PlacementOut(Shape):
    """A piece in a load, or so many of something else."""

    id = serializers.UUIDField()
    piece = PieceNamedOut(allow_null=True)
    what = serializers.CharField()
    count = serializers.IntegerField()
    maker = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    asked_by = PersonNamedOut()
    placed_at = serializers.DateTimeField()
    level = serializers.IntegerField(allow_null=True)
    x_mm = serializers.FloatField(allow_null=True)
    y_mm = serializers.FloatField(allow_null=True)
    rotation_deg = serializers.FloatField()
    size = SizeOut(allow_null=True)
    litres = serializers.FloatField(allow_null=True)
    override_reason = serializers.CharField()
    overrides = serializers.ListField(child=serializers.CharField())
    is_held = serializers.BooleanField(help_text="Two stories are told of it.")
    warnings = WordOut(many=True)
    came_from = CameFromOut(allow_null=True)
    result = serializers.CharField()


class LoadEventOut(Shape):
    id = serializers.UUIDField()
    kind = serializers.ChoiceField(LoadEvent.Kind.choices)
    words = serializers.CharField()
    happened_at = serializers.DateTimeField()
    written_at = serializers.DateTimeField()
    member = PersonNamedOut()
    celsius = serializers.FloatField(allow_null=True)
    outcome = serializers.CharField()
    reason = serializers.CharField()
    note = serializers.CharField(allow_null=True)
    is_taken_back = serializers.BooleanField()
    is_misfit = serializers.BooleanField(help_text="It cannot follow what else was told.")


class KilnReadingOut(Shape):
    id = serializers.UUIDField()
    act_id = serializers.UUIDField()
    taken_at = serializers.DateTimeField()
    elapsed_h = serializers.FloatField(allow_null=True)
    reading_c = serializers.FloatField()
    set_c = serializers.FloatField(allow_null=True)
    words = serializers.CharField()
    use = serializers.ChoiceField(KilnReading.Use.choices)
    why = serializers.CharField()
    instead_c = serializers.FloatField(allow_null=True)
    member = PersonNamedOut()


class WorstGapOut(Shape):
    reading_id = serializers.UUIDField()
    gap_c = serializers.FloatField(help_text="Reading less set point.")


class CornerOut(Shape):
    elapsed_h = serializers.FloatField()
    planned_c = serializers.FloatField()


class ConeSeenOut(Shape):
    id = serializers.UUIDField()
    level = serializers.IntegerField(allow_null=True)
    role = serializers.ChoiceField(WitnessCone.Role.choices)
    cone = serializers.CharField()
    clock_hand = serializers.IntegerField(allow_null=True)
    hand_words = serializers.CharField()
    words = serializers.CharField()
    happened_at = serializers.DateTimeField()


class StoppedFactsOut(Shape):
    highest_c = serializers.FloatField(allow_null=True)
    highest_at = serializers.DateTimeField(allow_null=True)
    above_600_h = serializers.FloatField()
    gap_h = serializers.FloatField()
    last_c = serializers.FloatField(allow_null=True)
    last_at = serializers.DateTimeField(allow_null=True)


class StopChoiceOut(Shape):
    code = serializers.ChoiceField(["resume", "refire", "accept_by_cone"])
    kind = serializers.CharField(help_text="The event to send.")
    outcome = serializers.CharField()
    words = serializers.CharField()
    is_backed = serializers.BooleanField(help_text="The cones seen speak for it.")


class StoppedOut(Shape):
    facts = StoppedFactsOut()
    caution = serializers.CharField()
    choices = StopChoiceOut(many=True)


class ClockChangeOut(Shape):
    at = serializers.DateTimeField()
    words = serializers.CharField()


class MayOut(Shape):
    add = serializers.BooleanField()
    settle = serializers.BooleanField()
    reopen = serializers.BooleanField()
    record = serializers.BooleanField()
    call_off = serializers.BooleanField()
    change = serializers.BooleanField()
    override = serializers.BooleanField()


class NextSlotOut(Shape):
    """Where the ware of a load that was called off could go."""

    words = serializers.CharField()
    load = LoadNamedOut(allow_null=True)
    kiln = KilnNamedOut(allow_null=True)
    day = serializers.DateField(allow_null=True)


class LoadOut(LoadBriefOut):
    """A load with its ware and its log."""

    programme = ProgrammeOut(allow_null=True)
    reading_every_min = serializers.IntegerField()
    expected_h = serializers.FloatField(allow_null=True)
    limit_c = serializers.FloatField(help_text="The studio opens kilns at or below it.")
    may = MayOut()
    nexts = serializers.ListField(child=serializers.CharField())
    placements = PlacementOut(many=True)
    warnings = WordOut(many=True)
    cautions = WordOut(many=True)
    checklist = WordOut(many=True)
    events = LoadEventOut(many=True)
    readings = KilnReadingOut(many=True)
    worst_gap = WorstGapOut(allow_null=True)
    planned_now_c = serializers.FloatField(allow_null=True)
    curve = CornerOut(many=True)
    cones = ConeSeenOut(many=True)
    hot_h = serializers.FloatField()
    gap_h = serializers.FloatField()
    opening = KilnOpeningOut(allow_null=True)
    stopped = StoppedOut(allow_null=True)
    clock_change = ClockChangeOut(allow_null=True)
    misfits = serializers.ListField(child=serializers.UUIDField())
    next_load = LoadNamedOut(allow_null=True)
    next_slot = NextSlotOut(allow_null=True, help_text="Only of one called off of late.")


class LoadScreenOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    load = LoadOut()


class LoadActOut(ActOut):
    load = LoadOut()
    cautions = WordOut(many=True)


class PlacedOut(ActOut):
    load = LoadOut()
    placement_ids = serializers.ListField(child=serializers.UUIDField())
    warnings = WordOut(many=True)


class CoolingOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    opening = KilnOpeningOut(allow_null=True)
    cautions = WordOut(many=True)


class ReadingDoubtOut(Shape):
    reading_id = serializers.UUIDField()
    code = serializers.CharField()
    detail = serializers.CharField()
    instead_c = serializers.FloatField(allow_null=True)


class KilnReadOut(ActOut):
    stored = serializers.IntegerField()
    repeated = serializers.IntegerField(help_text="Readings that were here already.")
    readings = KilnReadingOut(many=True)
    warnings = ReadingDoubtOut(many=True)
    passed_over = serializers.ListField(child=serializers.CharField())
    cautions = WordOut(many=True)


class ConesOut(ActOut):
    cones = ConeSeenOut(many=True)
    warnings = WordOut(many=True)
