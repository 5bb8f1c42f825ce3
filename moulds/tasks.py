"""What the clock sets off in this app; every sweep may run twice without harm."""

from celery import shared_task
from django.utils import timezone

from moulds.actions import reminding


@shared_task
def tell_of_moulds(**_: object) -> None:
    """Tell owners of moulds that are worn, due for a look or resting wet."""
    reminding.tell_owners(at=timezone.now())
