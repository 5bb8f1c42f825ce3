"""Links to an order: which there are, how often they were opened, and new ones."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.conf import settings
from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.serializers import ValidationError

from firings.actions import shares
from firings.models import Share
from firings.queries import shares as queries
from firings.queries.client_view import view_of
from pieces.api.bench_rows import shown_person
from pieces.api.commission_base import CommissionView
from pieces.domain.order_words import day
from pieces.models import Commission
from pieces.queries import frozen
from studio.api.views import Given, UnknownThing
from studio.domain.ids import uuid7
from studio.models import Act, FrozenCopy
from studio.permissions import P, Scoped
from studio.queries import journal
from studio.queries.frozen import digest_of

from .client_pages import html
from .link_shapes import (
    LinkActOut,
    LinkIn,
    LinkMadeOut,
    LinkPreviewIn,
    LinkPreviewOut,
    OrderLinkListOut,
    RevocationIn,
)

SHARE = Scoped(own=P.SHARE_OWN)
OPENINGS_SHOWN = 20


class LinkView(CommissionView):
    """An endpoint about links, for those whose order it is."""

    for_shared_phone = False

    def chosen(self, row: Commission, given: Given) -> dict[str, Any]:
        """Return what a link is to show. Raises a 400 for a photo of something else."""
        wanted = {photo.pk for photo in given["shown_photo_ids"]}
        known = set(queries.photos_of(row).filter(pk__in=wanted).values_list("pk", flat=True))
        if wanted - known:
            detail = ErrorDetail("That photo is not of this order.", "not-of-this-order")
            raise ValidationError({"shown_photo_ids": [detail]})
        return {
            "kind": given["kind"],
            "shows": given["shows"],
            "photo_ids": [photo.pk for photo in given["shown_photo_ids"]],
            "people": given["people"],
            "expires_on": given["expires_on"],
        }


class LinkList(LinkView):
    needs = {"GET": SHARE, "POST": SHARE}

    @extend_schema(operation_id="links_list", responses=OrderLinkListOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """List the links of an order, the newest first, with when they were opened."""
        row = self.own_commission(commission_id)
        photos = queries.photos_of(row)
        return Response(
            {
                "at": timezone.now(),
                "journal_seq": journal.highest_seq(self.studio),
                "results": [shown_link(link) for link in queries.links_of(row)],
                "photos": [{"id": one.pk, "happened_at": one.happened_at} for one in photos],
            }
        )

    @extend_schema(request=LinkIn, responses={201: LinkMadeOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Make a link; its address is answered this once. Nothing is sent to anybody."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            share, key = shares.make(act=act, commission=row, **self.chosen(row, given))
            address = f"{settings.NATCH_ADDRESS}/c/{key}"
            return {
                "link": shown_link(queries.link(share)),
                "address": address,
                "message": message_of(share, address, given["expires_on"]),
            }

        return self.unkept(LinkIn, work)


class LinkPreview(LinkView):
    needs = {"POST": SHARE}

    @extend_schema(
        operation_id="links_preview", request=LinkPreviewIn, responses={200: LinkPreviewOut}
    )
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Show what a link would show, exactly as its holder would see it; nothing is made."""
        row, at = self.own_commission(commission_id), timezone.now()
        chosen = self.chosen(row, self.given(LinkPreviewIn))
        expires_on = chosen.pop("expires_on")
        plain = {name: chosen[name] for name in ("kind", "shows", "photo_ids")}
        shares.check(at, row, expires_on, **plain)
        share = Share(
            id=uuid7(),
            studio=self.studio,
            commission=row,
            frozen=self._copy(row) if chosen["kind"] == Share.Kind.VISITOR else None,
            expires_at=shares.ends_at(row, expires_on),
            **{**chosen, "shows": shares.in_order(chosen["shows"])},
        )
        base = f"/api/v1/studios/{self.studio.slug}"
        return Response(
            {"html": html(share, base="", photo_base=base), "shown": view_of(share, at=at)}
        )

    def _copy(self, row: Commission) -> FrozenCopy:
        kept = frozen.latest_copy(row)
        if kept is not None:
            return kept
        at = timezone.now()
        body = frozen.document(row, at=at).encode()
        seq = journal.highest_seq(self.studio)
        return FrozenCopy(body=body, sha256=digest_of(body), known_seq=seq, happened_at=at)


class LinkRevocationList(LinkView):
    needs = {"POST": SHARE}

    @extend_schema(request=RevocationIn, responses={201: LinkActOut})
    def post(self, request: Request, link_id: UUID) -> Response:
        """Take a link back: from now on it opens for nobody."""
        row = Share.objects.of(self.studio).filter(pk=link_id).first()
        if not isinstance(row, Share):
            raise UnknownThing("No such link here.")
        self.own_commission(row.commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            return {"link": shown_link(queries.link(shares.revoke(act=act, share=row)))}

        return self.once(RevocationIn, work)


def shown_link(now: queries.LinkNow) -> dict[str, Any]:
    """Return a link as it is shown to those who may make some; its key is known to nobody."""
    row = now.share
    return {
        "id": row.pk,
        "kind": row.kind,
        "shows": row.shows,
        "shown_photo_ids": row.photo_ids,
        "people": row.people,
        "made_at": row.made_at,
        "made_by": shown_person(row.made_by),
        "expires_at": row.expires_at,
        "revoked_at": row.revoked_at,
        "state": now.state(timezone.now()),
        "opened_times": len(now.openings),
        "opened_at": now.openings[:OPENINGS_SHOWN],
    }


def message_of(share: Share, address: str, expires_on: Any) -> str:
    """Return a text that the maker may send; Natch sends nothing to a client."""
    number = share.commission.number
    return (
        f"Here you can see how {number} is coming on: {address}\n"
        f"The page opens until {day(expires_on)}. Please keep the link to yourself."
    )
