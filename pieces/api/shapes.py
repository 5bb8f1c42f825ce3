"""The forms of answers about pieces, for the schema."""

from typing import Any

from rest_framework import serializers

from pieces.models import Move
from studio.api.envelopes import ActOut

from .bench_shapes import (
    PartNamedOut,
    PersonNamedOut,
    PieceNamedOut,
    PlaceNamedOut,
    PromisedToOut,
)

Shape = serializers.Serializer[Any]


class PartnerNamedOut(PieceNamedOut):
    seat_gap_mm = serializers.FloatField(allow_null=True)


class SpotOut(Shape):
    stage = serializers.CharField()
    state = serializers.CharField()
    words = serializers.CharField()


class WordOut(Shape):
    """A warning or a caution: a code for screens, a sentence for people."""

    code = serializers.CharField()
    detail = serializers.CharField()


class PieceBriefOut(PieceNamedOut):
    design_id = serializers.UUIDField()
    place = PlaceNamedOut(allow_null=True)
    maker = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    since_at = serializers.DateTimeField()
    touched_at = serializers.DateTimeField()
    cover = serializers.CharField()
    clash_id = serializers.UUIDField(allow_null=True)
    is_damaged = serializers.BooleanField()
    missing_roles = serializers.ListField(child=serializers.CharField())


class PieceListOut(Shape):
    """Some pieces, and how far the journal had come when they were read."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    results = PieceBriefOut(many=True)
    next = serializers.CharField(allow_null=True, help_text="Address of the next page.")


class BodyNamedOut(Shape):
    id = serializers.UUIDField()
    code = serializers.CharField()
    name = serializers.CharField()


class PieceWholeOut(PieceBriefOut):
    use = serializers.ChoiceField(["food", "display"])
    grade = serializers.CharField()
    body = BodyNamedOut(allow_null=True)
    has_interrupted_bisque = serializers.BooleanField()
    look_again_at = serializers.DateTimeField(allow_null=True)
    cover_since_at = serializers.DateTimeField(allow_null=True)
    stands_on = serializers.ChoiceField(
        [*Move.On.values, ""], help_text="While it is wet, and somebody said so."
    )
    begun_at = serializers.DateTimeField()


class PartMouldOut(Shape):
    set_id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]  # a field of that name
    generation = serializers.IntegerField()


class PartBlockOut(Shape):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]  # a field of that name


class PartWholeOut(PartNamedOut):
    number = serializers.IntegerField()
    cover = serializers.CharField(
        help_text="its own, until the piece is covered as a whole; empty: as the piece"
    )
    pressed_at = serializers.DateTimeField(allow_null=True)
    out_at = serializers.DateTimeField(allow_null=True)
    joined_at = serializers.DateTimeField(allow_null=True)
    ended_at = serializers.DateTimeField(allow_null=True)
    look_again_at = serializers.DateTimeField(allow_null=True)
    mould = PartMouldOut(allow_null=True)
    slab_block = PartBlockOut(allow_null=True)
    replaces = serializers.UUIDField(allow_null=True)


class TellingOut(Shape):
    """One act of a story. What was taken back is there still, and says by whom and when."""

    id = serializers.UUIDField()
    verb = serializers.CharField()
    words = serializers.CharField()
    happened_at = serializers.DateTimeField()
    written_at = serializers.DateTimeField()
    is_late = serializers.BooleanField()
    member = PersonNamedOut()
    device = serializers.CharField()
    note = serializers.CharField(allow_null=True)
    photo_ids = serializers.ListField(child=serializers.UUIDField())
    corrects = serializers.UUIDField(allow_null=True)
    is_taken_back = serializers.BooleanField()
    taken_back_by = PersonNamedOut(allow_null=True)
    taken_back_at = serializers.DateTimeField(allow_null=True)
    left_out_by = PersonNamedOut(
        allow_null=True, help_text="Settled that it did not happen to this piece."
    )
    is_also_said = serializers.BooleanField()
    is_held = serializers.BooleanField(help_text="Waits for two stories to be settled.")


class VisitOut(SpotOut):
    at = serializers.DateTimeField()
    reason = serializers.CharField()
    occasion_id = serializers.UUIDField(allow_null=True)
    occasion_name = serializers.CharField()


class FiringCountsOut(Shape):
    bisque = serializers.IntegerField()
    glaze = serializers.IntegerField()


class PieceOut(Shape):
    """One piece with everything a screen of it shows."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    piece = PieceWholeOut()
    order = PromisedToOut(allow_null=True)
    partners = PartnerNamedOut(many=True, help_text="What it was matched with and stands with.")
    parts = PartWholeOut(many=True)
    nexts = SpotOut(many=True)
    backs = SpotOut(many=True)
    waits_for = serializers.CharField(allow_null=True)
    warnings = WordOut(many=True)
    cautions = WordOut(many=True, help_text="What to mind at the next step.")
    reclaim = serializers.CharField(help_text="Where its clay would go if it were scrapped now.")
    visits = VisitOut(many=True)
    firings = FiringCountsOut()
    photo_ids = serializers.ListField(
        child=serializers.UUIDField(), help_text="Of the piece, newest first."
    )
    story = TellingOut(many=True)
    history_count = serializers.IntegerField()


