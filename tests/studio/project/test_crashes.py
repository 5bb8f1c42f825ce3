"""What a killed process costs: nothing that was answered, and nothing twice."""

import os
import re
import signal
import subprocess
import sys
import threading
import uuid
from collections import Counter
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from celery import Celery

import studio.project.celery  # noqa: F401  (names the folder as a queue)
from studio.project.bootstrap import ROOT
from tests.services import servers
from tests.services.fixtures import free_port
from tests.services.phones import PASSWORD, Phone, act, all_rows
from tests.services.processes import children_of, run_script, until

SHED = "/api/v1/studios/north-shed"
WRITERS = 3
TILES = [f"W{number}" for number in range(8)]
# What is killed, one after the other: each time while the phones go on writing.
VICTIMS = ("web worker", "web", "quick", "work", "clock", "web worker", "web")
# What the clock sets off every minute; here all the time, as often as the workers can.
SWEEPS = {
    "pieces.tasks.set_reminders": "quick",
    "studio.tasks.send_due_reminders": "quick",
    "pieces.tasks.refresh_all_forecasts": "work",
}
# A mould, eight tiles whose windows opened since they were first reckoned, and five kilns to mind.
PREPARE = """
import django, json
django.setup()
from datetime import timedelta
from django.utils import timezone
from pieces.actions import forecasts
from studio.actions.reminders import About, set_for
from studio.domain.ids import uuid7
from studio.models import Member, Studio
from tests.pieces.kit import kit, pressed_tile
studio, now = Studio.objects.get(slug="north-shed"), timezone.now()
Member.objects.filter(user__username="maud").update(email="maud@yard.example")
owner, its = Member.objects.get(user__username="maud"), kit(studio)
for number in range(8):
    pressed_tile(its, owner, at=now - timedelta(hours=5, minutes=number), mark=f"W{number}")
forecasts.refresh(studio=studio, at=now - timedelta(hours=4, minutes=50))
for number in range(5):
    about = About("hot_kiln", "A", "place", uuid7(), f"K{number}", title=f"Kiln K{number} is hot.")
    set_for(studio=studio, person=owner, about=about, due_at=now, at=now)
mould = its.tile_mould
ids = {"set": mould.casting.mould_set_id, "casting": mould.casting.pk, "design": its.tile.pk}
print(json.dumps({**ids, "parts": [part.pk for part in mould.parts]}, default=str))
"""
LOOK = """
import django, json
django.setup()
from moulds.models import MouldPart, Pressing
from pieces.models import Part, Piece
from studio.models import JournalEntry, Reminder, Studio
from studio.queries import chain
studio = Studio.objects.get(slug="north-shed")
found = {
    "faults": [str(fault) for fault in chain.faults(studio)],
    "entries": list(JournalEntry.objects.order_by("seq").values_list("id", "seq")),
    "presses": list(MouldPart.objects.values_list("casting__mould_set__label", "presses")),
    "pressings": list(Pressing.objects.values_list("id", flat=True)),
    "marks": list(Piece.objects.values_list("mark", "suffix")),
    "parts": Part.objects.count(),
    "told": list(Reminder.objects.values_list("object_mark", "cause")),
}
print(json.dumps(found, default=str))
"""
MARKS = {"web": "gunicorn", "quick": "quick@natch", "work": "work@natch", "clock": " beat "}


@dataclass
class Installation:
    """The running product, with what was there before it ran."""

    supervisor: int
    port: int
    data: Path
    environment: dict[str, str]
    mould: dict[str, Any]

    def asked(self, script: str) -> Any:
        """Return what a script says of the database."""
        return run_script(script, self.environment)


@pytest.fixture
def topology(request: pytest.FixtureRequest) -> Iterator[dict[str, str]]:
    """Give the variables of what the product stands on: embedded, unless a test says otherwise."""
    if getattr(request, "param", "embedded") == "embedded":
        yield {}
        return
    with servers.postgres() as database, servers.redis() as queue:
        yield {"DATABASE_URL": database, "REDIS_URL": queue}


@pytest.fixture
def installation(tmp_path: Path, topology: dict[str, str]) -> Iterator[Installation]:
    """Run the product on a studio of one owner, with a mould and some tiles."""
    port = free_port()
    environment = {
        name: value
        for name, value in os.environ.items()
        if name not in {"DATABASE_URL", "DJANGO_SETTINGS_MODULE", "REDIS_URL", "SMTP_HOST"}
    }
    environment |= {"NATCH_DATA": str(tmp_path), "NATCH_OWNER_PASSWORD": PASSWORD, **topology}
    django = [sys.executable, "-m", "django"]
    settings = {"DJANGO_SETTINGS_MODULE": "studio.project.settings", "PYTHONPATH": str(ROOT)}
    for words in (["migrate", "-v", "0"], ["found", "north-shed", "maud"]):
        subprocess.run([*django, *words], env={**environment, **settings}, cwd=ROOT, check=True)
    mould = run_script(PREPARE, {**environment, **settings})
    run = "import sys; from studio.project import up; up.main(sys.argv[1:])"
    with subprocess.Popen(
        [sys.executable, "-c", run, "--no-demo", "--port", str(port), "--data", str(tmp_path)],
        cwd=ROOT,
        env=environment,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    ) as process:
        assert until(lambda: is_answered(port), within_s=60)
        yield Installation(process.pid, port, tmp_path, {**environment, **settings}, mould)
        process.terminate()


def is_answered(port: int) -> bool:
    try:
        return Phone(port).ask("GET", "/healthz")[0] == 200
    except OSError:
        return False


