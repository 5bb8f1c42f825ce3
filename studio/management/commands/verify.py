"""`manage.py verify`: is everything as it was written?"""

from functools import partial
from typing import Any

from django.core.management.base import BaseCommand, CommandError
from django.db import DEFAULT_DB_ALIAS

from studio.actions import backups
from studio.queries import archives, inventory


class Command(BaseCommand):
    help = "Look whether journal, locks, photos and frozen copies are as they were written."

    def handle(self, *args: Any, **options: Any) -> None:
        digest_of = partial(archives.digest_of_file, backups.media_folder())
        faults = inventory.faults(DEFAULT_DB_ALIAS, digest_of)
        if faults:
            raise CommandError("\n".join(faults))
        for end in inventory.journal_ends(DEFAULT_DB_ALIAS):
            self.stdout.write(f"{end['studio__slug']}: {end['seq']} acts, {end['digest']}")
        rows = sum(inventory.rows_by_table(DEFAULT_DB_ALIAS).values())
        self.stdout.write(f"{rows} rows; all is as it was written.")
