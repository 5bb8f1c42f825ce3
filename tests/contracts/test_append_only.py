"""What happened is never changed: the database itself refuses, whoever asks."""

import pytest
from django.db import DatabaseError, connection, models, transaction

from studio.domain.ids import uuid7
from studio.queries.locks import locked_models
from tests import factories

LOCKED = locked_models()


@pytest.fixture
def triggers(db):
    """Table and moment of every trigger in the catalogue of this database."""
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute(
                "SELECT c.relname, t.tgname FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid "
                "WHERE NOT t.tgisinternal AND t.tgenabled = 'O'"
            )
        else:
            cursor.execute("SELECT tbl_name, name FROM sqlite_master WHERE type = 'trigger'")
        return set(cursor.fetchall())


def a_row_of(model):
    """Insert a row whose columns hold anything; what it refers to is looked at only at the end."""
    values = {f.attname: _anything(f) for f in model._meta.concrete_fields if not _is_counted(f)}
    row = model(**values)
    row.save_base(raw=True, force_insert=True)
    return row


def _is_counted(field):
    return isinstance(field, models.AutoField)


def _anything(field):
    target = field.target_field if field.is_relation else field
    if isinstance(target, models.UUIDField):
        return uuid7()
    if isinstance(target, models.DateTimeField):
        return factories.NOW
    if isinstance(target, models.DateField):
        return factories.NOW.date()
    if isinstance(target, models.JSONField):
        return {}
    if isinstance(target, models.CharField | models.TextField):
        return "x"
    if isinstance(target, models.BinaryField):
        return b"x"
    return 1


@pytest.mark.parametrize("model", LOCKED, ids=lambda model: model._meta.label)
class TestLockedTable:
    def test_has_its_triggers(self, model, triggers):
        moments = ["update", "delete"]
        if connection.vendor == "postgresql":
            moments.append("truncate")

        table = model._meta.db_table
        assert {(table, f"{table}_no_{moment}") for moment in moments} <= triggers

    def test_refuses_to_change_or_lose_a_row(self, model, db):
        table = connection.ops.quote_name(model._meta.db_table)
        column = connection.ops.quote_name(model._meta.pk.column)
        with transaction.atomic():
            a_row_of(model)

            for sql in (f"UPDATE {table} SET {column} = {column}", f"DELETE FROM {table}"):
                refused = pytest.raises(DatabaseError, match="append-only")
                with refused, transaction.atomic(), connection.cursor() as cursor:
                    cursor.execute(sql)

            # The row refers to nothing that there is, so it must not be kept.
            transaction.set_rollback(True)


def test_facts_of_every_app_are_looked_at():
    assert {model._meta.app_label for model in LOCKED} >= {"studio", "moulds", "pieces", "firings"}
