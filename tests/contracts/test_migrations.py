"""Migrations say what they do, none is missing, and none leaves an append-only table unlocked."""

import re
from inspect import getclosurevars

import pytest
from django.apps import apps
from django.core.management import call_command
from django.db.migrations import RunPython
from django.db.migrations.loader import MigrationLoader

from studio.queries.locks import locked_models

APPS = ("studio", "moulds", "pieces", "firings")
MIGRATIONS = sorted(
    (
        migration
        for (app, _), migration in MigrationLoader(None).disk_migrations.items()
        if app in APPS
    ),
    key=str,
)


class TestMigrations:
    def test_are_complete(self, db, capsys):
        call_command("makemigrations", check=True, dry_run=True, verbosity=1)

        assert "No changes" in capsys.readouterr().out


@pytest.mark.parametrize("migration", MIGRATIONS, ids=str)
class TestMigration:
    def test_has_a_name_that_says_what_it_does(self, migration):
        assert re.fullmatch(r"\d{4}_[a-z][a-z0-9_]+", migration.name)
        assert "auto" not in migration.name

    def test_locks_again_what_it_touches(self, migration):
        """SQLite rebuilds a table on ALTER and drops its triggers."""
        touched = {
            _table(migration.app_label, name)
            for operation in migration.operations
            for name in (getattr(operation, "model_name", None), getattr(operation, "name", None))
            if name is not None
        }
        append_only = {model._meta.db_table for model in locked_models()}

        assert touched & append_only <= set(_locked_at_the_end(migration))


def _table(app_label, model_name):
    try:
        return apps.get_model(app_label, model_name)._meta.db_table
    except LookupError:
        return None


def _locked_at_the_end(migration):
    last = migration.operations[-1]
    if not isinstance(last, RunPython):
        return ()
    return getclosurevars(last.code).nonlocals.get("tables", ())
