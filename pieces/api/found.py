"""Ware without a name: found, asked about, claimed, given back or let go."""

from collections import Counter
from collections.abc import Mapping
from datetime import date
from typing import Any
from uuid import UUID
from zoneinfo import ZoneInfo

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import found as actions
from pieces.domain.order_words import day
from pieces.models import Claim, FoundPiece
from pieces.queries import found as queries
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView, UnknownThing
from studio.models import Act
from studio.permissions import NotPermitted, P
from studio.queries import people, photos

from .base import wrong
from .bench_rows import shown_person, shown_place
from .found_shapes import (
    AskingIn,
    ClaimFilterIn,
    ClaimIn,
    ClaimOut,
    EndingIn,
    FoundActOut,
    FoundFilterIn,
    FoundIn,
    FoundOut,
    FoundWholeOut,
    looks_words,
)

THINGS = (
    "what",
    "mark_seen",
    "place",
    "piece",
    "x_mm",
    "y_mm",
    "height_mm",
    "body",
    "looks",
)


class FoundView(StudioView):
    """An endpoint about found ware."""

    @property
    def today(self) -> date:
        """Return the day it is in the studio."""
        return timezone.now().astimezone(ZoneInfo(self.studio.zone)).date()

    @property
    def may_settle(self) -> bool:
        """Say whether the member decides whose a thing is, and when it goes: the owner does."""
        return P.MERGE_PIECES in self.grants

    def thing(self, found_id: UUID) -> FoundPiece:
        """Return something that was found. Raises `UnknownThing`."""
        row = queries.all_of(self.studio).filter(pk=found_id).first()
        if row is None:
            raise UnknownThing("No such found thing here.")
        return row

    def whole(self, found_id: UUID) -> dict[str, Any]:
        """Return a found thing with whom to ask and who says that it is theirs."""
        row = self.thing(found_id)
        claims = list(queries.claims_of([row]))
        shown_on = photos.ids_by_subject(self.studio, [row.pk])
        is_open = row.state == FoundPiece.State.OPEN
        is_past = self.today > row.notice_date
        return {
            **shown_found(row, len(claims), self.today, shown_on[row.pk]),
            "candidates": [
                {
                    "member": shown_person(one.member),
                    "piece": {
                        "id": one.piece.pk,
                        "mark": one.piece.shown_mark,
                        "noun": one.piece.design.noun,
                        "state_words": looks_words(one.piece.state),
                    },
                    "why": list(one.why),
                }
                for one in (queries.likely_owners_of(row) if is_open else ())
            ],
            "asked": sorted(queries.asked_of(row), key=str),
            "claims": [shown_claim(claim) for claim in claims],
            "may": {
                "give_back": is_open and bool(claims) and (len(claims) == 1 or self.may_settle),
                "dispose": is_open and is_past and self.may_settle,
            },
            "notice_words": notice_words(row, is_past=is_past),
        }


