"""`manage.py up`: the whole of Natch on this machine, from one command.

The process that stays is the supervisor; Django runs in its children only.
"""

import argparse
import contextlib
import fcntl
import os
import secrets
import socket
import ssl
import subprocess
import sys
import time
import urllib.request
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from signal import SIGTERM
from typing import Final

from studio.project.steps import CannotGoOn, say
from studio.project.supervisor import Program, Supervisor

ROOT: Final = Path(__file__).resolve().parents[2]
DEMO_SLUG: Final = "sallowbeck-yard"
DEMO_MEMBERS: Final = ("odile", "bram", "jun", "nessa", "piet")
READY_WITHIN_S: Final = 60


@dataclass(frozen=True)
class Wish:
    """What the command line asks for."""

    port: int
    is_lan: bool
    has_demo: bool
    data: Path

    @property
    def ports(self) -> list[int]:
        """The ports to be had: the web server's, and the trust page's beside it."""
        return [self.port, self.port + 1] if self.is_lan else [self.port]


def main(words: Sequence[str]) -> None:
    """Run Natch until Ctrl-C."""
    try:
        wish = read(words)
        with alone_on(wish.data) as note:
            run(wish, note)
    except CannotGoOn as reason:
        sys.exit(str(reason))
    except KeyboardInterrupt:
        sys.exit("Stopped.")


def read(words: Sequence[str]) -> Wish:
    """Read the command line."""
    parser = argparse.ArgumentParser(prog="manage.py up", description="Run Natch on this machine.")
    parser.add_argument("--port", type=int, default=8000, help="where it answers (8000)")
    parser.add_argument("--lan", action="store_true", help="serve phones in this network, by https")
    parser.add_argument("--no-demo", action="store_true", help="leave an empty database empty")
    parser.add_argument(
        "--data",
        type=Path,
        default=ROOT / Path(os.environ.get("NATCH_DATA") or "var").expanduser(),
        help="folder of the database and all else that is kept (var/)",
    )
    given = parser.parse_args(words)
    if not 0 < given.port < 65535:
        raise CannotGoOn(f"--port must lie between 1 and 65534, but is {given.port}.")
    data = given.data.expanduser().resolve()
    try:
        data.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise CannotGoOn(f"{data} cannot be made: {error.strerror}.") from error
    return Wish(given.port, given.lan, not given.no_demo, data)


