"""Phones that keep each act until it is answered, as the outbox of the front end does."""

import http.client
import json
import time
import uuid
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any

PASSWORD = "slip-and-score-9"


@dataclass
class Phone:
    """A phone that keeps each act until it is answered, and sends it again with the same id."""

    port: int
    device: str = ""
    cookies: dict[str, str] = field(default_factory=dict)

    def ask(self, method: str, path: str, body: Any = None) -> tuple[int, Any]:
        """Send one request; raise OSError when no whole answer comes."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=30)
        headers = {
            "Content-Type": "application/json",
            **({"X-Natch-Device": self.device} if self.device else {}),
            "X-CSRFToken": self.cookies.get("csrftoken", ""),
            "Cookie": "; ".join(f"{name}={value}" for name, value in self.cookies.items()),
        }
        try:
            connection.request(method, path, json.dumps(body) if body else None, headers)
            answer = connection.getresponse()
            text = answer.read()
        except http.client.HTTPException as error:
            raise ConnectionError(str(error)) from error
        finally:
            connection.close()
        for line in answer.headers.get_all("Set-Cookie") or []:
            name, _, value = line.partition(";")[0].partition("=")
            self.cookies[name] = value
        is_json = "json" in answer.headers.get("Content-Type", "")
        return answer.status, json.loads(text) if is_json and text else None

    def sign_in(self) -> None:
        self.ask("GET", "/")
        status, answer = self.ask(
            "POST", "/api/v1/session/", {"username": "maud", "password": PASSWORD}
        )
        assert status in {200, 201}, answer

    def tell(self, path: str, act: dict[str, Any], within_s: float = 90) -> int:
        """Send an act until it is answered; return how often it was sent."""
        limit_s = time.monotonic() + within_s
        sent = 0
        while time.monotonic() < limit_s:
            sent += 1
            try:
                status, answer = self.ask("POST", path, act)
            except OSError:
                time.sleep(0.05)
                continue
            if status < 500:
                assert status == 201, answer
                return sent
        raise AssertionError(f"{act['id']} was never answered.")


def act(**fields: Any) -> dict[str, Any]:
    now = datetime.now(UTC).isoformat()
    return {"id": str(uuid.uuid4()), "happened_at": now, "based_on": 0, **fields}


def all_rows(phone: Phone, path: str) -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = []
    following: str | None = path
    while following:
        status, page = phone.ask("GET", following)
        assert status == 200, page
        rows += page["results"]
        following = page["next"]
        if following and following.startswith("http"):
            following = "/" + following.split("/", 3)[3]
    return rows
