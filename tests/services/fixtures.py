"""The outside world as fixtures: a mail server that keeps what it gets, Redis, a browser."""

import socket
from collections.abc import Iterator
from email.message import EmailMessage
from email.parser import BytesParser
from email.policy import default
from pathlib import Path
from typing import Any

import pytest
from aiosmtpd.controller import Controller

from tests.services import programs, servers


class Mailbox:
    """Keeps every message that arrived, parsed, in the order of arrival."""

    def __init__(self, port: int) -> None:
        self.messages: list[EmailMessage] = []
        self.refusal: str | None = None
        self.host = "127.0.0.1"
        self.port = port

    def refuse(self, answer: str = "451 4.3.0 Come back later") -> None:
        """Answer every message with `answer` from now on."""
        self.refusal = answer

    def accept(self) -> None:
        """Take messages again."""
        self.refusal = None

    async def handle_DATA(self, server: Any, session: Any, envelope: Any) -> str:  # noqa: N802
        """Keep one message; the name is the library's."""
        if self.refusal is not None:
            return self.refusal
        parsed = BytesParser(policy=default).parsebytes(envelope.content)
        assert isinstance(parsed, EmailMessage)
        self.messages.append(parsed)
        return "250 2.0.0 Kept"


def free_port() -> int:
    """Return a port that nothing listens on just now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


@pytest.fixture
def smtp(settings: Any) -> Iterator[Mailbox]:
    """Run a real SMTP server, with the product's settings pointing at it."""
    mailbox = Mailbox(port=free_port())
    controller = Controller(mailbox, hostname=mailbox.host, port=mailbox.port)
    controller.start()
    settings.EMAIL_BACKEND = "django.core.mail.backends.smtp.EmailBackend"
    settings.EMAIL_HOST = mailbox.host
    settings.EMAIL_PORT = mailbox.port
    yield mailbox
    controller.stop()


@pytest.fixture(scope="session")
def redis_url() -> Iterator[str]:
    """Give the address of a Redis of this session's own."""
    with servers.redis() as url:
        yield url


@pytest.fixture(scope="session")
def browser_executable() -> Path:
    """Give the Chromium to drive; a missing one is an error, never a skip."""
    return programs.chromium()
