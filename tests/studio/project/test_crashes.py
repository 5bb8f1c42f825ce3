"""What a killed process costs: nothing that was answered, and nothing twice."""

import http.client
import json
import os
import signal
import subprocess
import sys
import threading
import time
import uuid
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from studio.project.bootstrap import ROOT
from tests.services.fixtures import free_port
from tests.services.processes import children_of, until

PASSWORD = "slip-and-score-9"
WRITERS = 3
# What is killed, one after the other: each time while the phones go on writing.
VICTIMS = ("web worker", "web", "quick", "work", "clock", "web worker", "web")
MARKS = {"web": "gunicorn", "quick": "quick@natch", "work": "work@natch", "clock": " beat "}


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


@pytest.fixture
def installation(tmp_path: Path) -> Iterator[tuple[int, int]]:
    """Run the product on a studio of one owner; give the supervisor's id and the port."""
    port = free_port()
    environment = {
        name: value
        for name, value in os.environ.items()
        if name not in {"DATABASE_URL", "DJANGO_SETTINGS_MODULE"}
    }
    environment |= {"NATCH_DATA": str(tmp_path), "NATCH_OWNER_PASSWORD": PASSWORD}
    django = [sys.executable, "-m", "django"]
    settings = {"DJANGO_SETTINGS_MODULE": "studio.project.settings", "PYTHONPATH": str(ROOT)}
    for words in (["migrate", "-v", "0"], ["found", "north-shed", "maud"]):
        subprocess.run([*django, *words], env={**environment, **settings}, cwd=ROOT, check=True)
    run = "import sys; from studio.project import up; up.main(sys.argv[1:])"
    with subprocess.Popen(
        [sys.executable, "-c", run, "--no-demo", "--port", str(port), "--data", str(tmp_path)],
        cwd=ROOT,
        env=environment,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    ) as process:
        assert until(lambda: is_answered(port), within_s=60)
        yield process.pid, port
        process.terminate()


def is_answered(port: int) -> bool:
    try:
        return Phone(port).ask("GET", "/healthz")[0] == 200
    except OSError:
        return False


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


class TestKilledProcesses:
    def test_lose_no_answered_act_and_double_none(self, installation: tuple[int, int]) -> None:
        supervisor, port = installation
        phone = Phone(port)
        phone.sign_in()
        shed = "/api/v1/studios/north-shed"
        itself = act(name="Phone")
        phone.tell(f"{shed}/devices/", itself)
        phone.device = itself["id"]
        place = act(name="Drying room", kind="room")
        phone.tell(f"{shed}/places/", place)
        readings = f"{shed}/places/{place['id']}/readings/"
        is_over = threading.Event()
        answered: list[dict[str, Any]] = []

        def write(writer: int) -> None:
            own = Phone(port, phone.device, dict(phone.cookies))
            for number in range(100_000):
                if is_over.is_set():
                    return
                one = act(air_c=10 + writer + number / 1000, humidity_fraction=0.5)
                own.tell(readings, one)
                answered.append(one)

        with ThreadPoolExecutor(WRITERS) as writers:
            writing = [writers.submit(write, writer) for writer in range(WRITERS)]
            try:
                for victim in VICTIMS:
                    before = len(answered)
                    kill(supervisor, victim)
                    assert until(lambda: len(answered) > before + WRITERS, within_s=60)  # noqa: B023
            finally:
                is_over.set()
            for written in writing:
                written.result()

        kept = [row["air_c"] for row in all_rows(phone, readings)]
        assert sorted(kept) == sorted(one["air_c"] for one in answered)
        entries = all_rows(phone, f"{shed}/journal/")
        numbers = [entry["seq"] for entry in entries]
        assert sorted(numbers) == list(range(1, len(numbers) + 1))
        told = {one["id"] for one in answered}
        assert told <= {entry["id"] for entry in entries}


def kill(supervisor: int, victim: str) -> None:
    """Kill one process of the installation, as soon as there is one of that kind."""
    found: list[int] = []

    def is_found() -> bool:
        mark = MARKS[victim.split(maxsplit=1)[0]]
        found[:] = [child for child, words in children_of(supervisor).items() if mark in words]
        if victim == "web worker":
            found[:] = [worker for master in found for worker in children_of(master)]
        return bool(found)

    assert until(is_found, within_s=60)
    os.kill(found[0], signal.SIGKILL)
