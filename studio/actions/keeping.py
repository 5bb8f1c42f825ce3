"""Backing up every night, trying a backup every month, and telling owners when it was not done.

A backup is of everything there is: each studio's journal tells of it, and the clock of the oldest
studio says when it is night.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Final, Literal
from zoneinfo import ZoneInfo

from django.db import transaction

from studio.actions import backups, drills, journal, reminders
from studio.actions.reminders import About
from studio.domain import backups as rules
from studio.domain.ids import uuid7
from studio.domain.refusals import Refusal
from studio.models import Act, JournalEntry, Studio
from studio.permissions import Role
from studio.queries import backups as known
from studio.queries.people import clockwork, with_role

What = Literal["backup", "drill"]
CAUSES: Final = ("backup_failed", "backup_old", "drill_failed", "drill_old")


@dataclass(frozen=True, slots=True)
class _Told:
    """Something to tell owners, and since when it is so."""

    cause: str
    since: datetime
    title: str
    body: str


@transaction.atomic
def ask(*, act: Act, what: What) -> JournalEntry:
    """Ask for a backup or a trial out of turn; the sweep sees that it was asked."""
    subjects = [("studio", act.studio.pk)]
    return journal.write(act=act, verb=known.ASKED, subjects=subjects, facts={"what": what})


def keep(*, at: datetime) -> None:
    """Make a backup, try one and remind the owners, each where it is due."""
    studios = list(Studio.objects.select_related("settings").order_by("pk"))
    if not studios:
        return
    folder, zone = backups.usual_folder(), ZoneInfo(studios[0].zone)
    try:
        if _is_backup_wanted(_histories(studios, folder, at), zone, at):
            _back_up(studios, folder, at)
        if _is_drill_wanted(_histories(studios, folder, at), zone, at):
            _drill(studios, folder, at)
    except backups.BackupUnderWay:
        return
    for studio in studios:
        _remind(studio, known.history(studio, folder, at), at)


def _histories(studios: Sequence[Studio], folder: Path, at: datetime) -> list[known.History]:
    return [known.history(studio, folder, at) for studio in studios]


def _is_backup_wanted(histories: list[known.History], zone: ZoneInfo, at: datetime) -> bool:
    first = histories[0]
    failed_at = first.failing[0].at if first.failing else None
    return any("backup" in one.asked for one in histories) or rules.is_backup_due(
        at, zone=zone, good_at=first.good_at, failed_at=failed_at
    )


def _is_drill_wanted(histories: list[known.History], zone: ZoneInfo, at: datetime) -> bool:
    first = histories[0]
    if not first.kept:
        return False
    last = first.drills[0] if first.drills else None
    return any("drill" in one.asked for one in histories) or rules.is_drill_due(
        at,
        zone=zone,
        newest=first.kept[0].file,
        tried=last.file if last else "",
        tried_at=last.at if last else None,
        good=last is not None and last.is_good,
    )


def _back_up(studios: Sequence[Studio], folder: Path, at: datetime) -> None:
    try:
        file = backups.make(folder=folder, at=at)
    except backups.BackupUnderWay:
        raise
    except Refusal as refusal:
        words = f"{refusal.title} {refusal.detail}"
        facts: dict[str, object] = {"is_good": False, "code": refusal.code}
        _tell(studios, known.BACKUP_FAILED, facts, words=words, at=at)
        return
    backups.prune(folder)
    facts = {"is_good": True, "file": file.name, "bytes": file.stat().st_size}
    _tell(studios, known.BACKED_UP, facts, words="", at=at)


def _drill(studios: Sequence[Studio], folder: Path, at: datetime) -> None:
    file = folder / known.kept_in(folder)[0].file
    faults = drills.drill(file)
    facts = {"is_good": not faults, "file": file.name, "faults": len(faults)}
    _tell(studios, known.TRIED_BACKUP, facts, words="\n".join(faults[:5])[:1000], at=at)


@transaction.atomic
def _tell(
    studios: Sequence[Studio], verb: str, facts: Mapping[str, object], *, words: str, at: datetime
) -> None:
    for studio in studios:
        member, device = clockwork(studio)
        act = Act(uuid7(), studio, member, device, happened_at=at, written_at=at, note=words)
        journal.write(act=act, verb=verb, subjects=[("studio", studio.pk)], facts=facts)


def _remind(studio: Studio, history: known.History, at: datetime) -> None:
    told = list(_to_tell(history, at))
    still = {(one.cause, studio.pk) for one in told}
    reminders.withdraw_all_but(studio=studio, causes=CAUSES, still=still)
    for one in told:
        about = About(
            cause=one.cause,
            grade="C",
            kind="studio",
            object_id=studio.pk,
            mark=studio.name,
            title=one.title,
            body=one.body,
            link="/backups",
        )
        for person in with_role(studio, Role.OWNER):
            reminders.set_for(studio=studio, person=person, about=about, due_at=one.since, at=at)


def _to_tell(history: known.History, at: datetime) -> Iterator[_Told]:
    if history.failing:
        first, last = history.failing[-1], history.failing[0]
        yield _Told("backup_failed", first.at, "The backup failed", last.words)
    elif history.is_old(at) and history.good_at is not None:
        since = history.good_at + rules.BACKUP_OLD_AFTER
        body = "Look whether the machine is on at night and has room."
        yield _Told("backup_old", since, "The newest backup is older than a day and a half", body)
    if history.failing_drills:
        first, last = history.failing_drills[-1], history.failing_drills[0]
        title = f"A backup did not come back whole: {last.file}"
        yield _Told("drill_failed", first.at, title, last.words)
    elif history.is_drill_old(at):
        since = (history.good_drill_at or history.kept[-1].made_at) + rules.DRILL_OLD_AFTER
        body = "Ask for a trial: a backup that was never restored is a hope."
        yield _Told("drill_old", since, "No backup was tried for more than a month", body)
