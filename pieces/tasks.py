"""What the clock and the acts set off for pieces; each may be delivered twice without harm."""

from __future__ import annotations

import logging
from threading import Timer
from typing import Any, Final
from uuid import UUID

from celery import shared_task
from celery.signals import worker_ready
from django.utils import timezone
from kombu.exceptions import OperationalError

from pieces.actions import (
    forecasts,
    planning,
    reminding,
    reminding_approvals,
    reminding_covers,
    reminding_forgotten,
)
from pieces.domain.drying import engine
from studio.models import Studio

logger = logging.getLogger("natch.pieces")

KERNEL_AFTER_S: Final = 15.0  # by then the web answers, which is what people wait for


@worker_ready.connect
def ask_for_kernel(sender: Any, **_: object) -> None:
    """Have the worker that reckons compile its loop in the background; numpy reckons meanwhile."""
    if "work" in sender.app.amqp.queues.consume_from:
        later = Timer(KERNEL_AFTER_S, compile_kernel)
        later.daemon = True
        later.start()


def compile_kernel() -> None:
    """March in the compiled loop from now on; in numpy as before where it cannot be had."""
    try:
        engine.use(engine.compiled())
    except Exception:  # whatever numba or the machine lacks, numpy gives the same answers
        logger.warning("The drying kernel cannot be had; numpy reckons, slower.", exc_info=True)


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
        reminding_covers.tell_of_covers(studio=studio, at=timezone.now())


def ask_for_forecasts(studio_id: UUID) -> None:
    """Have the worker reckon soon; when the queue does not answer, the sweep does it instead."""
    try:
        refresh_forecasts.delay(studio_id=str(studio_id))
    except OperationalError:
        logger.warning("The queue does not answer; the next sweep reckons studio %s.", studio_id)
