import ast
import fcntl
import importlib.util
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from studio.project import bootstrap
from studio.project.bootstrap import ROOT, Setup
from studio.project.steps import CannotGoOn, StepFailed

NO_PACKAGES = ("Installing_Python_packages", "Installing_Python_packages_with_pip")


class Recorder:
    """Stands for the commands of the set-up: notes each, and fails the ones it is told to."""

    def __init__(self, python: Path, failing: dict[str, str] | None = None) -> None:
        self.python = python
        self.failing = failing or {}
        self.titles: list[str] = []
        self.log = Path("set-up.log")

    def run(self, title: str, command: Any, **_: Any) -> str:
        self.titles.append(title)
        if title in self.failing:
            raise StepFailed(self.failing[title])
        if title == "Making .venv":
            self.python.parent.mkdir(parents=True)
            self.python.touch()
        return ""


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    locks = tmp_path / "studio" / "project"
    locks.mkdir(parents=True)
    for name in ("requirements.txt", "requirements-dev.txt", "requirements-uv.txt"):
        (locks / name).write_text(f"{name}==1\n")
    return tmp_path


def set_up(checkout: Path, **failing: str) -> tuple[Setup, Recorder]:
    setup = Setup(checkout)
    named = {title.replace("_", " "): output for title, output in failing.items()}
    recorder = Recorder(setup.python, named)
    setup.steps = recorder  # type: ignore[assignment]
    return setup, recorder


class TestPrepare:
    def test_makes_a_venv_and_installs_the_lock(self, checkout: Path) -> None:
        setup, steps = set_up(checkout)

        has_changed = setup.prepare(is_dev=False, has_pages=False)

        assert has_changed
        assert steps.titles == ["Making .venv", "Installing uv", "Installing Python packages"]

    def test_does_nothing_the_second_time(self, checkout: Path) -> None:
        set_up(checkout)[0].prepare(is_dev=False, has_pages=False)
        setup, steps = set_up(checkout)

        has_changed = setup.prepare(is_dev=False, has_pages=False)

        assert not has_changed
        assert steps.titles == []

    def test_installs_again_when_the_lock_changed(self, checkout: Path) -> None:
        set_up(checkout)[0].prepare(is_dev=False, has_pages=False)
        (checkout / "studio" / "project" / "requirements.txt").write_text("other==2\n")
        setup, steps = set_up(checkout)

        setup.prepare(is_dev=False, has_pages=False)

        assert steps.titles[-1] == "Installing Python packages"

    def test_keeps_what_the_tests_need_once_they_ran(self, checkout: Path) -> None:
        set_up(checkout)[0].prepare(is_dev=True, has_pages=False)
        setup, steps = set_up(checkout)

        has_changed = setup.prepare(is_dev=False, has_pages=False)

        assert not has_changed
        assert steps.titles == []

    @pytest.mark.parametrize("failing", ["Installing_uv", "Installing_Python_packages"])
    def test_installs_with_pip_where_uv_cannot(self, checkout: Path, failing: str) -> None:
        setup, steps = set_up(checkout, **{failing: "No matching distribution found"})

        setup.prepare(is_dev=False, has_pages=False)

        assert steps.titles[-1] == "Installing Python packages with pip"

    @pytest.mark.parametrize(
        ("output", "reason"),
        [
            ("error sending request\n  cause: dns error: failed to lookup", "does not answer"),
            ("Max retries exceeded (Caused by NewConnectionError('…'))", "does not answer"),
            ("SSL: CERTIFICATE_VERIFY_FAILED", "that this machine does not trust"),
            ("ERROR: Hash of the download does not match", "Hash of the download"),
        ],
    )
    def test_says_in_a_sentence_why_it_failed(
        self, checkout: Path, output: str, reason: str
    ) -> None:
        setup, _ = set_up(checkout, **dict.fromkeys(NO_PACKAGES, output))

        with pytest.raises(CannotGoOn, match=reason) as refusal:
            setup.prepare(is_dev=False, has_pages=False)

        assert "\n" not in str(refusal.value)

    def test_tries_again_after_a_failed_install(self, checkout: Path) -> None:
        setup, _ = set_up(checkout, **dict.fromkeys(NO_PACKAGES, "dns error"))
        with pytest.raises(CannotGoOn):
            setup.prepare(is_dev=False, has_pages=False)
        setup, steps = set_up(checkout)

        setup.prepare(is_dev=False, has_pages=False)

        assert steps.titles[-1] == "Installing Python packages"

    def test_names_the_missing_venv_module(self, checkout: Path, monkeypatch: Any) -> None:
        find = importlib.util.find_spec
        monkeypatch.setattr(
            importlib.util, "find_spec", lambda name: None if name == "ensurepip" else find(name)
        )
        setup, steps = set_up(checkout)

        with pytest.raises(CannotGoOn, match=r"no ensurepip module.*apt install python3"):
            setup.prepare(is_dev=False, has_pages=False)

        assert steps.titles == []

    def test_waits_for_another_set_up(self, checkout: Path) -> None:
        script = (
            "import sys; from pathlib import Path; from studio.project.bootstrap import Setup\n"
            "with Setup(Path(sys.argv[1]))._alone(): print('mine')"
        )
        folder = os.open(checkout, os.O_RDONLY)
        fcntl.flock(folder, fcntl.LOCK_EX)

        with subprocess.Popen(
            [sys.executable, "-c", script, str(checkout)],
            cwd=ROOT,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        ) as second:
            assert second.stderr is not None
            said = second.stderr.readline()
            was_waiting = second.poll() is None
            os.close(folder)
            output, _ = second.communicate(timeout=20)

        assert "waiting for it" in said
        assert was_waiting
        assert output == "mine\n"


class TestManage:
    def test_gives_an_old_python_a_sentence(self) -> None:
        script = (
            "import sys, runpy; sys.version_info = (3, 8, 0); "
            "runpy.run_path('manage.py', run_name='__main__')"
        )

        done = subprocess.run(
            [sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=False
        )

        assert done.returncode == 1
        assert done.stderr == "Natch needs Python 3.11 or newer, but this is Python 3.8.\n"

    def test_can_be_read_by_an_old_python(self) -> None:
        source = (ROOT / "manage.py").read_text(encoding="utf-8")

        ast.parse(source, feature_version=(3, 4))

        assert not any(isinstance(node, ast.JoinedStr) for node in ast.walk(ast.parse(source)))

    def test_needs_nothing_installed_to_start(self) -> None:
        script = (
            "import sys; from studio.project import bootstrap; "
            "print([name for name in ('django', 'celery', 'segno') if name in sys.modules])"
        )

        done = subprocess.run(
            [sys.executable, "-S", "-c", script],
            cwd=ROOT,
            capture_output=True,
            text=True,
            check=True,
        )

        assert done.stdout == "[]\n"


class TestReadDotenv:
    def test_takes_what_the_environment_does_not_say(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        file = tmp_path / ".env"
        file.write_text("# SMTP_HOST=no\nSMTP_HOST='mail.example.org'\nSMTP_PORT=25\n\nodd\n")
        monkeypatch.setenv("SMTP_PORT", "587")
        monkeypatch.setenv("SMTP_HOST", "")
        monkeypatch.delenv("SMTP_HOST")

        bootstrap.read_dotenv(file)

        assert os.environ["SMTP_HOST"] == "mail.example.org"
        assert os.environ["SMTP_PORT"] == "587"
