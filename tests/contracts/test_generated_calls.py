"""Calls made up from the API's own document, as an owner: none breaks anything."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import pytest
import schemathesis
from django.core.signals import request_finished, request_started
from django.core.wsgi import get_wsgi_application
from django.db import close_old_connections, transaction
from django.middleware.csrf import _get_new_csrf_string
from django.utils import timezone
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from rest_framework.test import APIClient
from schemathesis import GenerationMode
from schemathesis.checks import not_a_server_error
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    response_schema_conformance,
    status_code_conformance,
)

from tests import factories
from tests.contracts import crowded_yard, endpoints

CHECKS = [
    not_a_server_error,
    content_type_conformance,
    status_code_conformance,
    response_schema_conformance,
]
OPERATIONS = sorted(
    (path, method)
    for path, operations in endpoints.schema()["paths"].items()
    for method in operations
)


@dataclass(frozen=True)
class Yard:
    """The document with ids in it, and what a signed-in owner sends along."""

    document: Any
    cookies: dict[str, str]
    headers: dict[str, str]


@pytest.fixture(scope="module")
def _one_connection() -> Iterator[None]:
    """Let a call keep the connection, which is in the middle of the test's transaction."""
    for signal in (request_started, request_finished):
        signal.disconnect(close_old_connections)
    yield
    for signal in (request_started, request_finished):
        signal.connect(close_old_connections)


@pytest.fixture(scope="module")
def yard(django_db_setup: None, django_db_blocker: Any, _one_connection: None) -> Iterator[Yard]:
    """A crowded studio, filled once and rolled back at the end."""
    with django_db_blocker.unblock(), transaction.atomic():
        studio = factories.studio("yard")
        owner = factories.member(studio, ["owner"], "Orla")
        ids = crowded_yard.crowd(studio, owner)
        client = APIClient()
        client.force_login(owner.user)
        token = _get_new_csrf_string()
        document = schemathesis.openapi.from_dict(crowded_yard.with_ids(endpoints.schema(), ids))
        document.app = get_wsgi_application()
        yield Yard(
            document,
            {"sessionid": client.cookies["sessionid"].value, "csrftoken": token},
            {"X-CSRFToken": token},
        )
        transaction.set_rollback(True)


def check(yard: Yard, path: str, method: str, examples: int) -> None:
    operation = yard.document[path][method.upper()]
    right, wrong = (
        operation.as_strategy(generation_mode=mode)
        for mode in (GenerationMode.POSITIVE, GenerationMode.NEGATIVE)
    )

    @settings(
        max_examples=examples,
        deadline=None,
        database=None,
        derandomize=True,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(case=st.one_of(right, right, wrong))
    def call(case: Any) -> None:
        with transaction.atomic():
            answer = case.call(cookies=yard.cookies, headers=yard.headers)
            transaction.set_rollback(True)
        case.validate_response(answer, checks=CHECKS)

    call()


@pytest.mark.parametrize(("path", "method"), OPERATIONS)
class TestCalls:
    def test_are_answered_as_the_document_says(
        self, yard: Yard, db: None, monkeypatch: pytest.MonkeyPatch, path: str, method: str
    ) -> None:
        monkeypatch.setattr(timezone, "now", lambda: factories.NOW)

        check(yard, path, method, examples=8)

    @pytest.mark.slow
    def test_are_answered_so_many_times_over(
        self, yard: Yard, db: None, monkeypatch: pytest.MonkeyPatch, path: str, method: str
    ) -> None:
        monkeypatch.setattr(timezone, "now", lambda: factories.NOW)

        check(yard, path, method, examples=100)
