"""What the clock sets off in this app; every sweep may run twice without harm."""

import logging

from celery import current_app, shared_task
from django.utils import timezone
from kombu.exceptions import OperationalError

from studio.actions import deliveries, keeping, leaving, replays, runs

logger = logging.getLogger("natch.studio")

# A sweep every minute has this long to be picked up before the next one is due.
OFFER_EXPIRES_S = 55


@shared_task
def send_due_reminders(**_: object) -> None:
    """Tell everybody what is due."""
    deliveries.send_due(at=timezone.now(), clock=timezone.now)


@shared_task
def offer_stale_runs(**_: object) -> None:
    """Offer runs again whose message or worker was lost."""
    for task, run_id in runs.to_offer(at=timezone.now()):
        offered = current_app.tasks.get(task)
        if offered is not None:
            offered.apply_async(kwargs={"run_id": str(run_id)}, expires=OFFER_EXPIRES_S)


@shared_task
def prune_replays(**_: object) -> None:
    """Forget the answers to acts of more than 30 days ago."""
    replays.prune(at=timezone.now())


@shared_task
def end_memberships(**_: object) -> None:
    """End the membership of everybody whose last day has come."""
    leaving.end_due(at=timezone.now())


@shared_task
def keep_backups(**_: object) -> None:
    """Back up every night, try a backup every month, and say so when it was not done."""
    keeping.keep(at=timezone.now())


def ask_for_backups() -> None:
    """Have the worker look soon; when the queue does not answer, the sweep does it instead."""
    try:
        keep_backups.delay()
    except OperationalError:
        logger.warning("The queue does not answer; the next sweep sees what was asked.")
