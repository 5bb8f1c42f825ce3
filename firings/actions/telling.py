"""What people are told of a kiln at once, without waiting for a sweep."""

from datetime import datetime, timedelta
from typing import Final

from firings.models import KilnReading, Load
from studio.actions import reminders
from studio.actions.reminders import About
from studio.models import Member, Studio
from studio.permissions import Role
from studio.queries import people

OVER_TOP: Final = "kiln_over_top"
OVER_TOP_FOR: Final = timedelta(hours=2)
"""A reading older than this is a matter of the log; common sense, no source."""


def over_top(load: Load, reading: KilnReading, *, at: datetime) -> None:
    """Tell whoever watches, the technicians and the owners of a reading over the kiln's top.

    Of one written down long afterwards nobody is told.
    """
    if at - reading.happened_at > OVER_TOP_FOR:
        return
    for person in minders(load):
        reminders.set_for(
            studio=load.studio,
            person=person,
            about=about_over_top(load, reading),
            due_at=reading.happened_at,
            at=at,
        )


def about_over_top(load: Load, reading: KilnReading) -> About:
    """Return what is said of a reading over the kiln's top."""
    return About(
        cause=OVER_TOP,
        grade="A",
        kind="load",
        object_id=load.pk,
        mark=load.number,
        title=(
            f"{load.kiln.number} reads {reading.reading_c:.0f} °C, over its top of "
            f"{load.kiln.top_c:.0f} °C."
        ),
        body="Go and look now; switch it off if you are in doubt. Natch is not a safety device.",
        link=f"/loads/{load.pk}",
    )


def minders(load: Load) -> list[Member]:
    """Return whoever watches the load, the technicians and the owners, each once. Two queries."""
    watcher = [load.watcher] if load.watcher is not None else []
    found = [*watcher, *technicians(load.studio), *owners(load.studio)]
    return list({person.pk: person for person in found}.values())


def technicians(studio: Studio) -> list[Member]:
    return people.with_role(studio, Role.TECHNICIAN)


def owners(studio: Studio) -> list[Member]:
    return people.with_role(studio, Role.OWNER)
