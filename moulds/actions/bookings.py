"""Bookings: somebody means to use a set for a while; first come, first served."""

from datetime import datetime

from django.db import transaction

from moulds.models import Booking, MouldSet
from studio.actions import journal
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Member


class MouldTaken(Conflict):
    code = "mould-taken"
    title = "Somebody has the mould then."


class BookingBackwards(Unworkable):
    code = "booking-ends-before-it-begins"
    title = "A booking ends after it begins."


class BookingOver(Conflict):
    code = "booking-given-up"
    title = "That booking was given up already."


@transaction.atomic
def book(
    *,
    act: Act,
    mould_set: MouldSet,
    from_at: datetime,
    until_at: datetime,
    member: Member | None = None,
) -> Booking:
    """Book a set for the member (the writer where None).

    Raises `MouldTaken`, naming who has it, and `BookingBackwards`.
    """
    if until_at <= from_at:
        error = {
            "pointer": "#/until_at",
            "code": BookingBackwards.code,
            "detail": BookingBackwards.title,
        }
        raise BookingBackwards("Look at the two times again.", errors=[error])
    mould_set = MouldSet.objects.select_for_update().get(pk=mould_set.pk)
    other = (
        Booking.objects.filter(
            mould_set=mould_set, given_up_at=None, from_at__lt=until_at, until_at__gt=from_at
        )
        .select_related("member")
        .order_by("from_at")
        .first()
    )
    if other is not None:
        raise MouldTaken(
            f"{other.member.first_name} has {mould_set.label} then.",
            booking=str(other.pk),
            member=str(other.member_id),
            first_name=other.member.first_name,
            from_at=other.from_at.isoformat(),
            until_at=other.until_at.isoformat(),
        )
    member = member or act.member
    journal.write(
        act=act,
        verb="booked_mould",
        subjects=[("mould_set", mould_set.pk), ("member", member.pk)],
        facts={"from_at": from_at, "until_at": until_at},
    )
    return Booking.objects.create(
        id=act.id,
        studio=act.studio,
        mould_set=mould_set,
        member=member,
        from_at=from_at,
        until_at=until_at,
    )


@transaction.atomic
def give_up(*, act: Act, booking: Booking) -> Booking:
    """Free a set that was booked. Raises `BookingOver`."""
    booking = Booking.objects.select_for_update().get(pk=booking.pk)
    if booking.given_up_at is not None:
        raise BookingOver("It is free.", booking=str(booking.pk))
    subjects = [("mould_set", booking.mould_set_id), ("member", booking.member_id)]
    facts = {"booking": booking.pk}
    journal.write(act=act, verb="gave_up_mould", subjects=subjects, facts=facts)
    booking.given_up_at = act.happened_at
    booking.save(update_fields=["given_up_at"])
    return booking
