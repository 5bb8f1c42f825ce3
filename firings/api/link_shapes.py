"""The forms of links, for the schema and for what is read."""

from typing import Any

from rest_framework import serializers

from firings.domain.client_words import ITEMS
from firings.models import Share
from pieces.api.bench_shapes import PersonNamedOut
from pieces.api.commission_given import DayField
from studio.api.envelopes import ActIn, ActOut
from studio.api.related import RowField
from studio.models import Photo

Shape = serializers.Serializer[Any]
PHOTOS_MOST = 24


class LinkFields(Shape):
    """What a link shows, of whom by what name, and its last day."""

    kind = serializers.ChoiceField(Share.Kind.choices, default=Share.Kind.CLIENT)
    shows = serializers.ListField(
        child=serializers.ChoiceField(ITEMS), default=list, max_length=len(ITEMS)
    )
    shown_photo_ids = serializers.ListField(
        child=RowField(Photo), default=list, max_length=PHOTOS_MOST
    )
    people = serializers.ChoiceField(Share.People.choices, default=Share.People.INITIALS)
    expires_on = DayField()


class LinkIn(LinkFields, ActIn):
    """A link to make; its address is answered once and kept nowhere."""


class LinkPreviewIn(LinkFields):
    """A link that is not made: what it would show."""


class OrderLinkOut(Shape):
    id = serializers.UUIDField()
    kind = serializers.ChoiceField(Share.Kind.choices)
    shows = serializers.ListField(child=serializers.CharField())
    shown_photo_ids = serializers.ListField(child=serializers.UUIDField())
    people = serializers.ChoiceField(Share.People.choices)
    made_at = serializers.DateTimeField()
    made_by = PersonNamedOut()
    expires_at = serializers.DateTimeField()
    revoked_at = serializers.DateTimeField(allow_null=True)
    state = serializers.ChoiceField(["live", "expired", "revoked"])
    opened_times = serializers.IntegerField(help_text="Quarters of an hour in which it was opened.")
    opened_at = serializers.ListField(child=serializers.DateTimeField())


class SharedPhotoOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()


class OrderLinkListOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    results = OrderLinkOut(many=True)
    photos = SharedPhotoOut(many=True, help_text="The photos of the order that may be chosen.")


class LinkActOut(ActOut):
    link = OrderLinkOut()


class LinkMadeOut(LinkActOut):
    """The new link with its address, which is shown this once."""

    address = serializers.CharField()
    message = serializers.CharField(help_text="A text to send by oneself, the address in it.")


class LinkPreviewOut(Shape):
    html = serializers.CharField(help_text="The page as its holder would see it.")
    shown = serializers.DictField(help_text="All that is in it.")


class RevocationIn(ActIn):
    """A link is taken back."""