class FoundList(FoundView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.MOVE_PLACE}

    @extend_schema(operation_id="found_list", parameters=[FoundFilterIn], responses=paged(FoundOut))
    def get(self, request: Request) -> Response:
        """List what was found, newest first."""
        wanted = self.given(FoundFilterIn, request.query_params)
        rows = queries.all_of(self.studio, wanted.get("state"))
        page = keyset(rows, request, fields=("-found_at", "-id"))
        claims = Counter(claim.found_id for claim in queries.claims_of(page.rows))
        shown_on = photos.ids_by_subject(self.studio, [row.pk for row in page.rows])
        shown = [
            shown_found(row, claims[row.pk], self.today, shown_on[row.pk]) for row in page.rows
        ]
        return Response({"results": shown, "next": page.next})

    @extend_schema(request=FoundIn, responses={201: FoundActOut})
    def post(self, request: Request) -> Response:
        """Keep that something was found; it cannot go on a load until it is given back."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            piece = given["piece"]
            if piece is not None and piece.maker_id is not None:
                raise wrong("piece_id", f"{piece.shown_mark} has a maker: tell where it stands.")
            made = actions.find(act=act, given={name: given[name] for name in THINGS})
            return {"found": self.whole(made.pk)}

        return self.once(FoundIn, work)


class FoundOne(FoundView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="found_one", responses=FoundWholeOut)
    def get(self, request: Request, found_id: UUID) -> Response:
        """Tell one found thing: up to three people to ask, and who claims it."""
        return Response(self.whole(found_id))


class AskingList(FoundView):
    needs = {"POST": P.MOVE_PLACE}

    @extend_schema(request=AskingIn, responses={201: FoundActOut})
    def post(self, request: Request, found_id: UUID) -> Response:
        """Ask people whether it is theirs."""
        row = self.thing(found_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            wanted = set(given["member_ids"])
            asked = list(people.members(self.studio).filter(pk__in=wanted))
            if len(asked) < len(wanted):
                raise wrong("member_ids", "One of these people is not in this studio.")
            actions.ask(act=act, found=row, whom=asked)
            return {"found": self.whole(row.pk)}

        return self.once(AskingIn, work)


class ClaimList(FoundView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.MOVE_PLACE}

    @extend_schema(
        operation_id="claims_list", parameters=[ClaimFilterIn], responses=paged(ClaimOut)
    )
    def get(self, request: Request) -> Response:
        """List who says that found things are theirs."""
        wanted = self.given(ClaimFilterIn, request.query_params).get("found")
        rows = Claim.objects.standing().filter(studio=self.studio)
        rows = rows.select_related("member", "piece")
        rows = rows if wanted is None else rows.filter(found=wanted)
        page = keyset(rows, request, fields=("-happened_at", "-id"))
        return Response({"results": [shown_claim(row) for row in page.rows], "next": page.next})

    @extend_schema(request=ClaimIn, responses={201: FoundActOut})
    def post(self, request: Request) -> Response:
        """Say that a found thing is mine; where two say so the owner hears of it."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            piece = given["piece"]
            if piece is not None and not piece.belongs_to(self.member):
                raise wrong("piece_id", f"{piece.shown_mark} is somebody else's.")
            actions.claim(act=act, found=given["found"], piece=piece)
            return {"found": self.whole(given["found"].pk)}

        return self.once(ClaimIn, work)


class EndingList(FoundView):
    needs = {"POST": P.MOVE_PLACE}

    @extend_schema(request=EndingIn, responses={201: FoundActOut})
    def post(self, request: Request, found_id: UUID) -> Response:
        """Give it back to who claims it; or, as the owner and after its notice, let it go."""
        row = self.thing(found_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            if given["kind"] == "disposed":
                if not self.may_settle:
                    raise NotPermitted("Only the owner lets it go.", needed=str(P.MERGE_PIECES))
                actions.dispose(act=act, found=row)
            else:
                claim = queries.claims_of([row]).filter(pk=given["claim_id"]).first()
                if given["claim_id"] is not None and claim is None:
                    raise wrong("claim_id", "That claim is not about this.")
                actions.give_back(act=act, found=row, claim=claim, may_settle=self.may_settle)
            return {"found": self.whole(row.pk)}

        return self.once(EndingIn, work)


def shown_found(row: FoundPiece, claims: int, today: date, photo_ids: list[UUID]) -> dict[str, Any]:
    """Return a found thing as a row of a list."""
    body, piece = row.body, row.piece
    return {
        "id": row.pk,
        "what": row.what,
        "mark_seen": row.mark_seen,
        "place": shown_place(row.place),
        "x_mm": row.x_mm,
        "y_mm": row.y_mm,
        "height_mm": row.height_mm,
        "body": {"id": body.pk, "code": body.code, "name": body.name} if body else None,
        "looks": row.looks,
        "looks_words": looks_words(row.looks),
        "found_at": row.found_at,
        "found_by": shown_person(row.found_by),
        "notice_date": row.notice_date,
        "is_notice_past": today > row.notice_date,
        "state": row.state,
        "ended_at": row.ended_at,
        "returned_to": shown_person(row.returned_to),
        "piece": {"id": piece.pk, "mark": piece.shown_mark} if piece else None,
        "claims_count": claims,
        "photo_ids": photo_ids,
    }


def shown_claim(claim: Claim) -> dict[str, Any]:
    """Return who says that a found thing is theirs."""
    piece = claim.piece
    return {
        "id": claim.pk,
        "found_id": claim.found_id,
        "member": shown_person(claim.member),
        "piece": {"id": piece.pk, "mark": piece.shown_mark} if piece else None,
        "happened_at": claim.happened_at,
    }


def notice_words(row: FoundPiece, *, is_past: bool) -> str:
    """Return how long it is kept, in words."""
    if row.state == FoundPiece.State.RETURNED:
        return "given back"
    if row.state == FoundPiece.State.DISPOSED:
        return "let go"
    if is_past:
        return f"kept until {day(row.notice_date)}: the owner may let it go"
    return f"kept until {day(row.notice_date)}"
