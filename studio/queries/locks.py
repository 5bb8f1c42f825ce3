"""Which tables refuse UPDATE and DELETE, and whether a database still does so."""

from collections.abc import Iterable
from typing import Any

from django.apps import apps
from django.db import connections
from django.db.models import Model

from studio.models import Fact, HeldAct, JournalEntry, JournalSubject, RefusedTry

# A trigger that was switched off, or that no longer raises anything, holds nothing.
_ON_POSTGRES = """
SELECT t.tgname FROM pg_trigger t JOIN pg_proc p ON p.oid = t.tgfoid
WHERE NOT t.tgisinternal AND t.tgenabled = 'O' AND p.prosrc LIKE '%RAISE EXCEPTION%'
"""
_ON_SQLITE = "SELECT name FROM sqlite_master WHERE type = 'trigger' AND sql LIKE '%RAISE(ABORT%'"


def locked_models() -> list[type[Model]]:
    """Return the models that are never changed: the journal, and every fact with what it names."""
    facts = [model for model in apps.get_models() if issubclass(model, Fact)]
    sides: list[Any] = [field for fact in facts for field in fact._meta.many_to_many]
    named = [field.remote_field.through for field in sides]
    return [JournalEntry, JournalSubject, RefusedTry, HeldAct, *facts, *named]


def held(using: str) -> set[str]:
    """Return the names of the locks that hold in a database."""
    connection = connections[using]
    with connection.cursor() as cursor:
        cursor.execute(_ON_POSTGRES if connection.vendor == "postgresql" else _ON_SQLITE)
        return {name for (name,) in cursor.fetchall() if "_no_" in name}


def wanted(using: str, tables: Iterable[str]) -> set[str]:
    """Return the names of the locks that a database should have on some tables."""
    moments = ["update", "delete"]
    if connections[using].vendor == "postgresql":
        moments.append("truncate")
    return {f"{table}_no_{moment}" for table in tables for moment in moments}


def missing(using: str) -> list[str]:
    """Return the locks that a database should have and has not."""
    tables = [model._meta.db_table for model in locked_models()]
    return sorted(wanted(using, tables) - held(using))
