"""What is recorded of a set in use: weighings, looks, bookings, and what they come to."""

from collections.abc import Mapping
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.actions import bookings, parts, weighings
from moulds.models import Booking, Casting, MouldPart, MouldSet
from moulds.queries import castings as casting_queries
from moulds.queries import readiness
from moulds.queries import sets as queries
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.domain.refusals import Conflict
from studio.models import Act
from studio.permissions import P, Scoped
from studio.queries.journal import highest_seq

from .given import BookingEndIn, BookingIn, InspectionIn, MouldWeighingIn
from .sets import SetView
from .shapes import (
    BookingOut,
    DrynessOut,
    InspectionRowOut,
    MouldWeighingOut,
    MouldWeighingRowOut,
    ReadinessOut,
)

NEWEST_FIRST = ("-happened_at", "-id")


class NothingPoured(Conflict):
    code = "nothing-poured"
    title = "The set has no casting in use."


class RecordView(SetView):
    """What the endpoints about a casting in use share."""

    def casting(self, row: MouldSet) -> Casting:
        """Return the casting in use. Raises `NothingPoured`."""
        casting = casting_queries.in_use(row)
        if casting is None:
            raise NothingPoured(f"Pour {row.label} first.", mould_set=str(row.pk))
        return casting


class MouldWeighingList(RecordView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.PRESS_OWN}

    @extend_schema(operation_id="mould_weighings_list", responses=paged(MouldWeighingRowOut))
    def get(self, request: Request, set_id: UUID) -> Response:
        """List the weighings of a set, the newest first."""
        rows = casting_queries.weighings(self.find(MouldSet, id=set_id))
        return keyset(rows, request, fields=NEWEST_FIRST).answer(MouldWeighingRowOut)

    @extend_schema(request=MouldWeighingIn, responses={201: MouldWeighingOut})
    def post(self, request: Request, set_id: UUID) -> Response:
        """Weigh the casting in use, without clay; a weight that cannot be is refused (422)."""
        row = self.find(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            scale = weighings.weigh(
                act=act,
                casting=self.casting(row),
                mass_g=given["mass_g"],
                is_dry=given["is_dry"],
            )
            return {
                "weighing": MouldWeighingRowOut(scale.weighing).data,
                "dryness": DrynessOut(self.now(set_id).dryness).data,
            }

        return self.once(MouldWeighingIn, work)


class InspectionList(RecordView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.PRESS_OWN}

    @extend_schema(operation_id="mould_inspections_list", responses=paged(InspectionRowOut))
    def get(self, request: Request, set_id: UUID) -> Response:
        """List the looks at the detail of a set's mould parts, the newest first."""
        rows = casting_queries.inspections(self.find(MouldSet, id=set_id))
        return keyset(rows, request, fields=NEWEST_FIRST).answer(InspectionRowOut)

    @extend_schema(request=InspectionIn, responses={201: InspectionRowOut})
    def post(self, request: Request, set_id: UUID) -> Response:
        """Say how crisp the detail of a mould part is."""
        row = self.find(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            part = self.find(MouldPart, id=given["part_id"], casting__mould_set=row)
            inspection = parts.inspect(act=act, mould_part=part, finding=given["finding"])
            return dict(InspectionRowOut(inspection).data)

        return self.once(InspectionIn, work)


class BookingList(RecordView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.BOOK_MOULDS}

    @extend_schema(
        operation_id="mould_bookings_list",
        parameters=[OpenApiParameter("all", bool, description="Those that are over, too.")],
        responses=paged(BookingOut),
    )
    def get(self, request: Request, set_id: UUID) -> Response:
        """List the bookings of a set that run or are to come."""
        rows = queries.bookings(self.find(MouldSet, id=set_id))
        if request.query_params.get("all") not in ("true", "1"):
            rows = rows.filter(until_at__gt=timezone.now())
        return keyset(rows, request, fields=("from_at", "id")).answer(BookingOut)

    @extend_schema(request=BookingIn, responses={201: BookingOut})
    def post(self, request: Request, set_id: UUID) -> Response:
        """Book a set; where somebody has it then, 409 says who."""
        row = self.find(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            booking = bookings.book(
                act=act, mould_set=row, from_at=given["from_at"], until_at=given["until_at"]
            )
            return dict(BookingOut(booking).data)

        return self.once(BookingIn, work)


class BookingEndList(RecordView):
    needs = {"POST": Scoped(own=P.BOOK_MOULDS)}

    @extend_schema(request=BookingEndIn, responses={201: BookingOut})
    def post(self, request: Request, set_id: UUID, booking_id: UUID) -> Response:
        """Give a booking up."""
        booking = self.own(Booking, id=booking_id, mould_set=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            return dict(BookingOut(bookings.give_up(act=act, booking=booking)).data)

        return self.once(BookingEndIn, work)


class ReadinessOne(RecordView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(responses=ReadinessOut)
    def get(self, request: Request, set_id: UUID) -> Response:
        """Say whether a set may be pressed, since what, and when it will be dry enough."""
        row = self.find(MouldSet, id=set_id)
        at = timezone.now()
        found = readiness.readiness(row, at=at)
        answer = {
            "at": at,
            "journal_seq": highest_seq(self.studio),
            "set_id": row.pk,
            "casting_id": found.now.casting.pk if found.now.casting else None,
            "word": found.dryness.word,
            "dryness": found.dryness,
            "usable_at": found.usable_at,
            "dry_at": found.dry_at,
            "air": found.air,
            "wear": found.wear,
            "expected_pressings_left": found.expected_pressings_left,
            "advice": found.advice,
            "cautions": found.cautions,
        }
        return Response(ReadinessOut(answer).data)
