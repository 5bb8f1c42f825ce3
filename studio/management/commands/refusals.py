"""Lists every way of saying no, for the table in DEVELOPERS.md."""

import importlib
import pkgutil
from collections.abc import Iterator
from typing import Any, Final

from django.conf import settings
from django.core.management.base import BaseCommand, CommandError, CommandParser

from studio.domain.refusals import (
    Conflict,
    Missing,
    NotAllowed,
    Refusal,
    TooLarge,
    Unworkable,
)

APPS: Final = ("studio", "moulds", "pieces", "firings")
KINDS: Final = (NotAllowed, Missing, Conflict, TooLarge, Unworkable)
PAPER: Final = settings.ROOT / "DEVELOPERS.md"
HEADING: Final = "## Saying no\n"
COLUMNS: Final = "| code | kind | title |\n| --- | --- | --- |\n"


class Command(BaseCommand):
    help = "Prints the table of refusals; --write puts it into DEVELOPERS.md."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--write", action="store_true")

    def handle(self, *args: Any, **options: Any) -> None:
        if not options["write"]:
            self.stdout.write(table(), ending="")
            return
        text = PAPER.read_text(encoding="utf-8")
        if HEADING not in text:
            raise CommandError(f"DEVELOPERS.md has no line {HEADING.strip()!r}.")
        PAPER.write_text(with_table(text), encoding="utf-8")


def table() -> str:
    """Return the table of all refusals, by code."""
    rows = sorted((no.code, kind_of(no).__name__, no.title) for no in refusals())
    return COLUMNS + "".join(f"| `{code}` | {kind} | {title} |\n" for code, kind, title in rows)


def with_table(text: str) -> str:
    """Return the paper with the present table in the place of the one it holds, or at the end."""
    before, heading, after = text.partition(HEADING)
    section, next_heading, rest = after.partition("\n## ")
    lines = section.splitlines(keepends=True)
    words = "".join(line for line in lines if not line.startswith("|")).rstrip("\n")
    return f"{before}{heading}{words}\n\n{table()}{next_heading}{rest}"


def refusals() -> list[type[Refusal]]:
    """Return every refusal of the four apps."""
    for app in APPS:
        _load(app)
    return sorted(_below(Refusal), key=lambda no: no.code)


def kind_of(refusal: type[Refusal]) -> type[Refusal]:
    """Return which of the kinds a refusal is, hence which status answers it."""
    return next(kind for kind in KINDS if issubclass(refusal, kind))


def _load(app: str) -> None:
    package = importlib.import_module(app)
    for module in pkgutil.walk_packages(package.__path__, f"{app}."):
        if ".migrations" not in module.name and ".project" not in module.name:
            importlib.import_module(module.name)


def _below(kind: type[Refusal]) -> Iterator[type[Refusal]]:
    for child in kind.__subclasses__():
        if child not in KINDS and child.__module__.partition(".")[0] in APPS:
            yield child
        yield from _below(child)
