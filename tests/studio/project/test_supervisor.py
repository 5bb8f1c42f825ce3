import os
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from studio.project.bootstrap import ROOT
from tests.services.processes import is_alive, until

# Three children: one steady, one that ignores SIGTERM and has a child of its own, one that fails.
SCRIPT = """
import os
import sys
from pathlib import Path
from studio.project.supervisor import Program, Supervisor

folder = Path(sys.argv[1])
steady = "import os, sys, time; open(sys.argv[1], 'a').write(f'{os.getpid()} '); time.sleep(600)"
stubborn = (
    "import os, signal, subprocess, sys, time; signal.signal(signal.SIGTERM, signal.SIG_IGN); "
    "inner = subprocess.Popen([sys.executable, '-c', 'import time; time.sleep(600)']); "
    "open(sys.argv[1], 'a').write(f'{os.getpid()} {inner.pid} '); time.sleep(600)"
)
failing = "import sys; open(sys.argv[1], 'a').write('x '); sys.exit(3)"
programs = [
    Program(name, [sys.executable, "-c", source, str(folder / name)])
    for name, source in (("steady", steady), ("stubborn", stubborn), ("failing", failing))
    if name in sys.argv[2:]
]

def say(line):
    print(line, flush=True)

supervisor = Supervisor(programs, dict(os.environ), folder, folder / "log", say)
supervisor.run(when_started=lambda look: print("started", flush=True))
"""

Start = Callable[..., "subprocess.Popen[str]"]


def words(file: Path) -> list[str]:
    return file.read_text().split() if file.exists() else []


@pytest.fixture
def start(tmp_path: Path) -> Iterator[Start]:
    started: list[subprocess.Popen[str]] = []

    def run(*names: str) -> "subprocess.Popen[str]":
        process = subprocess.Popen(
            [sys.executable, "-c", SCRIPT, str(tmp_path), *names],
            cwd=ROOT,
            stdout=subprocess.PIPE,
            text=True,
        )
        started.append(process)
        return process

    yield run
    for process in started:
        process.kill()
        process.wait()
        if process.stdout:
            process.stdout.close()


class TestSupervisor:
    def test_brings_a_killed_child_back(self, start: Start, tmp_path: Path) -> None:
        start("steady")
        assert until(lambda: len(words(tmp_path / "steady")) == 1)
        first = int(words(tmp_path / "steady")[0])

        os.kill(first, signal.SIGKILL)

        assert until(lambda: len(words(tmp_path / "steady")) == 2)
        assert is_alive(int(words(tmp_path / "steady")[1]))

    def test_ends_what_a_killed_child_left(self, start: Start, tmp_path: Path) -> None:
        start("stubborn")
        assert until(lambda: len(words(tmp_path / "stubborn")) == 2)
        outer, inner = map(int, words(tmp_path / "stubborn"))

        os.kill(outer, signal.SIGKILL)

        assert until(lambda: not is_alive(inner))

    def test_waits_longer_each_time_a_child_fails_at_once(
        self, start: Start, tmp_path: Path
    ) -> None:
        process = start("failing")
        assert process.stdout is not None

        lines = [process.stdout.readline() for _ in range(4)]

        waits = [line.partition(" again in ")[2].partition(" s")[0] for line in lines[1:]]
        assert waits == ["0.5", "1.0", "2.0"]
        assert "code 3" in lines[1]

    @pytest.mark.parametrize(
        ("names", "n_children", "number"),
        [(["steady", "stubborn"], 3, signal.SIGTERM), (["steady"], 1, signal.SIGINT)],
    )
    def test_leaves_no_process_when_told_to_end(
        self,
        start: Start,
        tmp_path: Path,
        names: list[str],
        n_children: int,
        number: signal.Signals,
    ) -> None:
        def children() -> list[int]:
            return [int(word) for name in names for word in words(tmp_path / name)]

        process = start(*names)
        assert until(lambda: len(children()) == n_children)

        process.send_signal(number)
        process.wait(timeout=10)

        assert process.returncode == 0
        assert [child for child in children() if is_alive(child)] == []

    def test_takes_its_children_along_when_killed(self, start: Start, tmp_path: Path) -> None:
        process = start("steady")
        assert until(lambda: len(words(tmp_path / "steady")) == 1)
        child = int(words(tmp_path / "steady")[0])

        process.kill()

        assert until(lambda: not is_alive(child))
