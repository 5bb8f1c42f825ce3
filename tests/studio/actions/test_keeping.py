"""Nights on a moved clock: one backup a night, one trial a month, word when it fails."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from django.db import connection

from studio import tasks
from studio.actions import backups, dumps, keeping
from studio.models import JournalEntry, Reminder
from studio.queries import backups as known
from studio.queries import chain
from tests import factories


@pytest.fixture
def night(own_folders, owner, clock):
    """Half past two in the night after the studio was founded, on its own clock."""
    clock.now = datetime(2026, 11, 1, 2, 30, tzinfo=UTC)
    return clock


def told(studio, verb):
    return list(JournalEntry.objects.of(studio).filter(verb=verb).order_by("seq"))


def due(cause):
    return Reminder.objects.filter(cause=cause, state=Reminder.State.DUE)


def newest():
    return max(backups.usual_folder().glob("*.zip"))


def damage(file: Path):
    data = bytearray(file.read_bytes())
    data[len(data) // 3] ^= 0x10
    file.write_bytes(data)


class TestKeep:
    def test_backs_up_once_a_night_and_tries_once_a_month(self, studio, night):
        for _ in range(12):
            for hours in (6, 6 * 24 - 6):
                tasks.keep_backups()
                night.move(hours=hours)

        made = told(studio, known.BACKED_UP)
        tried = told(studio, known.TRIED_BACKUP)
        assert len({entry.facts["file"] for entry in made}) == len(made) == 12
        assert [entry.happened_at.month for entry in tried] == [11, 12, 1]
        assert all(entry.facts["is_good"] for entry in tried)
        assert len(list(backups.usual_folder().glob("*.zip"))) == 12
        assert not chain.faults(studio)
        assert not Reminder.objects.exists()

    def test_leaves_no_database_of_its_trial_behind(self, studio, night):
        tasks.keep_backups()

        assert [file.suffix for file in backups.usual_folder().iterdir()] == [".zip"]
        if connection.vendor == "postgresql":
            with connection.cursor() as cursor:
                cursor.execute("SELECT count(*) FROM pg_database WHERE datname LIKE '%_trial'")
                assert cursor.fetchone() == (0,)

    def test_makes_good_what_the_machine_slept_through(self, studio, night):
        tasks.keep_backups()
        night.move(days=3)

        tasks.keep_backups()

        assert len(told(studio, known.BACKED_UP)) == 2
        assert not Reminder.objects.exists()

    def test_reminds_owners_once_of_a_bad_backup_until_a_newer_one_is_whole(
        self, studio, owner, night
    ):
        tasks.keep_backups()
        damage(newest())
        keeping.ask(act=factories.act(owner[0], at=night.now), what="drill")

        for _ in range(3):
            tasks.keep_backups()
            night.move(hours=1)

        reminder = due("drill_failed").get(person=owner[0])
        assert "damaged" in reminder.body
        assert len(told(studio, known.TRIED_BACKUP)) == 2
        night.move(days=1)
        tasks.keep_backups()
        assert told(studio, known.TRIED_BACKUP)[-1].facts["is_good"]
        assert not due("drill_failed").exists()

    def test_reminds_owners_of_a_backup_that_fails_and_tries_again_each_hour(
        self, studio, owner, night, settings, monkeypatch
    ):
        tasks.keep_backups()
        night.move(days=1)

        def full(file):
            raise dumps.DatabaseNotCopied("SQLite says: database or disk is full.")

        with monkeypatch.context() as patched:
            patched.setattr(dumps, "dumped", full)
            for _ in range(4):
                tasks.keep_backups()
                night.move(minutes=30)

        assert len(told(studio, known.BACKUP_FAILED)) == 2
        assert "disk is full" in due("backup_failed").get(person=owner[0]).body
        night.move(hours=1)
        tasks.keep_backups()
        assert not due("backup_failed").exists()

    @pytest.mark.parametrize(
        ("hours", "cause"), [(36, None), (37, "backup_old"), (35 * 24 + 1, "drill_old")]
    )
    def test_reminds_owners_when_nothing_was_kept_for_long(
        self, studio, owner, night, hours, cause, monkeypatch
    ):
        """As where the sweep runs but thinks nothing due: word does not hang on the same rule."""
        tasks.keep_backups()
        monkeypatch.setattr(keeping, "_is_backup_wanted", lambda *_: False)
        monkeypatch.setattr(keeping, "_is_drill_wanted", lambda *_: False)
        night.move(hours=hours)

        tasks.keep_backups()

        causes = set(Reminder.objects.filter(person=owner[0]).values_list("cause", flat=True))
        assert causes >= {cause} if cause else not causes

    def test_does_what_an_owner_asked_for_out_of_turn_and_once(self, studio, owner, night):
        tasks.keep_backups()
        night.move(hours=1)
        for what in ("backup", "drill"):
            keeping.ask(act=factories.act(owner[0], at=night.now), what=what)

        for _ in range(3):
            tasks.keep_backups()
            night.move(minutes=10)

        assert len(told(studio, known.BACKED_UP)) == 2
        assert len(told(studio, known.TRIED_BACKUP)) == 2

    def test_passes_by_while_another_is_at_it(self, studio, night):
        with backups.alone_in(backups.usual_folder()):
            tasks.keep_backups()

        assert not told(studio, known.BACKED_UP)
        assert not told(studio, known.BACKUP_FAILED)