class PieceChangedOut(ActOut):
    piece = PieceWholeOut()


class PlannedOut(ActOut):
    pieces = PieceBriefOut(many=True)
    warnings = WordOut(many=True)


class StageEventRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    stage = serializers.CharField()
    state = serializers.CharField()
    reason = serializers.CharField()
    place_id = serializers.UUIDField(allow_null=True)
    occasion_id = serializers.UUIDField(allow_null=True)
    occasion_name = serializers.CharField()
    grade = serializers.CharField()
    cause = serializers.CharField()
    cause_is_guess = serializers.BooleanField()
    part_id = serializers.UUIDField(allow_null=True)
    reclaim = serializers.CharField()
    is_interrupted = serializers.BooleanField()
    glaze_batch_id = serializers.UUIDField(allow_null=True)


class CoverRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    state = serializers.CharField()
    part_id = serializers.UUIDField(allow_null=True)


class PieceWeighingRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    mass_g = serializers.FloatField()


class TouchCheckRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    feel = serializers.CharField()
    part_id = serializers.UUIDField(allow_null=True)


class MoveRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    place_id = serializers.UUIDField()
    stands_on = serializers.CharField()


class PartEventRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    kind = serializers.CharField()
    how = serializers.CharField()
    cause = serializers.CharField()


class PieceActOut(ActOut):
    """The answer to an act about one piece: the piece as it is now, and what to mind."""

    piece = PieceBriefOut()
    warnings = WordOut(many=True)
    cautions = WordOut(many=True)


class AskedOut(WordOut):
    """Something the act suggests but does not do."""

    mould_set_id = serializers.UUIDField(allow_null=True)


class PartActOut(PieceActOut):
    part = PartWholeOut()
    asks = AskedOut(many=True)


class PressingRowOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    casting_id = serializers.UUIDField()
    generation = serializers.IntegerField()
    count = serializers.IntegerField()
    slab_block_id = serializers.UUIDField(allow_null=True)
    mould_part_ids = serializers.ListField(child=serializers.UUIDField())
    member = PersonNamedOut()


class PressingAnswerOut(ActOut):
    pressing = PressingRowOut()
    press_since_dry = serializers.IntegerField()
    parts = PartWholeOut(many=True)
    pieces = PieceBriefOut(many=True)
    warnings = WordOut(many=True)


class BulkOut(ActOut):
    done_ids = serializers.ListField(child=serializers.UUIDField())
    left_out_ids = serializers.ListField(child=serializers.UUIDField())
    pieces = PieceBriefOut(many=True)
    cautions = WordOut(many=True)
