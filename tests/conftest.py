"""The studio of the tests: people with a signed-in client each, a clock that stands still."""

from collections.abc import Callable, Iterable, Iterator
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from django.db import connection
from django.db.backends.base.base import BaseDatabaseWrapper
from django.test import TransactionTestCase
from django.utils import timezone
from rest_framework.test import APIClient

from studio.models import AppendOnly, Member, Studio
from studio.permissions import Role
from tests import factories
from tests.services.fixtures import browser_executable, redis_url, smtp  # noqa: F401

Joined = tuple[Member, APIClient]
Join = Callable[..., Joined]


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Keep the domain plain: its tests may not ask for a database."""
    for item in items:
        if "domain" in item.path.parts and "db" in getattr(item, "fixturenames", ()):
            raise pytest.UsageError(f"{item.nodeid} is about the domain but asks for a database.")


class Clock:
    """The server's clock, which moves only when a test moves it."""

    def __init__(self) -> None:
        self.now: datetime = factories.NOW

    def __call__(self) -> datetime:
        return self.now

    def move(self, **by: float) -> datetime:
        self.now += timedelta(**by)
        return self.now


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    stopped = Clock()
    monkeypatch.setattr(timezone, "now", stopped)
    return stopped


@pytest.fixture
def now(clock: Clock) -> datetime:
    return clock.now


@pytest.fixture
def studio(db: None, clock: Clock) -> Studio:
    return factories.studio("yard")


@pytest.fixture
def other_studio(db: None, clock: Clock) -> Studio:
    return factories.studio("quay")


@pytest.fixture
def join() -> Join:
    """Return a function that adds a person to a studio, with a client signed in as that person."""

    def joined(
        studio: Studio, roles: Iterable[Role | str], first_name: str = "Maud", **fields: Any
    ) -> Joined:
        roles = [Role(role) for role in roles]
        member = factories.member(studio, roles, first_name, **fields)
        client = APIClient()
        client.force_login(member.user)
        return member, client

    return joined


@pytest.fixture
def owner(studio: Studio, join: Join) -> Joined:
    return join(studio, [Role.OWNER], "Orla")


@pytest.fixture
def maker(studio: Studio, join: Join) -> Joined:
    return join(studio, [Role.MAKER], "Maud")


@pytest.fixture
def helper(studio: Studio, join: Join, maker: Joined) -> Joined:
    """A helper of `maker`."""
    member, client = join(studio, [Role.HELPER], "Hal")
    member.helps.add(maker[0])
    return member, client


@pytest.fixture
def technician(studio: Studio, join: Join) -> Joined:
    return join(studio, [Role.TECHNICIAN], "Tess")


@pytest.fixture
def stranger(other_studio: Studio, join: Join) -> Joined:
    """An owner, but of the other studio."""
    return join(other_studio, [Role.OWNER], "Sid")


@pytest.fixture
def act() -> Callable[..., Any]:
    return factories.act


@pytest.fixture
def sent() -> Callable[..., Any]:
    return factories.sent


def _locked_tables() -> list[str]:
    if connection.vendor == "postgresql":
        columns = "event_object_table AS on_table, trigger_name AS name"
        catalogue = f"(SELECT {columns} FROM information_schema.triggers)"
    else:
        catalogue = "(SELECT tbl_name AS on_table, name FROM sqlite_master WHERE type = 'trigger')"
    with connection.cursor() as cursor:
        cursor.execute(f"SELECT on_table, name FROM {catalogue} AS locks")
        return sorted({table for table, name in cursor.fetchall() if name.endswith("_no_update")})


@pytest.fixture(scope="session", autouse=True)
def _flush_past_the_locks() -> Iterator[None]:
    """Lift the append-only triggers while a transactional test's rows are flushed away."""
    plain_teardown = TransactionTestCase._fixture_teardown

    def teardown(case: TransactionTestCase) -> None:
        tables = _locked_tables()
        with connection.schema_editor() as editor:
            for table in tables:
                AppendOnly(editor).unlock(table)
        try:
            plain_teardown(case)
        finally:
            with connection.schema_editor() as editor:
                for table in tables:
                    AppendOnly(editor).lock(table)

    TransactionTestCase._fixture_teardown = teardown
    yield
    TransactionTestCase._fixture_teardown = plain_teardown


@pytest.fixture
def unlocked_journal(transactional_db: None) -> None:
    """Real transactions; the triggers hold in the test and are lifted for the flush after it."""


@pytest.fixture
def own_folders(
    unlocked_journal: None,
    settings: Any,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    django_db_blocker: Any,
) -> Path:
    """Photos and backups in folders of the test's own, whose databases it may open."""
    settings.MEDIA_ROOT, settings.BACKUPS = str(tmp_path / "media"), str(tmp_path / "backups")
    plainly = django_db_blocker._real_ensure_connection
    monkeypatch.setattr(BaseDatabaseWrapper, "ensure_connection", plainly)
    return tmp_path
