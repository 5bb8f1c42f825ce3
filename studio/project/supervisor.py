"""Starts the processes of an installation, starts again what dies, and ends them all.

Only the standard library, so that the process which lives longest stays small. Each child leads a
process group of its own: a Ctrl-C reaches the supervisor alone, and what a dead child left behind
can be ended with its group.
"""

import contextlib
import ctypes
import os
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from types import FrameType
from typing import Final

STEADY_AFTER_S: Final = 30.0
LONGEST_WAIT_S: Final = 30.0
GRACE_S: Final = 6.0
LOOK_EVERY_S: Final = 0.2
LOG_LIMIT_BYTES: Final = 8_000_000
PR_SET_PDEATHSIG: Final = 1  # linux/prctl.h


@dataclass(frozen=True)
class Program:
    """What to run, and the signal it gets should the supervisor be killed."""

    name: str
    command: Sequence[str]
    when_orphaned: signal.Signals = signal.SIGKILL


@dataclass
class Child:
    """A program's present process and how often it had to be started."""

    program: Program
    process: subprocess.Popen[bytes] | None = None
    started_at_s: float = 0.0
    start_again_at_s: float = 0.0
    early_deaths: int = 0


@dataclass
class Supervisor:
    """Keeps programs running until a signal says stop."""

    programs: Sequence[Program]
    environment: Mapping[str, str]
    folder: Path
    logs: Path
    say: Callable[[str], None]
    children: list[Child] = field(init=False)
    is_stopping: bool = field(init=False, default=False)
    is_hurried: bool = field(init=False, default=False)

    def __post_init__(self) -> None:
        self.children = [Child(program) for program in self.programs]
        self.logs.mkdir(parents=True, exist_ok=True)

    def run(self, *, when_started: Callable[[Callable[[], bool]], None]) -> None:
        """Run until SIGINT or SIGTERM, then end every child.

        `when_started` is called once the children are started, with a function that says whether to
        give up waiting.
        """
        for number in (signal.SIGINT, signal.SIGTERM):
            signal.signal(number, self._stop)
        if signal.getsignal(signal.SIGHUP) is not signal.SIG_IGN:  # as nohup asks
            signal.signal(signal.SIGHUP, self._stop)
        try:
            for child in self.children:
                self._start(child)
            when_started(self._look)
            while not self.is_stopping:
                self._look()
                time.sleep(LOOK_EVERY_S)
        finally:
            self._end_all()

    def _stop(self, number: int, frame: FrameType | None) -> None:
        self.is_hurried = self.is_stopping
        self.is_stopping = True

    def _start(self, child: Child) -> None:
        log = self.logs / f"{child.program.name}.log"
        with log.open("ab") as output:
            child.process = subprocess.Popen(
                child.program.command,
                cwd=self.folder,
                env=dict(self.environment),
                stdin=subprocess.DEVNULL,
                stdout=output,
                stderr=subprocess.STDOUT,
                start_new_session=True,
                preexec_fn=_dies_with_parent(child.program.when_orphaned),  # noqa: PLW1509
            )
        child.started_at_s = time.monotonic()

    def _look(self) -> bool:
        """Start again what died, after a pause that grows; say whether all is ending."""
        now_s = time.monotonic()
        for child in self.children:
            if self.is_stopping:
                break
            if child.process is None:
                if now_s >= child.start_again_at_s:
                    self._start(child)
            elif child.process.poll() is not None:
                self._bury(child, now_s)
            _keep_short(self.logs / f"{child.program.name}.log")
        return self.is_stopping

    def _bury(self, child: Child, now_s: float) -> None:
        if child.process is None:
            return
        _signal_group(child.process.pid, signal.SIGKILL)
        lived_long = now_s - child.started_at_s > STEADY_AFTER_S
        child.early_deaths = 0 if lived_long else child.early_deaths + 1
        wait_s = min(LONGEST_WAIT_S, 0.5 * 2 ** max(0, child.early_deaths - 1))
        child.start_again_at_s = now_s + wait_s
        log = self.logs / f"{child.program.name}.log"
        self.say(
            f"{child.program.name} ended ({_how(child.process.returncode)}); "
            f"starting it again in {wait_s:.1f} s. Its log: {log}"
        )
        child.process = None

    def _end_all(self) -> None:
        running = [child.process for child in self.children if child.process is not None]
        for process in running:
            with contextlib.suppress(ProcessLookupError):
                process.terminate()
        limit_s = time.monotonic() + GRACE_S
        while time.monotonic() < limit_s and not self.is_hurried:
            if all(process.poll() is not None for process in running):
                break
            time.sleep(0.05)
        for process in running:
            _signal_group(process.pid, signal.SIGKILL)
            process.wait()


def _dies_with_parent(number: signal.Signals) -> Callable[[], None] | None:
    """Return what makes a child get `number` when its parent is killed; Linux only."""
    if not sys.platform.startswith("linux"):
        return None
    library = ctypes.CDLL(None, use_errno=True)
    parent = os.getpid()

    def ask() -> None:
        library.prctl(PR_SET_PDEATHSIG, int(number), 0, 0, 0)
        if os.getppid() != parent:  # it died in between
            os.kill(os.getpid(), signal.SIGKILL)

    return ask


def _signal_group(group: int, number: signal.Signals) -> None:
    with contextlib.suppress(ProcessLookupError, PermissionError):
        os.killpg(group, number)


def _how(code: int) -> str:
    if code < 0:
        with contextlib.suppress(ValueError):
            return f"by {signal.Signals(-code).name}"
    return f"code {code}"


def _keep_short(log: Path) -> None:
    """Move a long log aside; the child goes on writing at the new end of the same file."""
    with contextlib.suppress(FileNotFoundError):
        if log.stat().st_size > LOG_LIMIT_BYTES:
            shutil.copyfile(log, log.with_suffix(".log.1"))
            os.truncate(log, 0)
