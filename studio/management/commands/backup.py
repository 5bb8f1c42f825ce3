"""`manage.py backup`: keep the database and the photos in one file."""

from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.db import OperationalError
from django.utils import timezone

from studio.actions import backups
from studio.domain.refusals import Refusal


class Command(BaseCommand):
    help = "Write the database and the photos into one file, and read it back."
    requires_system_checks = ()  # what is wrong with the addresses must not stand in its way

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument(
            "--to",
            type=Path,
            help="another folder than that of the nightly ones; nothing is tidied",
        )

    def handle(self, *args: Any, to: Path | None, **options: Any) -> None:
        folder = to.expanduser().resolve() if to else backups.usual_folder()
        try:
            file = backups.make(folder=folder, at=timezone.now())
        except Refusal as refusal:
            raise CommandError(f"{refusal.title} {refusal.detail}") from refusal
        except OperationalError as error:
            raise CommandError(f"The database does not answer: {error}") from error
        if to is None:
            backups.prune(folder)
        self.stdout.write(str(file))
