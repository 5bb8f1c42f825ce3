from pathlib import Path
from typing import Any

import pytest
from django.db import DatabaseError, connection
from django.test import Client

PAGE = "<!doctype html><title>Natch</title>"


@pytest.fixture
def built(settings: Any, tmp_path: Path) -> None:
    (tmp_path / "index.html").write_text(PAGE)
    settings.FRONTEND_DIST = tmp_path


class TestHealthz:
    def test_works(self, client: Client) -> None:
        assert client.get("/healthz").content == b"up\n"


@pytest.mark.django_db
class TestReadyz:
    def test_works(self, client: Client, built: None) -> None:
        assert client.get("/readyz").status_code == 200

    def test_says_that_the_front_end_is_missing(
        self, client: Client, settings: Any, tmp_path: Path
    ) -> None:
        settings.FRONTEND_DIST = tmp_path

        answer = client.get("/readyz")

        assert (answer.status_code, answer.content) == (503, b"the front end is not built\n")

    def test_says_that_the_database_is_missing(
        self, client: Client, built: None, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        def cursor() -> None:
            raise DatabaseError

        monkeypatch.setattr(connection, "cursor", cursor)

        answer = client.get("/readyz")

        assert (answer.status_code, answer.content) == (503, b"the database does not answer\n")


class TestFrontEnd:
    @pytest.mark.parametrize("path", ["/", "/bench", "/pieces/T-0025/", "/api-notes"])
    def test_is_given_for_each_of_its_own_addresses(
        self, client: Client, built: None, path: str
    ) -> None:
        answer = client.get(path)

        assert answer.content.decode() == PAGE
        assert "csrftoken" in answer.cookies
        assert "script-src 'self'" in answer.headers["Content-Security-Policy"]
        assert "no-store" in answer.headers["Cache-Control"]

    @pytest.mark.parametrize(
        "path", ["/assets/gone-1a2b.js", "/sw2.js", "/icon.png", "/api/v1/nothing/", "/api/"]
    )
    def test_never_stands_for_what_is_missing(self, client: Client, built: None, path: str) -> None:
        answer = client.get(path)

        assert answer.status_code == 404
        assert "frame-ancestors 'none'" in answer.headers["Content-Security-Policy"]
