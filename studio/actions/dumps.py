"""Copying a whole database into a file and back, by the database's own means.

SQLite's online backup and `pg_dump` both copy one moment while others go on writing.
"""

import os
import shutil
import sqlite3
import subprocess
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Any, Final

from django.db import DEFAULT_DB_ALIAS, connections, transaction
from django.db.backends.postgresql.client import DatabaseClient

from studio.domain.refusals import Unworkable

# Where the database of a moment, or a restored one, is reached while it is looked at.
ASIDE: Final = "aside"


class ProgramMissing(Unworkable):
    code = "program-missing"
    title = "A program is missing on this machine."


class DatabaseNotCopied(Unworkable):
    code = "database-not-copied"
    title = "The database could not be copied."


@contextmanager
def opened(settings: Mapping[str, Any]) -> Iterator[str]:
    """Reach another database than the usual one; give the name to use it by."""
    usual = connections.databases
    # A new table of databases, as another thread may be going through the old one. Everything
    # that is not said is as for the usual database: Django fills defaults in only once.
    connections.settings = {**usual, ASIDE: {**usual[DEFAULT_DB_ALIAS], **settings}}
    try:
        yield ASIDE
    finally:
        connections[ASIDE].close()
        del connections[ASIDE]
        connections.settings = usual


def file_settings(file: Path) -> dict[str, Any]:
    """Return how a SQLite file is reached that nobody else uses."""
    return {"ENGINE": "django.db.backends.sqlite3", "NAME": str(file), "OPTIONS": {}}


def named_settings(name: str) -> dict[str, Any]:
    """Return how another database of the same server is reached."""
    return {"NAME": name, "CONN_MAX_AGE": 0}


@contextmanager
def dumped(file: Path) -> Iterator[str]:
    """Copy the database into a file; give a name by which that very moment can be looked at.

    Raises `ProgramMissing` and `DatabaseNotCopied`.
    """
    connection = connections[DEFAULT_DB_ALIAS]
    if connection.vendor == "sqlite":
        connection.ensure_connection()
        try:
            with closing(sqlite3.connect(file)) as copy:
                connection.connection.backup(copy)
                # One file again: the copy took over that its other half stands beside it.
                copy.execute("PRAGMA journal_mode=DELETE")
        except sqlite3.Error as error:
            raise DatabaseNotCopied(f"SQLite says: {error}.") from error
        with opened(file_settings(file)) as using:
            yield using
        return
    name = connection.settings_dict["NAME"]
    with opened(named_settings(name)) as using, transaction.atomic(using=using):
        with connections[using].cursor() as cursor:
            cursor.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
            cursor.execute("SELECT pg_export_snapshot()")
            moment = f"--snapshot={cursor.fetchone()[0]}"
        call("pg_dump", using, ["-Fc", "--no-owner", "--no-privileges", moment, "-f", file])
        yield using


def load_postgres(file: Path, using: str) -> None:
    """Fill an empty database of PostgreSQL from a file, whole or not at all.

    Raises `ProgramMissing` and `DatabaseNotCopied`.
    """
    options = ["--no-owner", "--no-privileges", "--exit-on-error", "--single-transaction"]
    connections[using].close()
    call("pg_restore", using, [*options, file])


def call(program: str, using: str, options: list[Any]) -> None:
    """Call a program of PostgreSQL about a database. Raises `ProgramMissing`, `DatabaseNotCopied`.

    The password goes by the environment, where no list of processes shows it.
    """
    if shutil.which(program) is None:
        raise ProgramMissing(f"Install {program}, which comes with PostgreSQL's client programs.")
    arguments, environment = DatabaseClient.settings_to_cmd_args_env(
        connections[using].settings_dict, []
    )
    where, name = arguments[1:-1], arguments[-1]
    done = subprocess.run(
        [program, "--no-password", *where, "-d", name, *map(str, options)],
        env={**os.environ, **(environment or {})},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode != 0:
        said = done.stderr.strip().splitlines()
        raise DatabaseNotCopied(f"{program}: {said[0] if said else done.returncode}")
