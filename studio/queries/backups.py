"""What is known of the backups: the files there are, and what the journal tells of tries."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import takewhile
from pathlib import Path
from typing import Any, Final

from studio.domain import backups as rules
from studio.models import JournalEntry, Studio

BACKED_UP: Final = "backed_up"
BACKUP_FAILED: Final = "backup_failed"
TRIED_BACKUP: Final = "tried_backup"
ASKED: Final = "asked_for_backup"

# Further back than any try that still matters.
LOOK_BACK: Final = timedelta(days=100)


@dataclass(frozen=True, slots=True)
class Kept:
    """A backup in the folder."""

    file: str
    made_at: datetime
    size_bytes: int


@dataclass(frozen=True, slots=True)
class Try:
    """What came of restoring a backup for trial, or of making one: no words when all was well."""

    at: datetime
    file: str
    words: str
    is_good: bool


@dataclass(frozen=True, slots=True)
class History:
    """The backups there are, newest first, and what was told since, newest first."""

    kept: Sequence[Kept]
    failures: Sequence[Try]
    drills: Sequence[Try]
    asked: frozenset[str]

    @property
    def good_at(self) -> datetime | None:
        """When the newest backup was made: what stands in the folder was read back whole."""
        return self.kept[0].made_at if self.kept else None

    @property
    def failing(self) -> list[Try]:
        """The failures since the newest backup."""
        return [one for one in self.failures if self.good_at is None or one.at > self.good_at]

    @property
    def good_drill_at(self) -> datetime | None:
        return next((drill.at for drill in self.drills if drill.is_good), None)

    @property
    def failing_drills(self) -> list[Try]:
        """The bad trials since the last good one."""
        return list(takewhile(lambda drill: not drill.is_good, self.drills))

    def is_old(self, at: datetime) -> bool:
        """Say whether the newest backup is older than a night and a morning."""
        return self.good_at is not None and at - self.good_at > rules.BACKUP_OLD_AFTER

    def is_drill_old(self, at: datetime) -> bool:
        """Say whether it is too long since a backup came back whole."""
        since = self.good_drill_at or (self.kept[-1].made_at if self.kept else None)
        return since is not None and at - since > rules.DRILL_OLD_AFTER


def history(studio: Studio, folder: Path, at: datetime) -> History:
    """Return what is known of the backups in a folder, as the journal of a studio tells it."""
    told = list(
        JournalEntry.objects.of(studio)
        .filter(
            verb__in=(BACKED_UP, BACKUP_FAILED, TRIED_BACKUP, ASKED),
            happened_at__gte=at - LOOK_BACK,
        )
        .order_by("-seq")
        .prefetch_related("notes")
    )
    return History(
        kept=kept_in(folder),
        failures=[_try(entry) for entry in told if entry.verb == BACKUP_FAILED],
        drills=[_try(entry) for entry in told if entry.verb == TRIED_BACKUP],
        asked=_unanswered(told),
    )


def kept_in(folder: Path) -> list[Kept]:
    """Return the backups that stand in a folder, newest first."""
    found = []
    for file in sorted(folder.glob("*.zip"), reverse=True):
        made_at = rules.made_at(file.name)
        if made_at is not None:
            found.append(Kept(file.name, made_at, file.stat().st_size))
    return found


def _try(entry: JournalEntry) -> Try:
    notes: Any = entry.notes.all()
    words = " ".join(note.text for note in notes)
    return Try(entry.happened_at, entry.facts.get("file", ""), words, entry.facts["is_good"])


def _unanswered(told: Sequence[JournalEntry]) -> frozenset[str]:
    """Return what was asked for, of `backup` and `drill`, and nobody has done since."""
    answers = {"backup": {BACKED_UP, BACKUP_FAILED}, "drill": {TRIED_BACKUP}}
    asked = set()
    for what, verbs in answers.items():
        for entry in told:
            if entry.verb in verbs:
                break
            if entry.verb == ASKED and entry.facts["what"] == what:
                asked.add(what)
    return frozenset(asked)
