"""`manage.py restore`: put a backup back into what is empty."""

from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.db import OperationalError

from studio.actions import backups, restoring
from studio.domain.refusals import Refusal
from studio.queries import archives


class Command(BaseCommand):
    help = "Put a backup back into an empty folder or database, and look whether all is there."
    requires_system_checks = ()  # what is wrong with the addresses must not stand in its way

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("file", type=Path, help="the backup: natch-….zip")
        parser.add_argument(
            "--into",
            required=True,
            help="SQLite: a data folder without a database. PostgreSQL: the name of an empty "
            "database on the server that DATABASE_URL names",
        )
        parser.add_argument("--media", type=Path, help="PostgreSQL: where its photos go")

    def handle(self, *args: Any, file: Path, into: str, **options: Any) -> None:
        try:
            manifest = archives.read(file)
            if manifest.vendor == "sqlite":
                faults = restoring.into_folder(file, Path(into).expanduser().resolve())
            else:
                media = options["media"] or backups.media_folder()
                faults = restoring.into_database(file, into, media)
        except Refusal as refusal:
            raise CommandError(f"{refusal.title} {refusal.detail}") from refusal
        except OperationalError as error:
            raise CommandError(f"The database does not answer: {error}") from error
        if faults:
            raise CommandError("\n".join(["It did not come back whole.", *faults]))
        self.stdout.write(f"{sum(manifest.rows.values())} rows are back, as they were.")
        if restoring.is_older(manifest):
            self.stdout.write("An older Natch made it: start this one on it once, then verify.")
