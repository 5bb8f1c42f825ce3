"""The forms of answers about ware that waits and about what fits, for the schema."""

from rest_framework import serializers

from firings.models import FiringTicket
from pieces.api.bench_shapes import PersonNamedOut, PieceNamedOut, PlaceNamedOut
from pieces.api.shapes import PieceBriefOut, Shape, WordOut
from pieces.domain.refire_words import wrong_and_mended
from studio.api.envelopes import ActOut

from .shapes import LoadBriefOut, SizeOut

VERDICTS = ["fits", "doubtful", "does_not_fit"]


class DryEvidenceOut(Shape):
    word = serializers.ChoiceField(["check", "weighings", "none"])
    ok = serializers.BooleanField()
    detail = serializers.CharField()


class OrderNamedOut(Shape):
    id = serializers.UUIDField()
    number = serializers.CharField()


class TicketBriefOut(Shape):
    cone = serializers.CharField()
    words = serializers.CharField()
    why = serializers.CharField(help_text="What was wrong, and what was mended since.")


class QueueRowOut(Shape):
    """A piece that waits, and the rule's sentence on why it stands there."""

    piece = PieceNamedOut()
    maker = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    place = PlaceNamedOut(allow_null=True)
    due_date = serializers.DateField(allow_null=True)
    commission = OrderNamedOut(allow_null=True)
    waiting_since = serializers.DateTimeField()
    waits_days = serializers.IntegerField()
    litres = serializers.FloatField(allow_null=True)
    size = SizeOut(allow_null=True)
    dry_evidence = DryEvidenceOut()
    thickest_mm = serializers.FloatField(allow_null=True)
    warnings = WordOut(many=True)
    reason = serializers.CharField()
    is_put_first = serializers.BooleanField(help_text="Somebody set the rule aside for it.")
    ticket = TicketBriefOut(allow_null=True)


class PutOffOut(Shape):
    piece_id = serializers.UUIDField()
    reason = serializers.CharField()


class LayerOut(Shape):
    """Whose ware gets a layer, in the order of the rule; the others with why not."""

    room_l = serializers.FloatField()
    taken = serializers.ListField(child=serializers.UUIDField())
    put_off = PutOffOut(many=True)
    left_l = serializers.FloatField()
    offer = serializers.CharField(allow_blank=True)


class QueueGroupOut(Shape):
    kind = serializers.ChoiceField(["bisque", "glaze"])
    cone = serializers.CharField(help_text="Empty where nobody has said.")
    litres = serializers.FloatField()
    oldest_days = serializers.IntegerField()
    rows = QueueRowOut(many=True)
    layer = LayerOut(allow_null=True, help_text="Null unless room was asked about.")


class QueueOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    rule = serializers.CharField()
    groups = QueueGroupOut(many=True)


class CouldGoRowOut(QueueRowOut):
    fits = serializers.ChoiceField([*VERDICTS, "unknown"])
    refused = WordOut(allow_null=True)


class CouldGoOut(Shape):
    """Ware that waits for this kind of firing, in the order of the rule."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    rule = serializers.CharField()
    rows = CouldGoRowOut(many=True)


class FitReasonOut(Shape):
    code = serializers.CharField()
    detail = serializers.CharField()
    placement_id = serializers.UUIDField(allow_null=True)
    piece_id = serializers.UUIDField(allow_null=True)
    level = serializers.IntegerField(allow_null=True)


class ShelfShapeOut(Shape):
    shape = serializers.ChoiceField(["rect", "round"])
    width_mm = serializers.FloatField()
    depth_mm = serializers.FloatField()
    thickness_mm = serializers.FloatField()


class FitItemOut(Shape):
    placement_id = serializers.UUIDField(allow_null=True)
    piece_id = serializers.UUIDField(allow_null=True)
    mark = serializers.CharField()
    x_mm = serializers.FloatField(help_text="Its middle, from the middle of the shelf.")
    y_mm = serializers.FloatField()
    rotation_deg = serializers.FloatField()
    width_mm = serializers.FloatField(help_text="As it stands, turned.")
    depth_mm = serializers.FloatField()
    is_round = serializers.BooleanField()


class PostSpotOut(Shape):
    x_mm = serializers.FloatField()
    y_mm = serializers.FloatField()


class RoomSpotOut(Shape):
    x_mm = serializers.FloatField(help_text="Its middle, from the middle of the shelf.")
    y_mm = serializers.FloatField()
    width_mm = serializers.FloatField()
    depth_mm = serializers.FloatField()
    is_round = serializers.BooleanField()


class RoomLeftOut(Shape):
    words = serializers.CharField()
    spots = RoomSpotOut(
        many=True, help_text="Where the first kind of ware named was counted; may be empty."
    )


class FitLevelOut(Shape):
    level = serializers.IntegerField(help_text="1 is the lowest.")
    shelf = ShelfShapeOut()
    floor_mm = serializers.FloatField()
    height_mm = serializers.FloatField()
    room_left = RoomLeftOut()
    items = FitItemOut(many=True)
    posts = PostSpotOut(many=True)


class TallestOut(Shape):
    mark = serializers.CharField()
    height_mm = serializers.FloatField()


class FitOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    verdict = serializers.ChoiceField(VERDICTS)
    sentence = serializers.CharField()
    reasons = FitReasonOut(many=True)
    levels = FitLevelOut(many=True)
    left_out = serializers.ListField(child=serializers.UUIDField())
    used_height_mm = serializers.FloatField()
    spare_ware_mm = serializers.FloatField(
        allow_null=True, help_text="How high ware on one more shelf may be; null for no shelf."
    )
    layers_left = serializers.IntegerField(help_text="Further layers of ware as high as here.")
    tallest = TallestOut(allow_null=True)


class FiringTicketOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    kind = serializers.CharField()
    cone = serializers.CharField()
    words = serializers.CharField()
    fault = serializers.ChoiceField(FiringTicket.Fault.choices, allow_blank=True)
    mended = serializers.ListField(child=serializers.ChoiceField(FiringTicket.Mended.choices))
    why = serializers.SerializerMethodField(help_text="What was wrong, and what was mended since.")

    def get_why(self, row: FiringTicket) -> str:
        return wrong_and_mended(row.fault, row.mended)


class TicketActOut(ActOut):
    ticket = FiringTicketOut()
    warnings = WordOut(many=True)


class QueueTurnOut(Shape):
    id = serializers.UUIDField()
    kind = serializers.CharField()
    reason = serializers.CharField()


class TurnActOut(ActOut):
    turn = QueueTurnOut()


class RetractionOut(ActOut):
    corrects = serializers.UUIDField()
    pieces = PieceBriefOut(many=True)
    loads = LoadBriefOut(many=True)
