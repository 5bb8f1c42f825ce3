import os
import signal
import socket
import ssl
import subprocess
import sys
import time
import urllib.request
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from studio.project import lan, up
from studio.project.bootstrap import ROOT
from studio.project.steps import CannotGoOn
from tests.services.fixtures import free_port
from tests.services.processes import children_of, is_alive, until

RUN = "import sys; from studio.project import up; up.main(sys.argv[1:])"

Start = Callable[..., "subprocess.Popen[str]"]


@pytest.fixture
def start() -> Iterator[Start]:
    started: list[subprocess.Popen[str]] = []

    def run(*words: str, **variables: str) -> "subprocess.Popen[str]":
        kept = {
            name: value
            for name, value in os.environ.items()
            if name not in {"DATABASE_URL", "DJANGO_SETTINGS_MODULE", "NATCH_DATA"}
        }
        environment = {**kept, **variables}
        process = subprocess.Popen(
            [sys.executable, "-c", RUN, *words],
            cwd=ROOT,
            env=environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
        )
        started.append(process)
        return process

    yield run
    for process in started:
        process.terminate()
        process.wait(timeout=15)
        if process.stdout:
            process.stdout.close()


def lines_until(process: "subprocess.Popen[str]", words: str) -> list[str]:
    assert process.stdout is not None
    lines = []
    for line in process.stdout:
        lines.append(line)
        if line.startswith(words):
            break
    return lines


def answers(port: int) -> bool:
    try:
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/healthz", timeout=2) as answer:
            return bool(answer.read() == b"up\n")
    except OSError:
        return False


class TestUp:
    def test_serves_brings_back_and_ends(self, start: Start, tmp_path: Path) -> None:
        port = free_port()
        process = start("--no-demo", "--port", str(port), "--data", str(tmp_path))
        said = lines_until(process, "Ctrl-C ends it")
        assert any(f"Natch is up:  http://localhost:{port}" in line for line in said)
        assert answers(port)
        children = children_of(process.pid)
        assert len(children) == 4
        web = next(child for child, command in children.items() if "gunicorn" in command)

        os.kill(web, signal.SIGKILL)

        assert until(lambda: web not in children_of(process.pid))
        assert until(lambda: len(children_of(process.pid)) == 4)
        assert until(lambda: answers(port))
        all_of_them = list(children_of(process.pid))
        started_s = time.monotonic()
        process.send_signal(signal.SIGINT)
        process.wait(timeout=15)
        assert time.monotonic() - started_s < 10
        assert process.returncode == 0
        assert [child for child in all_of_them if is_alive(child)] == []
        assert not answers(port)

    def test_says_where_it_runs_already(self, start: Start, tmp_path: Path) -> None:
        with up.alone_on(tmp_path) as note:
            note("http://localhost:8000")

            second = start("--no-demo", "--port", str(free_port()), "--data", str(tmp_path))
            said, _ = second.communicate(timeout=20)

        assert second.returncode == 1
        assert said == f"Natch already runs on {tmp_path} at http://localhost:8000.\n"

    def test_says_that_the_port_is_taken(self, start: Start, tmp_path: Path) -> None:
        with socket.create_server(("127.0.0.1", 0)) as taken:
            port = taken.getsockname()[1]

            second = start("--no-demo", "--port", str(port), "--data", str(tmp_path))
            said, _ = second.communicate(timeout=20)

        assert second.returncode == 1
        assert said == f"Port {port} is taken; choose another with --port.\n"

    def test_says_that_the_data_folder_cannot_be_made(self, tmp_path: Path) -> None:
        (tmp_path / "file").touch()

        with pytest.raises(CannotGoOn, match="cannot be made: Not a directory"):
            up.read(["--data", str(tmp_path / "file" / "data")])


class TestLan:
    def test_serves_by_https_with_a_page_that_hands_out_trust(
        self, start: Start, tmp_path: Path
    ) -> None:
        port = free_port()
        words = ("--lan", "--no-demo", "--port", str(port), "--data", str(tmp_path))

        process = start(*words, NATCH_LAN_ADDRESS="127.0.0.1")
        said = "".join(lines_until(process, f"https://127.0.0.1:{port}"))

        trusting = ssl.create_default_context(cafile=str(tmp_path / "lan" / "authority.pem"))
        url = f"https://127.0.0.1:{port}/"
        with urllib.request.urlopen(f"{url}healthz", context=trusting, timeout=5) as answer:
            assert answer.read() == b"up\n"
        with urllib.request.urlopen(f"http://127.0.0.1:{port + 1}/trust", timeout=5) as answer:
            page = answer.read().decode().replace("<wbr>", "")
        fingerprint = said.partition("Compare before trusting: ")[2].split()[0]
        assert fingerprint in page
        assert "█" in said

    def test_needs_an_address_in_a_local_network(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr(lan, "private_addresses", list)

        with pytest.raises(CannotGoOn, match="no address in a local network"):
            lan.prepare(tmp_path, port=8000)

    @pytest.mark.parametrize(
        ("address", "may_be_served"),
        [
            ("192.168.1.20", True),
            ("10.0.0.4", True),
            ("172.31.255.1", True),
            ("172.32.0.1", False),
            ("203.0.113.7", False),
            ("127.0.0.1", False),
        ],
    )
    def test_keeps_to_private_addresses(self, address: str, may_be_served: bool) -> None:
        assert lan.is_private(address) == may_be_served


class TestGreeting:
    def test_names_the_demo_only_where_it_was_loaded(self, tmp_path: Path) -> None:
        wish = up.read(["--data", str(tmp_path)])
        before = up.greeting(wish, "http://localhost:8000")
        (tmp_path / "demo-password").write_text("kab-ceh-mop-tuz")

        after = up.greeting(wish, "http://localhost:8000")

        assert not any("Password" in line for line in before)
        assert "Password:     kab-ceh-mop-tuz" in after
