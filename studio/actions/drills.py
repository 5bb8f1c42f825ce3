"""Restoring a backup for trial, into a database that is thrown away again."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from django.db import DatabaseError, connection

from studio.actions import backups, dumps, restoring
from studio.domain.refusals import Refusal, Unworkable
from studio.queries.archives import Manifest


class NoScratchDatabase(Unworkable):
    code = "no-scratch-database"
    title = "No database could be made for trial."


def drill(file: Path) -> list[str]:
    """Restore a backup aside and return in words what is wrong with it; [] when it is whole.

    Raises `BackupUnderWay`.
    """
    with backups.alone_in(file.parent) as desk:
        try:
            manifest = restoring.checked(file, connection.vendor)
            with _restored(file, manifest, desk) as using:
                return restoring.faults_after(using, manifest)
        except Refusal as refusal:
            return [f"{refusal.title} {refusal.detail}"]
        except (DatabaseError, OSError) as error:
            return [f"{file.name} could not be restored: {error}"]


@contextmanager
def _restored(file: Path, manifest: Manifest, desk: Path) -> Iterator[str]:
    if connection.vendor == "sqlite":
        draft = desk / manifest.database
        restoring.take_out(file, manifest.database, draft)
        with dumps.opened(dumps.file_settings(draft)) as using:
            yield using
        return
    with _scratch() as name, dumps.opened(dumps.named_settings(name)) as using:
        restoring.fill(file, manifest, using, desk)
        yield using


@contextmanager
def _scratch() -> Iterator[str]:
    """Make a database of PostgreSQL and drop it afterwards; one that was left behind goes first."""
    name = f"{connection.settings_dict['NAME'][:50]}_trial"
    quoted = connection.ops.quote_name(name)
    try:
        with connection.cursor() as cursor:
            cursor.execute(f"DROP DATABASE IF EXISTS {quoted}")
            cursor.execute(f"CREATE DATABASE {quoted}")
    except DatabaseError as error:
        raise NoScratchDatabase(
            f"{str(error).strip()}. Let the role make databases: ALTER ROLE … CREATEDB."
        ) from error
    try:
        yield name
    finally:
        with connection.cursor() as cursor:
            cursor.execute(f"DROP DATABASE IF EXISTS {quoted}")
