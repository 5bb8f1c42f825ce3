"""`manage.py verify`: is everything as it was written?"""

from functools import partial
from typing import Any

from django.core.management.base import BaseCommand, CommandError
from django.db import DEFAULT_DB_ALIAS, OperationalError

from studio.actions import backups
from studio.queries import archives, inventory


class Command(BaseCommand):
    help = "Look whether journal, locks, photos and frozen copies are as they were written."
    requires_system_checks = ()  # what is wrong with the addresses must not stand in its way

    def handle(self, *args: Any, **options: Any) -> None:
        digest_of = partial(archives.digest_of_file, backups.media_folder())
        try:
            if inventory.known_migrations() - inventory.migrations(DEFAULT_DB_ALIAS):
                raise CommandError("The database is of an older Natch: start this one on it once.")
            faults = inventory.faults(DEFAULT_DB_ALIAS, digest_of)
        except OperationalError as error:
            raise CommandError(f"The database does not answer: {error}") from error
        if faults:
            raise CommandError("\n".join(faults))
        for end in inventory.journal_ends(DEFAULT_DB_ALIAS):
            self.stdout.write(f"{end['studio__slug']}: {end['seq']} acts, {end['digest']}")
        rows = sum(inventory.rows_by_table(DEFAULT_DB_ALIAS).values())
        self.stdout.write(f"{rows} rows; all is as it was written.")
