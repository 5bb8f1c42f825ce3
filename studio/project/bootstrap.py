"""Makes the checkout ready to run, then runs it: `.venv`, Python packages, the built front end.

Only the standard library: this runs before anything is installed. `manage.py` has checked that
Python is new enough.
"""

import contextlib
import hashlib
import importlib.util
import json
import os
import platform
import sys
from collections.abc import Iterator
from pathlib import Path

from studio.project.node import build_front_end
from studio.project.steps import CannotGoOn, StepFailed, Steps, say, sentence

ROOT = Path(__file__).resolve().parents[2]
LOCKS = Path("studio/project")
PRODUCTION, DEVELOPMENT = "requirements.txt", "requirements-dev.txt"
NEEDS_FRONT_END = {"up", "test"}


def main(words: list[str]) -> None:
    """Make everything ready, then run `manage.py` with the same words inside the venv.

    Comes back only when it already runs there and nothing had to change.
    """
    command = words[1] if len(words) > 1 else ""
    if command != "test":
        read_dotenv(ROOT / ".env")
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.project.settings")
    setup = Setup(ROOT)
    try:
        has_changed = setup.prepare(is_dev=command == "test", has_pages=command in NEEDS_FRONT_END)
    except CannotGoOn as reason:
        sys.exit(str(reason))
    except KeyboardInterrupt:
        sys.exit("Stopped.")
    if has_changed or not setup.is_inside:
        sys.stderr.flush()
        os.execv(setup.python, [str(setup.python), str(ROOT / "manage.py"), *words[1:]])  # noqa: S606


class Setup:
    """The `.venv` of one checkout and what has been put into it, remembered by digests."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.venv = root / ".venv"
        self.python = self.venv / "bin" / "python"
        self.notes = self.venv / "set-up.json"
        self.steps = Steps(self.venv / "set-up.log")

    @property
    def is_inside(self) -> bool:
        """Whether this very process runs in the venv."""
        return Path(sys.prefix).resolve() == self.venv.resolve()

    def prepare(self, *, is_dev: bool, has_pages: bool) -> bool:
        """Bring all that is asked for up to date; say whether the venv changed."""
        if os.name != "posix":
            raise CannotGoOn(f"Natch runs on Linux and macOS, but this is {platform.system()}.")
        with self._alone():
            has_changed = self._prepare_python(is_dev=is_dev)
            if has_pages:
                noted = self._read_notes()
                with self._noting(noted):
                    build_front_end(self.root, self.python, self.steps, noted)
        return has_changed

    @contextlib.contextmanager
    def _alone(self) -> Iterator[None]:
        """Let one set-up work at a time; the folder itself is what is locked."""
        import fcntl  # not to be had on Windows, which has been turned away by now

        try:
            folder = os.open(self.root, os.O_RDONLY)
        except OSError as error:
            raise CannotGoOn(f"{self.root} cannot be read: {error.strerror}.") from error
        try:
            try:
                fcntl.flock(folder, fcntl.LOCK_EX | fcntl.LOCK_NB)
            except OSError:
                say("Another start is setting this checkout up; waiting for it.")
                fcntl.flock(folder, fcntl.LOCK_EX)
            yield
        finally:
            os.close(folder)

    def _read_notes(self) -> dict[str, str]:
        try:
            notes = json.loads(self.notes.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return {}
        return {str(key): str(value) for key, value in notes.items()}

    @contextlib.contextmanager
    def _noting(self, notes: dict[str, str]) -> Iterator[None]:
        before = dict(notes)
        try:
            yield
        finally:
            if notes != before:
                draft = self.notes.with_suffix(".draft")
                draft.write_text(json.dumps(notes), encoding="utf-8")
                draft.replace(self.notes)

    def _prepare_python(self, *, is_dev: bool) -> bool:
        notes = self._read_notes()
        # Who has once run the tests keeps their packages; that lock holds all of the other one.
        is_dev = is_dev or DEVELOPMENT in notes
        lock = DEVELOPMENT if is_dev else PRODUCTION
        digest = digest_of(self._lock(lock))
        if self.python.exists() and notes.get(lock) == digest:
            return False
        say("Setting up Natch; the first time takes a minute or two.")
        self._make_venv()
        notes = self._read_notes()
        with self._noting(notes):
            notes.pop(lock, None)
            self._install(lock)
            notes[lock] = digest
        return True

    def _make_venv(self) -> None:
        works = "import sys, pip; raise SystemExit(sys.version_info < (3, 11))"
        if self.python.exists():
            with contextlib.suppress(StepFailed):
                self.steps.run("Looking at .venv", [self.python, "-c", works])
                return
        for module in ("venv", "ensurepip"):
            if importlib.util.find_spec(module) is None:
                version = ".".join(map(str, sys.version_info[:2]))
                raise CannotGoOn(
                    f"This Python has no {module} module; on Debian or Ubuntu: "
                    f"apt install python{version}-venv"
                )
        try:
            self.steps.run("Making .venv", [sys.executable, "-m", "venv", "--clear", self.venv])
        except StepFailed as failure:
            raise CannotGoOn(
                sentence("Making .venv", "the disk", failure, self.steps.log)
            ) from failure

    def _install(self, lock: str) -> None:
        try:
            self._install_with_uv(lock)
        except StepFailed:
            # No uv for this machine, or an index that only pip has been told of: slower, the same.
            self._install_with_pip(lock)

    def _install_with_uv(self, lock: str) -> None:
        tool = ("--only-binary=:all:", "--require-hashes", "-r", self._lock("requirements-uv.txt"))
        self.steps.run("Installing uv", (*self._pip, *tool))
        uv = self.venv / "bin" / "uv"
        sync = (uv, "pip", "sync", "--python", self.python, "--compile-bytecode")
        trust = {"UV_SYSTEM_CERTS": os.environ.get("UV_SYSTEM_CERTS", "true")}
        command = (*sync, "--require-hashes", self._lock(lock))
        self.steps.run("Installing Python packages", command, environment=trust)

    def _install_with_pip(self, lock: str) -> None:
        command = (*self._pip, "--no-deps", "--require-hashes", "-r", self._lock(lock))
        title = "Installing Python packages with pip"
        try:
            self.steps.run(title, command)
        except StepFailed as failure:
            reason = sentence(
                "Installing Python packages", "the package index", failure, self.steps.log
            )
            raise CannotGoOn(reason) from failure

    @property
    def _pip(self) -> tuple[str | Path, ...]:
        quiet = ("--disable-pip-version-check", "--no-input", "--retries", "2")
        return (self.python, "-m", "pip", "install", *quiet)

    def _lock(self, name: str) -> Path:
        return self.root / LOCKS / name


def digest_of(file: Path) -> str:
    """Return the digest of a file."""
    return hashlib.sha256(file.read_bytes()).hexdigest()


def read_dotenv(file: Path) -> None:
    """Take variables from a `.env`; what the environment says already wins."""
    try:
        lines = file.read_text(encoding="utf-8").splitlines()
    except FileNotFoundError:
        return
    for line in lines:
        name, equals, value = line.strip().partition("=")
        if equals and not name.startswith("#"):
            os.environ.setdefault(name.strip(), value.strip().strip("\"'"))
