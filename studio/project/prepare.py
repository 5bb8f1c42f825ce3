"""Brings the database up to date and loads the demo into an empty one, before anything serves.

Run as `python -m studio.project.prepare [--demo]`, apart from the supervisor, which stays small.
"""

import sys

import django
from django.core.management import call_command
from django.db import OperationalError, connection
from django.db.migrations.executor import MigrationExecutor


def migrate() -> bool:
    """Apply what is missing; say whether anything was."""
    executor = MigrationExecutor(connection)
    missing = executor.migration_plan(executor.loader.graph.leaf_nodes())
    if missing:
        call_command("migrate", verbosity=0, interactive=False)
    return bool(missing)


def has_studio() -> bool:
    """Say whether somebody already works here."""
    from studio.models import Studio

    return Studio.objects.exists()


def main(words: list[str]) -> None:
    """Do both; print `demo` when the demo was loaded, `empty` when there is still no studio."""
    django.setup()
    try:
        if migrate():
            sys.stderr.write("  Brought the database up to date\n")
        if "--demo" in words and not has_studio():
            sys.stderr.write("  Loading the demo …\n")
            call_command("demo", verbosity=0)
            sys.stdout.write("demo\n")
        elif not has_studio():
            sys.stdout.write("empty\n")
    except OperationalError as error:
        sys.exit(f"The database does not answer: {str(error).strip().splitlines()[0]}")


if __name__ == "__main__":
    main(sys.argv[1:])
