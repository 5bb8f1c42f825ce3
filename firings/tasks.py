"""What the clock sets off for firings and promises; each may be delivered twice without harm."""

from __future__ import annotations

from celery import shared_task
from django.utils import timezone

from firings.actions import reminding_kilns, reminding_loads, reminding_orders, reminding_watch
from studio.models import Studio


@shared_task
def judge_promises(**_: object) -> None:
    """Sweep: whether orders will be kept, and who must hear that one will not."""
    for studio in Studio.objects.all():
        reminding_orders.judge_promises(studio=studio, at=timezone.now())


@shared_task
def tell_minders(**_: object) -> None:
    """Sweep: kilns that nobody has read, that should have ended, that may be opened, that age."""
    for studio in Studio.objects.all():
        reminding_watch.tell_minders(studio=studio, at=timezone.now())
        reminding_kilns.tell_technicians(studio=studio, at=timezone.now())


@shared_task
def tell_makers_of_loads(**_: object) -> None:
    """Sweep: loads that close, were settled, called off, moved or unloaded."""
    for studio in Studio.objects.all():
        reminding_loads.tell_makers(studio=studio, at=timezone.now())
