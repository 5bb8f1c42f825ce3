"""What the tests themselves stand on."""

import socket
from typing import Any

import pytest
from celery import Celery
from django.core.mail import EmailMessage
from django.db import connection
from pytest_socket import SocketConnectBlockedError

from tests import run
from tests.services.fixtures import Mailbox


class TestMailbox:
    def test_keeps_what_django_sends(self, smtp: Mailbox) -> None:
        EmailMessage("Kiln door", "Open it — slowly.", "a@example.org", ["b@example.org"]).send()

        [message] = smtp.messages
        assert message["Subject"] == "Kiln door"
        assert message.get_content().strip() == "Open it — slowly."

    def test_refuses_when_told_to(self, smtp: Mailbox) -> None:
        smtp.refuse()

        with pytest.raises(OSError, match="451"):
            EmailMessage("Kiln door", "", "a@example.org", ["b@example.org"]).send()

        assert smtp.messages == []


class TestRedis:
    def test_carries_a_message(self, redis_url: str) -> None:
        app = Celery("probe", broker=redis_url)

        with app.connection_for_write() as link, link.SimpleQueue("probe") as queue:
            queue.put({"look": 1})

            assert queue.get(timeout=5).payload == {"look": 1}


class TestNetwork:
    def test_is_shut_beyond_this_machine(self) -> None:
        with (
            socket.socket() as probe,
            pytest.warns(UserWarning, match="192.0.2.1"),
            pytest.raises(SocketConnectBlockedError),
        ):
            probe.connect(("192.0.2.1", 80))


class TestDatabase:
    @pytest.mark.django_db
    def test_is_the_one_the_run_asked_for(self, settings: Any) -> None:
        with connection.cursor() as cursor:
            if connection.vendor == "sqlite":
                cursor.execute("PRAGMA foreign_keys")
                assert cursor.fetchone() == (1,)
            else:
                cursor.execute("SHOW server_version_num")
                assert int(cursor.fetchone()[0]) >= 150000


class TestLocks:
    def test_name_no_host(self) -> None:
        assert run.hosts_in_locks() == []

    def test_would_be_found_naming_one(self, tmp_path: Any, monkeypatch: Any) -> None:
        lock = tmp_path / "requirements.txt"
        lock.write_text("a==1 \\\n    --hash=sha256:00\nb @ https://example.org/b.whl\n")
        monkeypatch.setattr(run, "LOCKS", [lock])

        assert run.hosts_in_locks() == ["requirements.txt:3: b @ https://example.org/b.whl"]
