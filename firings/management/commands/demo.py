"""`manage.py demo`: load the invented demo studio into a database that has none."""

import os
import secrets
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.utils import timezone

from firings.demo import tables
from firings.demo.loader import load
from firings.demo.teller import Clock
from pieces.actions import forecasts
from studio.models import Studio


class Command(BaseCommand):
    """Loads Sallowbeck Yard so that its clock is now."""

    help = "Load the invented demo studio; its clock is moved so that it is now."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument(
            "--renew",
            action="store_true",
            help="load a fresh copy beside the old one, whose clock has run on",
        )

    def handle(self, *args: Any, renew: bool = False, **options: Any) -> None:
        if Studio.objects.exists() and not renew:
            raise CommandError(
                "There is a studio in this database; the demo is not loaded into it."
            )
        password = os.environ.get("NATCH_DEMO_PASSWORD") or secrets.token_urlsafe(9)
        now = timezone.now()
        studio = load(clock=Clock(now), password=password, slug=_free_slug())
        forecasts.refresh(studio=studio, at=now)
        if options.get("verbosity", 1):
            self.stdout.write(f"{studio.name} ({studio.slug}), password {password}")


def _free_slug() -> str:
    """Return the demo's address; a fresh copy gets a number behind it."""
    taken = set(Studio.objects.values_list("slug", flat=True))
    number = 1
    while (slug := tables.SLUG if number == 1 else f"{tables.SLUG}-{number}") in taken:
        number += 1
    return slug
