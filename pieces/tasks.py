"""What the clock and the acts set off for pieces; each may be delivered twice without harm."""

from __future__ import annotations

import logging
from uuid import UUID

from celery import shared_task
from django.utils import timezone
from kombu.exceptions import OperationalError

from pieces.actions import forecasts, planning, reminding, reminding_approvals, reminding_forgotten
from studio.models import Studio

logger = logging.getLogger("natch.pieces")


@shared_task
def refresh_forecasts(*, studio_id: str, **_: object) -> None:
    """Reckon what is out of date in one studio."""
    studio = Studio.objects.filter(pk=UUID(studio_id)).first()
    if studio is not None:
        forecasts.refresh(studio=studio, at=timezone.now())


@shared_task
def refresh_all_forecasts(**_: object) -> None:
    """Sweep: every studio, each in transactions of its own."""
    for studio in Studio.objects.all():
        forecasts.refresh(studio=studio, at=timezone.now())


@shared_task
def move_on_waiting_pieces(**_: object) -> None:
    """Sweep: pieces that waited for a master or a mould which is there now."""
    for studio in Studio.objects.all():
        planning.become_possible(studio=studio, at=timezone.now())


@shared_task
def set_reminders(**_: object) -> None:
    """Sweep: what the windows ask, what nobody looked at under its plastic, what clients owe."""
    for studio in Studio.objects.all():
        reminding.tell_makers(studio=studio, at=timezone.now())
        reminding_forgotten.tell_of_forgotten(studio=studio, at=timezone.now())
        reminding_approvals.tell_of_approvals(studio=studio, at=timezone.now())


def ask_for_forecasts(studio_id: UUID) -> None:
    """Have the worker reckon soon; when the queue does not answer, the sweep does it instead."""
    try:
        refresh_forecasts.delay(studio_id=str(studio_id))
    except OperationalError:
        logger.warning("The queue does not answer; the next sweep reckons studio %s.", studio_id)
