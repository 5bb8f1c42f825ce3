"""What the clock sets off for firings and promises; each may be delivered twice without harm."""

from __future__ import annotations

from celery import shared_task
from django.utils import timezone

from firings.actions import reminding_orders
from studio.models import Studio


@shared_task
def judge_promises(**_: object) -> None:
    """Sweep: whether orders will be kept, and who must hear that one will not."""
    for studio in Studio.objects.all():
        reminding_orders.judge_promises(studio=studio, at=timezone.now())
