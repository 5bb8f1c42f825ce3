"""A backup as a file: a zip of the database, the photos, and a list of what is in it."""

import hashlib
import json
import zipfile
import zlib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import IO, Any, Final

from studio.domain.refusals import Unworkable

FORMAT: Final = 1
MANIFEST: Final = "manifest.json"
DATABASES: Final = {"sqlite": "database.sqlite3", "postgresql": "database.pgdump"}
MEDIA: Final = "media/"
BLOCK_BYTES: Final = 1 << 20
# The ways in which reading a file stumbles that is not whole, or not of ours.
STUMBLES: Final = (
    OSError,
    EOFError,
    KeyError,
    TypeError,
    ValueError,
    NotImplementedError,
    zipfile.BadZipFile,
    zlib.error,
)


class BackupDamaged(Unworkable):
    code = "backup-damaged"
    title = "That backup is damaged."


@dataclass(frozen=True, slots=True)
class Manifest:
    """What a backup says of itself.

    `members` holds `sha256` and `bytes` of each; the rest is what `inventory` told of the database.
    """

    made_at: str
    vendor: str
    migrations: list[str]
    locks: list[str]
    rows: dict[str, int]
    journals: list[dict[str, Any]]
    members: dict[str, dict[str, Any]]

    @property
    def database(self) -> str:
        return DATABASES[self.vendor]

    def digest_of(self, file_name: str) -> str | None:
        """Return the digest of a kept file (a photo), or None where the backup has none."""
        member = self.members.get(MEDIA + file_name)
        return member["sha256"] if member else None


def read(file: Path) -> Manifest:
    """Return what a backup says of itself, when every byte of it is as it says.

    Raises `BackupDamaged`.
    """
    try:
        with zipfile.ZipFile(file) as archive:
            manifest = _manifest(json.loads(archive.read(MANIFEST)))
            _check_members(archive, manifest.members)
    except STUMBLES as error:
        raise BackupDamaged(f"{file.name} cannot be read: {error}. Take an older one.") from error
    return manifest


def digest(stream: IO[bytes]) -> tuple[str, int]:
    """Return the sha256 of what a stream still holds, and how many bytes that was."""
    running, size = hashlib.sha256(), 0
    while block := stream.read(BLOCK_BYTES):
        running.update(block)
        size += len(block)
    return running.hexdigest(), size


def digest_of_file(folder: Path, name: str) -> str | None:
    """Return the sha256 of a file in a folder, or None where it is missing."""
    try:
        with (folder / name).open("rb") as file:
            return digest(file)[0]
    except FileNotFoundError:
        return None


def _manifest(said: Mapping[str, Any]) -> Manifest:
    if said["format"] != FORMAT:
        raise ValueError(f"it is of format {said['format']}, and this Natch reads {FORMAT}")
    fields = {name: said[name] for name in Manifest.__slots__}
    manifest = Manifest(**fields)
    if manifest.database not in manifest.members:
        raise ValueError("it holds no database")
    return manifest


def _check_members(archive: zipfile.ZipFile, members: Mapping[str, Mapping[str, Any]]) -> None:
    for name, said in members.items():
        path = PurePosixPath(name)
        if path.is_absolute() or ".." in path.parts:
            raise ValueError(f"{name} would stand outside the folder")
        with archive.open(name) as stream:
            if digest(stream) != (said["sha256"], said["bytes"]):
                raise ValueError(f"{name} is not what was kept")
