"""Making a backup: one file that holds the database and the photos, read back before it counts."""

import fcntl
import json
import os
import shutil
import tempfile
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import asdict
from datetime import datetime
from pathlib import Path
from typing import Any, Final

from django.conf import settings
from django.db import connection

from studio.actions import dumps
from studio.domain import backups as rules
from studio.domain.refusals import Conflict, Unworkable
from studio.queries import archives, inventory, locks

ONLY_OURS: Final = 0o600
DRAFT: Final = ".draft-"


class BackupUnderWay(Conflict):
    code = "backup-under-way"
    title = "A backup is being made."


class BackupThere(Conflict):
    code = "backup-there-already"
    title = "There is a backup of that name."


class NoRoom(Unworkable):
    code = "no-room-for-backup"
    title = "There is no room for a backup."


def usual_folder() -> Path:
    """Return the folder of the nightly backups."""
    return Path(settings.BACKUPS)


def media_folder() -> Path:
    """Return the folder of the photos."""
    return Path(settings.MEDIA_ROOT)


def make(*, folder: Path, at: datetime) -> Path:
    """Write a backup into a folder and return it; nothing that stands there is written over.

    Raises `BackupUnderWay`, `BackupThere`, `NoRoom`, `BackupDamaged` when it does not read back,
    and what `dumps.dumped` raises.
    """
    with alone_in(folder) as desk:
        file = folder / rules.name_at(at)
        if file.exists():
            raise BackupThere(f"{file.name} is left as it is; wait a second.")
        draft = desk / file.name
        try:
            _write(draft, desk, at)
        except OSError as error:
            raise NoRoom(f"Writing to {folder} failed: {error.strerror}.") from error
        archives.read(draft)
        draft.rename(file)
    return file


def prune(folder: Path) -> list[str]:
    """Remove the backups that are kept no longer, and return their names."""
    gone = rules.to_drop(file.name for file in folder.glob("*.zip"))
    for name in gone:
        (folder / name).unlink(missing_ok=True)
    return gone


@contextmanager
def alone_in(folder: Path) -> Iterator[Path]:
    """Hold a folder of backups; give a folder in it for drafts, which goes afterwards.

    Raises `BackupUnderWay` and `NoRoom`.
    """
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        held = os.open(folder, os.O_RDONLY)
    except OSError as error:
        raise NoRoom(f"{folder} cannot be used: {error.strerror}.") from error
    try:
        try:
            fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as error:
            raise BackupUnderWay("Wait until it has ended.") from error
        for left in folder.glob(f"{DRAFT}*"):  # by a machine that stopped in the middle
            shutil.rmtree(left, ignore_errors=True)
        with tempfile.TemporaryDirectory(prefix=DRAFT, dir=folder) as desk:
            yield Path(desk)
    finally:
        os.close(held)


def _write(draft: Path, desk: Path, at: datetime) -> None:
    database = desk / archives.DATABASES[connection.vendor]
    members: dict[str, dict[str, Any]] = {}
    draft.touch(mode=ONLY_OURS)
    with draft.open("r+b") as paper:
        with zipfile.ZipFile(paper, "w", zipfile.ZIP_STORED) as archive:
            with dumps.dumped(database) as using:
                told = _told(using)
            members[database.name] = _add(archive, database, database.name)
            # After the database: a photo is on the disk before a row names it.
            for file in sorted(media_folder().rglob("*.jpg")):
                name = archives.MEDIA + file.relative_to(media_folder()).as_posix()
                with suppress(FileNotFoundError):
                    members[name] = _add(archive, file, name)
            manifest = archives.Manifest(made_at=at.isoformat(), members=members, **told)
            said = {"format": archives.FORMAT, **asdict(manifest)}
            archive.writestr(archives.MANIFEST, json.dumps(said, indent=1))
        paper.flush()
        os.fsync(paper.fileno())


def _told(using: str) -> dict[str, Any]:
    return {
        "vendor": connection.vendor,
        "migrations": sorted(inventory.migrations(using)),
        "locks": sorted(locks.held(using)),
        "rows": inventory.rows_by_table(using),
        "journals": inventory.journal_ends(using),
    }


def _add(archive: zipfile.ZipFile, file: Path, name: str) -> dict[str, Any]:
    """Put a file into the archive; return its digest and size. Photos do not get any smaller."""
    with file.open("rb") as source:
        sha256, size = archives.digest(source)
    squeezes = file.suffix == ".sqlite3"
    archive.write(file, name, zipfile.ZIP_DEFLATED if squeezes else zipfile.ZIP_STORED)
    return {"sha256": sha256, "bytes": size}
