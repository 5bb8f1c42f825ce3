"""Founding a studio: the tenant, its journal, its settings and its clockwork."""

from datetime import datetime
from typing import Final
from uuid import UUID
from zoneinfo import available_timezones

from django.db import transaction

from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Device, JournalHead, Member, Studio, StudioSettings
from studio.permissions import Role

from . import journal
from .people import Person, enter

CLOCKWORK_INITIALS: Final = "··"


class StudioTaken(Conflict):
    code = "studio-taken"
    title = "There is a studio at that address already."


class UnknownZone(Unworkable):
    code = "unknown-zone"
    title = "That time zone is not known."


@transaction.atomic
def found(
    *, slug: str, name: str, zone: str, owner: Person, at: datetime, studio_id: UUID | None = None
) -> Studio:
    """Make a studio with its first owner, and note it as the first entry of its journal.

    Raises `StudioTaken` and `UnknownZone`.
    """
    if zone not in available_timezones():
        raise UnknownZone(f"{zone} is not in the time zone database.", zone=zone)
    if Studio.objects.filter(slug=slug).exists():
        raise StudioTaken("Choose another address.", slug=slug)
    studio = Studio.objects.create(id=studio_id or uuid7(), slug=slug, name=name, zone=zone)
    JournalHead.objects.create(studio=studio)
    StudioSettings.objects.create(studio=studio)
    device = _wind_up(studio, at)
    first = enter(studio=studio, person=owner, roles=[Role.OWNER])
    act = Act(id=uuid7(), studio=studio, member=first, device=device, happened_at=at, written_at=at)
    subjects = [("studio", studio.pk), ("member", first.pk)]
    journal.write(act=act, verb="founded", subjects=subjects)
    return studio


def _wind_up(studio: Studio, at: datetime) -> Device:
    """Make the clockwork: the member without a person for whom sweeps write, and its device."""
    member = Member.objects.create(
        studio=studio,
        first_name="Natch",
        full_name="Natch's own clockwork",
        initials=CLOCKWORK_INITIALS,
        wants_email=False,
    )
    return Device.objects.create(studio=studio, member=member, name="clockwork", added_at=at)