@contextlib.contextmanager
def alone_on(data: Path) -> Iterator[Callable[[str], None]]:
    """Hold the data folder; give a function that notes the address for whoever comes second."""
    try:
        paper = (data / "running").open("a+", encoding="utf-8")
    except OSError as error:
        raise CannotGoOn(f"{data} cannot be written to: {error.strerror}.") from error
    with paper:
        try:
            fcntl.flock(paper, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as error:
            paper.seek(0)
            address = paper.read().strip()
            where = f" at {address}" if address else ""
            raise CannotGoOn(f"Natch already runs on {data}{where}.") from error

        def note(address: str) -> None:
            paper.truncate(0)
            paper.write(address)
            paper.flush()

        note("")
        yield note
        note("")


def run(wish: Wish, note: Callable[[str], None]) -> None:
    """Prepare the database, start every process, print where to go, and stay until told to end."""
    host = "0.0.0.0" if wish.is_lan else "127.0.0.1"  # noqa: S104  (asked for by --lan)
    for port in wish.ports:
        check_port(host, port)
    lan = None
    if wish.is_lan:
        from studio.project import lan as network

        lan = network.prepare(wish.data / "lan", port=wish.port)
    address = lan.address if lan else f"http://localhost:{wish.port}"
    environment = environment_of(wish, address, lan.hosts if lan else [])
    prepare(wish, environment)
    programs = programs_of(f"{host}:{wish.port}", lan.tls_arguments if lan else [])
    if lan:
        programs.append(Program("trust", lan.trust_command))

    def when_started(look: Callable[[], bool]) -> None:
        if wait_until_ready(wish, look):
            note(address)
            lines = [*greeting(wish, address), *(lan.greeting() if lan else [])]
            print("\n".join(lines), flush=True)

    Supervisor(programs, environment, ROOT, wish.data / "log", say).run(when_started=when_started)
    say("Natch has ended.")


def check_port(host: str, port: int) -> None:
    """Raise `CannotGoOn` when the port is not to be had."""
    with socket.socket() as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except PermissionError as error:
            raise CannotGoOn(f"Port {port} needs rights you do not have here.") from error
        except OSError as error:
            raise CannotGoOn(f"Port {port} is taken; choose another with --port.") from error


def environment_of(wish: Wish, address: str, hosts: Sequence[str]) -> dict[str, str]:
    """Return the variables that every child gets."""
    known = os.environ.get("NATCH_HOSTS", "")
    return {
        **os.environ,
        "DJANGO_SETTINGS_MODULE": "studio.project.settings",
        "NATCH_DATA": str(wish.data),
        "NATCH_ADDRESS": os.environ.get("NATCH_ADDRESS") or address,
        "NATCH_HOSTS": ",".join(part for part in (known, *hosts) if part),
        "NUMBA_CACHE_DIR": os.environ.get("NUMBA_CACHE_DIR") or str(wish.data / "numba"),
        "PYTHONUNBUFFERED": "1",
    }


def prepare(wish: Wish, environment: dict[str, str]) -> None:
    """Bring the database up to date; load the demo into an empty one unless told not to."""
    command = [sys.executable, "-m", "studio.project.prepare"]
    password = environment.get("NATCH_DEMO_PASSWORD") or easy_password()
    if wish.has_demo:
        command.append("--demo")
    done = subprocess.run(
        command,
        cwd=ROOT,
        env={**environment, "NATCH_DEMO_PASSWORD": password},
        stdout=subprocess.PIPE,
        text=True,
        check=False,
    )
    if done.returncode != 0:
        raise CannotGoOn("The database could not be made ready; the reason stands above.")
    found = done.stdout.split()
    if "empty" in found:
        say("  There is no studio yet: python3 manage.py found STUDIO USERNAME makes one.")
    if "demo" in found:
        file = wish.data / "demo-password"
        file.touch(mode=0o600)
        file.write_text(password, encoding="utf-8")


def easy_password() -> str:
    """Return twelve letters and figures that are hard to mistake, in threes."""
    letters = "abcdefghjkmnpqrstuvwxyz23456789"
    return "-".join("".join(secrets.choice(letters) for _ in range(3)) for _ in range(4))


def programs_of(bind: str, tls: Sequence[str]) -> list[Program]:
    """Return what runs: the web server, two workers and the clock."""
    python = sys.executable
    celery = [python, "-m", "celery", "-A", "studio.project.celery:app"]
    lean = ["--without-gossip", "--without-mingle", "--without-heartbeat", "-l", "WARNING"]
    web = [python, "-m", "gunicorn", "-c", "python:studio.project.web", "--bind", bind, *tls]
    worker = [*celery, "worker", "-P", "threads", *lean]
    return [
        Program("web", [*web, "studio.project.wsgi:application"], when_orphaned=SIGTERM),
        Program("quick", [*worker, "-Q", "quick", "-c", "4", "-n", "quick@natch"]),
        Program("work", [*worker, "-Q", "work", "-c", "2", "-n", "work@natch"]),
        Program("clock", [*celery, "beat", "-l", "WARNING", "--pidfile="]),
    ]


def wait_until_ready(wish: Wish, look: Callable[[], bool]) -> bool:
    """Wait until the web server answers; say whether it does."""
    scheme = "https" if wish.is_lan else "http"
    # It asks this machine itself, whose certificate names other addresses first.
    anything = ssl._create_unverified_context() if wish.is_lan else None  # noqa: S323
    limit_s = time.monotonic() + READY_WITHIN_S
    while time.monotonic() < limit_s:
        if look():
            return False
        with contextlib.suppress(OSError):
            url = f"{scheme}://127.0.0.1:{wish.port}/healthz"
            with urllib.request.urlopen(url, timeout=2, context=anything):  # noqa: S310
                return True
        time.sleep(0.1)
    say(f"The web server does not answer yet; see {wish.data / 'log' / 'web.log'}.")
    return True


def greeting(wish: Wish, address: str) -> list[str]:
    """Return the lines that say where to go and who may sign in."""
    lines = ["", f"Natch is up:  {address}"]
    with contextlib.suppress(FileNotFoundError):
        password = (wish.data / "demo-password").read_text(encoding="utf-8").strip()
        lines += [
            f"Demo studio:  {DEMO_SLUG}",
            f"Sign in as:   {'  '.join(DEMO_MEMBERS)}",
            f"Password:     {password}",
        ]
    return [*lines, "Ctrl-C ends it.", ""]