@dataclass
class Writer:
    """Writes acts until told to stop: a reading, a press of the mould, a reading …"""

    phone: Phone
    room: str
    mould: dict[str, Any]
    number: int
    is_over: threading.Event
    read: list[dict[str, Any]]
    pressed: list[dict[str, Any]]

    def write(self) -> None:
        for count in range(100_000):
            if self.is_over.is_set():
                return
            one = act(air_c=10 + self.number + count / 1000, humidity_fraction=0.5)
            self.phone.tell(f"{SHED}/places/{self.room}/readings/", one)
            self.read.append(one)
            pressing = self.pressing(f"X{self.number}{count}")
            self.phone.tell(f"{SHED}/mould-sets/{self.mould['set']}/pressings/", pressing)
            self.pressed.append(pressing)

    def pressing(self, mark: str) -> dict[str, Any]:
        piece = {"id": str(uuid.uuid4()), "mark": mark, "design_id": self.mould["design"]}
        return act(
            casting_id=self.mould["casting"],
            mould_part_ids=self.mould["parts"],
            parts=[{"id": str(uuid.uuid4()), "role": "tile", "piece": piece}],
        )


def sweep(installation: Installation, is_over: threading.Event) -> int:
    """Ask for the clock's sweeps over and over; return how often."""
    queue = installation.data / "queue"
    broker = installation.environment.get("REDIS_URL", "folder://")
    app = Celery("sweeper", broker=broker, set_as_current=False)
    if broker == "folder://":
        folders = {"data_folder_in": "messages", "data_folder_out": "messages"}
        folders |= {"processed_folder": "taken", "control_folder": "control"}
        options = {name: str(queue / folder) for name, folder in folders.items()}
        app.conf.broker_transport_options = options
    asked = 0
    while not is_over.wait(0.4):
        for task, lane in SWEEPS.items():
            app.send_task(task, queue=lane, expires=20)
        asked += 1
    app.close()
    return asked


class TestKilledProcesses:
    def test_lose_no_answered_act_and_double_none(self, installation: Installation) -> None:
        kill_while_writing(installation, VICTIMS)

    @pytest.mark.slow
    @pytest.mark.parametrize("topology", ["embedded", "PostgreSQL and Redis"], indirect=True)
    def test_lose_and_double_nothing_all_day(self, installation: Installation) -> None:
        kill_while_writing(installation, VICTIMS * 2)


def kill_while_writing(installation: Installation, victims: Sequence[str]) -> None:
    """Kill one process after the other while phones write, and see what came of it all."""
    phone = Phone(installation.port)
    phone.sign_in()
    itself = act(name="Phone")
    phone.tell(f"{SHED}/devices/", itself)
    phone.device = itself["id"]
    place = act(name="Drying room", kind="room")
    phone.tell(f"{SHED}/places/", place)
    is_over = threading.Event()
    read: list[dict[str, Any]] = []
    pressed: list[dict[str, Any]] = []
    writers = [
        Writer(
            phone=Phone(installation.port, phone.device, dict(phone.cookies)),
            room=place["id"],
            mould=installation.mould,
            number=number,
            is_over=is_over,
            read=read,
            pressed=pressed,
        )
        for number in range(WRITERS)
    ]

    with ThreadPoolExecutor(WRITERS + 1) as threads:
        sweeping = threads.submit(sweep, installation, is_over)
        writing = [threads.submit(writer.write) for writer in writers]
        try:
            for victim in victims:
                before = len(read)
                kill(installation.supervisor, victim)
                assert until(lambda: len(read) > before + WRITERS, within_s=60)  # noqa: B023
            due = f"{SHED}/reminders/?state=due"
            assert until(lambda: len(all_rows(phone, due)) >= 8 + 5, within_s=60)
        finally:
            is_over.set()
        for written in writing:
            written.result()
        assert sweeping.result() > 10

    kept = [row["air_c"] for row in all_rows(phone, f"{SHED}/places/{place['id']}/readings/")]
    assert sorted(kept) == sorted(one["air_c"] for one in read)
    found = installation.asked(LOOK)
    assert found["faults"] == []
    assert [seq for _, seq in found["entries"]] == list(range(1, len(found["entries"]) + 1))
    heard = Counter(entry for entry, _ in found["entries"])
    assert all(heard[one["id"]] == 1 for one in [*read, *pressed])
    assert_worn_once(found, pressed)
    assert_told_once(found, installation.data / "mail")


def assert_worn_once(found: dict[str, Any], pressed: list[dict[str, Any]]) -> None:
    """Each press wore the mould by one and made one piece of one part."""
    count = 8 + len(pressed)
    presses = {n for label, n in found["presses"] if label == "M01"}
    assert presses == {count}
    assert len(found["pressings"]) == count
    assert {one["id"] for one in pressed} < set(found["pressings"])
    assert found["parts"] == len(found["marks"]) == count
    assert {suffix for _, suffix in found["marks"]} == {""}


def assert_told_once(found: dict[str, Any], mails: Path) -> None:
    """Each tile has one reminder, and each kiln stands in one message, sent again or not."""
    told = Counter(mark for mark, _ in found["told"])
    assert {mark: told[mark] for mark in TILES} == dict.fromkeys(TILES, 1)
    text = "".join(file.read_text(encoding="utf-8") for file in mails.iterdir())
    sent = set(re.findall(r"Subject: Now: Kiln (K\d) is hot\.(?s:.*?)Message-ID: (\S+)", text))
    assert sent
    assert max(Counter(kiln for kiln, _ in sent).values()) == 1


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
