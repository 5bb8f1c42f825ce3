"""Putting a backup back, into what is empty only."""

import shutil
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any, Final

from django.db import connection, connections

from studio.actions import backups, dumps
from studio.domain.refusals import Conflict, Unworkable
from studio.queries import archives, inventory, locks
from studio.queries.archives import Manifest

SQLITE_FILE: Final = "natch.sqlite3"


class NotEmpty(Conflict):
    code = "not-empty"
    title = "A backup is restored into what is empty only."


class OtherDatabase(Unworkable):
    code = "other-database"
    title = "That backup is of the other kind of database."


class OfNewerNatch(Unworkable):
    code = "of-newer-natch"
    title = "That backup was made by a newer Natch."


def into_folder(file: Path, folder: Path) -> list[str]:
    """Restore a backup of SQLite into a data folder; return what is wrong with it, in words.

    Where anything is wrong the folder is left without a database. Raises `NotEmpty`,
    `OtherDatabase`, `OfNewerNatch` and `BackupDamaged`.
    """
    manifest = checked(file, "sqlite")
    target = folder / SQLITE_FILE
    if target.exists() and target.stat().st_size:  # one that was only looked for is empty
        raise NotEmpty(f"{target} is there already.")
    with backups.alone_in(folder) as desk:
        draft = desk / manifest.database
        take_out(file, manifest.database, draft)
        with dumps.opened(dumps.file_settings(draft)) as using:
            faults = faults_after(using, manifest)
        if not faults:
            put_photos(file, manifest, folder / "media")
            draft.rename(target)
    return faults


def into_database(file: Path, name: str, media: Path) -> list[str]:
    """Restore a backup of PostgreSQL into a database there is; return what is wrong, in words.

    Raises `NotEmpty`, `OtherDatabase`, `OfNewerNatch`, `BackupDamaged` and what
    `dumps.load_postgres` raises.
    """
    manifest = checked(file, "postgresql")
    if connection.vendor != "postgresql":
        raise OtherDatabase("Name a server of PostgreSQL in DATABASE_URL.")
    with dumps.opened(dumps.named_settings(name)) as using:
        if connections[using].introspection.table_names():
            raise NotEmpty(f"The database {name} has tables already.")
        with tempfile.TemporaryDirectory() as desk:
            fill(file, manifest, using, Path(desk))
        faults = faults_after(using, manifest)
    put_photos(file, manifest, media)
    return faults


def checked(file: Path, vendor: str) -> Manifest:
    """Return what a backup says of itself when this Natch can restore it."""
    manifest = archives.read(file)
    if manifest.vendor != vendor:
        raise OtherDatabase(f"It is of {manifest.vendor}, and goes back into {manifest.vendor}.")
    unknown = set(manifest.migrations) - inventory.known_migrations()
    if unknown:
        raise OfNewerNatch(f"This one does not know {min(unknown)}.", unknown=sorted(unknown))
    return manifest


def is_older(manifest: Manifest) -> bool:
    """Say whether the database of a backup has to be brought up to date before it is used."""
    return bool(inventory.known_migrations() - set(manifest.migrations))


def fill(file: Path, manifest: Manifest, using: str, desk: Path) -> None:
    """Fill an empty database of PostgreSQL from a backup, by way of a folder for drafts."""
    draft = desk / manifest.database
    take_out(file, manifest.database, draft)
    dumps.load_postgres(draft, using)


def faults_after(using: str, manifest: Manifest) -> list[str]:
    """Return in words where a restored database is not what the backup said it was.

    Nothing that is missing is put in again here: a lock that did not come back is a fault. The
    journal of an older Natch is read once the database has been brought up to date.
    """
    rows = inventory.rows_by_table(using)
    found = _unlike("Rows of", manifest.rows, rows)
    ends = {end["studio__slug"]: end for end in inventory.journal_ends(using)}
    said = {end["studio__slug"]: end for end in manifest.journals}
    found += _unlike("The journal of", said, ends)
    lost = sorted(set(manifest.locks) - locks.held(using))
    found += [f"The lock {name} did not come back." for name in lost]
    return found if is_older(manifest) else found + inventory.faults(using, manifest.digest_of)


def take_out(file: Path, member: str, target: Path) -> None:
    """Write one member of a backup to a file that only we may read."""
    target.touch(mode=backups.ONLY_OURS)
    with zipfile.ZipFile(file) as archive, target.open("wb") as paper:
        shutil.copyfileobj(archive.open(member), paper, archives.BLOCK_BYTES)


def put_photos(file: Path, manifest: Manifest, media: Path) -> None:
    """Put the photos back; one that stands there under its name already is left."""
    for member in manifest.members:
        target = media / member.removeprefix(archives.MEDIA)
        if member.startswith(archives.MEDIA) and not target.exists():
            target.parent.mkdir(parents=True, exist_ok=True)
            draft = target.with_suffix(".draft")
            take_out(file, member, draft)
            draft.rename(target)


def _unlike(what: str, said: Mapping[str, Any], found: Mapping[str, Any]) -> list[str]:
    return [
        f"{what} {name}: {found.get(name, 'none')} instead of {said.get(name, 'none')}."
        for name in sorted({*said, *found})
        if said.get(name) != found.get(name)
    ]
