"""`manage.py test`: every check of a change, in the order a person would run them.

Words that follow go to pytest alone, on SQLite, for a quick turn; `--postgres` runs the same on
PostgreSQL, `--long` adds the slow tier.
"""

import os
import re
import subprocess
import sys
import time
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from studio.project.node import find_node, install_node
from studio.project.steps import Steps
from tests.services import programs, servers

ROOT = Path(__file__).resolve().parents[1]
PYTHON = sys.executable
LOCKS = [*sorted((ROOT / "studio" / "project").glob("requirements*.txt"))]
HOST = re.compile(r"https?://|--index-url|--find-links|file:")
# The domain and its evaluation know no database, the layout is read from files, and the front
# end's types are made where no server is set (another database has other bounds of whole
# numbers): once is enough.
ASK_NO_DATABASE = [
    "--ignore-glob=*/domain/*",
    "--ignore=tests/evaluation",
    "--ignore=tests/contracts/test_layout.py",
    "--ignore=tests/contracts/test_front_end_types.py",
]
# What each step says for itself: `manage.py` names the product's settings, pytest wants its own.
OURS_TO_SAY = ("DATABASE_URL", "DJANGO_SETTINGS_MODULE")
RESOLVED = re.compile(r'"resolved"\s*:')


@dataclass(frozen=True)
class Step:
    """One check: what it is called and what it runs."""

    title: str
    command: Sequence[str]
    environment: Mapping[str, str] = field(default_factory=dict)
    folder: Path = ROOT


def main(words: list[str]) -> None:
    """Run everything, or only pytest when there is something to pass on to it."""
    wants_long = "--long" in words
    wants_postgres = "--postgres" in words
    rest = [word for word in words if word not in {"--long", "--postgres"}]
    tier = ["-m", ""] if wants_long else []
    try:
        if rest or wants_postgres:
            sys.exit(only_pytest([*tier, *rest], on_postgres=wants_postgres))
        everything(tier)
    except programs.Unobtainable as reason:
        sys.exit(str(reason))
    except KeyboardInterrupt:
        sys.exit("Stopped.")


def only_pytest(words: Sequence[str], *, on_postgres: bool) -> int:
    """Run pytest with these words and return its code."""
    if not on_postgres:
        return run(Step("pytest on SQLite", [PYTHON, "-m", "pytest", *words]))
    with servers.postgres() as url:
        step = Step("pytest on PostgreSQL", [PYTHON, "-m", "pytest", *words], {"DATABASE_URL": url})
        return run(step)


def everything(tier: Sequence[str]) -> None:
    """Run every step; leave when the quick ones failed, or at the first of the long ones."""
    started = time.monotonic()
    say("Obtaining PostgreSQL, Redis and Chromium")
    found = [programs.postgres_folder(), programs.redis_server(), programs.chromium()]
    say("".join(f"  {program}\n" for program in found).rstrip())
    faults = hosts_in_locks()
    if faults:
        sys.exit("\n".join(["The locks name hosts:", *faults]))
    # These are quick and say different things, so that all are heard before the run ends.
    failed = [step.title for step in [*checks(), *front_end()] if run(step) != 0]
    if failed:
        sys.exit(f"Failed: {', '.join(failed)}")
    pytest = [PYTHON, "-m", "pytest", "-q", *tier]
    # In the order of the folders, so that what tells the demo for a folder tells it only once.
    parallel = ["-n", "2", "--dist", "loadfile", "--no-loadscope-reorder"]
    stop_unless_good(
        Step("pytest on SQLite", [*pytest, *parallel, "tests", "--ignore=tests/journeys"])
    )
    with servers.postgres() as url:
        on_postgres = {"DATABASE_URL": url}
        asking = [*pytest, *parallel, "tests", "--ignore=tests/journeys", *ASK_NO_DATABASE]
        stop_unless_good(Step("pytest on PostgreSQL", asking, on_postgres))
        say(f"Everything but the journeys: {time.monotonic() - started:.0f} s")
        journeys = Step("Browser journeys on PostgreSQL", [*pytest, "tests/journeys"], on_postgres)
        stop_unless_good(journeys)


def checks() -> list[Step]:
    """Return the checks of the Python side that need no database."""
    module = [PYTHON, "-m"]
    imports = "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports())"
    return [
        Step("Format", [*module, "ruff", "format", "--check", "."]),
        Step("Lint", [*module, "ruff", "check", "."]),
        Step("Types", [*module, "mypy"]),
        Step("Import contracts", [PYTHON, "-c", imports]),
        Step(
            "Migrations",
            [PYTHON, "manage.py", "makemigrations", "--check", "--dry-run"],
            {"DJANGO_SETTINGS_MODULE": "tests.settings"},
        ),
    ]


def front_end() -> list[Step]:
    """Return the checks of the front end; `manage.py` has installed and built it by now."""
    node = find_node() or install_node(ROOT, Path(PYTHON), Steps(ROOT / ".venv" / "set-up.log"))
    check = [*node.npm, "run", "check"]
    return [Step("Front end", check, node.environment(), ROOT / "frontend")]


def hosts_in_locks() -> list[str]:
    """Return each line of a lock that says where a package is to be fetched."""
    faults = [
        f"{lock.name}:{number}: {line.strip()}"
        for lock in LOCKS
        for number, line in enumerate(lock.read_text(encoding="utf-8").splitlines(), start=1)
        if HOST.search(line)
    ]
    front = ROOT / "frontend" / "package-lock.json"
    if RESOLVED.search(front.read_text(encoding="utf-8")):
        faults.append(f'{front.name}: has "resolved" addresses')
    return faults


def stop_unless_good(step: Step) -> None:
    """Run a step; leave with its code when it fails."""
    code = run(step)
    if code != 0:
        say(f"Failed: {step.title}")
        sys.exit(code)


def run(step: Step) -> int:
    """Run a step under its title and return its code."""
    say(f"\n— {step.title}")
    started = time.monotonic()
    inherited = {name: value for name, value in os.environ.items() if name not in OURS_TO_SAY}
    environment = {**inherited, **step.environment}
    code = subprocess.run(step.command, cwd=step.folder, env=environment, check=False).returncode
    if "pytest" not in step.title and "journeys" not in step.title:
        say(f"  {time.monotonic() - started:.1f} s")
    return code


def say(line: str) -> None:
    """Print a line at once, in order with what the steps print."""
    print(line, file=sys.stderr, flush=True)
