"""What is in a database: rows, locks, migrations, journals; and whether it is as it was written.

Each looks at the database that `using` names, so that a restored copy is asked the same questions.
"""

from collections.abc import Callable
from typing import Any

from django.db import IntegrityError, connections
from django.db.migrations.loader import MigrationLoader
from django.db.migrations.recorder import MigrationRecorder

from studio.models import FrozenCopy, JournalHead, Photo, PhotoSize, Studio
from studio.queries import chain, frozen, locks

DigestOf = Callable[[str], str | None]


def rows_by_table(using: str) -> dict[str, int]:
    """Return how many rows each table has."""
    connection = connections[using]
    found = {}
    with connection.cursor() as cursor:
        for table in sorted(connection.introspection.table_names(cursor)):
            cursor.execute(f"SELECT count(*) FROM {connection.ops.quote_name(table)}")  # noqa: S608
            found[table] = int(cursor.fetchone()[0])
    return found


def journal_ends(using: str) -> list[dict[str, Any]]:
    """Return the last number and digest of each studio's journal."""
    heads = JournalHead.objects.using(using).order_by("studio__slug")
    return [dict(head) for head in heads.values("studio__slug", "seq", "digest")]


def migrations(using: str) -> set[str]:
    """Return the names of the migrations that a database has been through."""
    applied = MigrationRecorder(connections[using]).applied_migrations()
    return {f"{app}.{name}" for app, name in applied}


def known_migrations() -> set[str]:
    """Return the names of the migrations that this Natch knows."""
    return {f"{app}.{name}" for app, name in MigrationLoader(None).disk_migrations}


def faults(using: str, digest_of: DigestOf) -> list[str]:
    """Return in words all that is not as it was written; [] when all is whole.

    `digest_of` gives the digest of a kept file by its name, or None where it is missing.
    """
    return [
        *(f"The lock {name} is missing." for name in locks.missing(using)),
        *_loose_ends(using),
        *_journal_faults(using),
        *_photo_faults(using, digest_of),
        *_copy_faults(using),
    ]


def _loose_ends(using: str) -> list[str]:
    connection = connections[using]
    found = []
    if connection.vendor == "sqlite":
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA quick_check")
            found = [line for (line,) in cursor.fetchall() if line != "ok"]
    try:
        connection.check_constraints()
    except IntegrityError as error:
        found.append(str(error))
    return [f"The database is damaged: {line}" for line in found]


def _journal_faults(using: str) -> list[str]:
    return [
        f"Journal of {studio.slug}, act {fault.seq}: {fault.what}."
        for studio in Studio.objects.using(using).order_by("slug")
        for fault in chain.faults(studio, using=using)
    ]


def _photo_faults(using: str, digest_of: DigestOf) -> list[str]:
    found = []
    photos: Any = Photo.objects.using(using).select_related("entry")
    for photo in photos.iterator():
        kept = {size: digest_of(photo.file_name(size)) for size in PhotoSize}
        found += [f"Photo {photo.pk}: its {size} is missing." for size in kept if not kept[size]]
        image = kept[PhotoSize.IMAGE]
        if image and not image == photo.sha256 == photo.entry.facts.get("sha256"):
            found.append(f"Photo {photo.pk} is not what was kept.")
    return found


def _copy_faults(using: str) -> list[str]:
    found = []
    copies: Any = FrozenCopy.objects.using(using).select_related("entry")
    for copy in copies.iterator():
        try:
            frozen.body_of(copy)
        except frozen.NotAsKept:
            found.append(f"The copy {copy.title} ({copy.pk}) is not what was given out.")
    return found
