"""Tables that refuse UPDATE and DELETE, on both databases.

SQLite rebuilds a table on ALTER and drops its triggers, so `install_append_only` must be the last
operation of every migration that touches such a table.
"""

from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations import RunPython
from django.db.migrations.state import StateApps

POSTGRES_FUNCTION = """
CREATE OR REPLACE FUNCTION natch_append_only() RETURNS trigger AS $$
BEGIN RAISE EXCEPTION 'natch: %% is append-only', TG_TABLE_NAME; END;
$$ LANGUAGE plpgsql
"""


class AppendOnly:
    """Installs and lifts the lock on tables of one database connection."""

    def __init__(self, schema_editor: BaseDatabaseSchemaEditor) -> None:
        self.execute = schema_editor.execute
        self.is_postgres = schema_editor.connection.vendor == "postgresql"

    def lock(self, table: str) -> None:
        self.unlock(table)
        for sql in self._postgres(table) if self.is_postgres else self._sqlite(table):
            self.execute(sql)

    def unlock(self, table: str) -> None:
        for moment in ("update", "delete", "truncate"):
            name = f"{table}_no_{moment}"
            if self.is_postgres:
                self.execute(f'DROP TRIGGER IF EXISTS "{name}" ON "{table}"')
            else:
                self.execute(f'DROP TRIGGER IF EXISTS "{name}"')

    def _postgres(self, table: str) -> list[str]:
        rows = [
            f'CREATE TRIGGER "{table}_no_{moment}" BEFORE {moment.upper()} ON "{table}" '
            f"FOR EACH {'STATEMENT' if moment == 'truncate' else 'ROW'} "
            "EXECUTE FUNCTION natch_append_only()"
            for moment in ("update", "delete", "truncate")
        ]
        return [POSTGRES_FUNCTION, *rows]

    def _sqlite(self, table: str) -> list[str]:
        return [
            f'CREATE TRIGGER "{table}_no_{moment}" BEFORE {moment.upper()} ON "{table}" '
            f"BEGIN SELECT RAISE(ABORT, 'natch: {table} is append-only'); END"
            for moment in ("update", "delete")
        ]


def install_append_only(*tables: str) -> RunPython:
    """Return the migration operation that locks `tables`; put it last in the migration."""

    def lock(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
        for table in tables:
            AppendOnly(schema_editor).lock(table)

    def unlock(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
        for table in tables:
            AppendOnly(schema_editor).unlock(table)

    return RunPython(lock, unlock)
