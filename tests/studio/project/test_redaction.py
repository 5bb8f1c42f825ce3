import logging

import pytest

from studio.project.redaction import HideKeys, redacted


class TestRedacted:
    @pytest.mark.parametrize(
        ("text", "shown"),
        [
            ("Not Found: /c/abc-DEF_1", "Not Found: /c/…"),
            ("/c/abc/photos/1/image/", "/c/…/photos/1/image/"),
            ("GET /c/abc?x=1 HTTP/1.1", "GET /c/…?x=1 HTTP/1.1"),
            ("/api/v1/shares/abc/approvals/", "/api/v1/shares/…/approvals/"),
            ("/api/v1/invitations/abc/", "/api/v1/invitations/…/"),
            ("/api/v1/studios/yard/commissions/1/", "/api/v1/studios/yard/commissions/1/"),
        ],
    )
    def test_takes_keys_out_and_leaves_the_rest(self, text, shown):
        assert redacted(text) == shown


class TestHideKeys:
    def test_looks_at_what_is_put_into_the_message_too(self):
        record = logging.LogRecord("x", logging.INFO, "f", 1, "%s: %d", ("/c/abc", 404), None)

        assert HideKeys().filter(record)
        assert record.getMessage() == "/c/…: 404"
