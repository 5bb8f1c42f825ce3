"""A backup is made, damaged, and put back, for real and on both databases."""

import shutil
import zipfile
from contextlib import contextmanager
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command
from django.db import DatabaseError, connection, connections

from studio.actions import backups, dumps, photos
from studio.domain.photos import develop
from studio.models import AppendOnly, Photo, PhotoSize
from studio.queries import archives, inventory
from tests import factories, pictures

NOW = factories.NOW
SCRATCH = "natch_test_restored"


@pytest.fixture
def yard(own_folders):
    """A studio with a piece's story, a note and a photo."""
    studio = factories.studio("yard")
    member = factories.member(studio)
    factories.piece(factories.design(studio), member)
    act = factories.act(member, note="on the bench, =HYPERLINK(1)")
    photos.add(act=act, developed=develop(pictures.from_a_camera()))
    return studio


@pytest.fixture
def backup(yard):
    return backups.make(folder=backups.usual_folder(), at=NOW)


@pytest.fixture
def place(tmp_path):
    """Somewhere empty to restore into."""
    if connection.vendor == "sqlite":
        yield str(tmp_path / "restored")
        return
    with connection.cursor() as cursor:
        cursor.execute(f'CREATE DATABASE "{SCRATCH}"')
    yield SCRATCH
    with connection.cursor() as cursor:
        cursor.execute(f'DROP DATABASE "{SCRATCH}" WITH (FORCE)')


def reached(place):
    """Reach what was restored."""
    if connection.vendor == "sqlite":
        return dumps.opened(dumps.file_settings(Path(place) / "natch.sqlite3"))
    return dumps.opened(dumps.named_settings(place))


@contextmanager
def lifted(table):
    """Without the locks of a table, as somebody with the database's password could."""
    with connection.schema_editor() as editor:
        AppendOnly(editor).unlock(table)
    yield
    with connection.schema_editor() as editor:
        AppendOnly(editor).lock(table)


class TestRestore:
    def test_gives_back_every_row_journal_photo_and_lock(self, yard, backup, place, tmp_path):
        before = inventory.rows_by_table("default"), inventory.journal_ends("default")

        call_command("restore", backup, into=place, media=tmp_path / "restored" / "media")

        with reached(place) as using:
            assert (inventory.rows_by_table(using), inventory.journal_ends(using)) == before
            for change in ("UPDATE studio_journalentry SET seq = 9", "DELETE FROM studio_photo"):
                refused = pytest.raises(DatabaseError, match="append-only")
                with refused, connections[using].cursor() as cursor:
                    cursor.execute(change)
            image = Photo.objects.using(using).get().file_name(PhotoSize.IMAGE)
        assert (tmp_path / "restored" / "media" / image).read_bytes() == (
            backups.media_folder() / image
        ).read_bytes()

    def test_is_refused_where_something_is_already(self, backup, place):
        call_command("restore", backup, into=place)

        with pytest.raises(CommandError, match="empty only"):
            call_command("restore", backup, into=place)

    def test_is_refused_to_a_file_with_one_byte_changed(self, backup, place, tmp_path):
        damaged = tmp_path / backup.name
        data = bytearray(backup.read_bytes())
        data[len(data) // 3] ^= 0x10
        damaged.write_bytes(data)

        with pytest.raises(CommandError, match="damaged"):
            call_command("restore", damaged, into=place)

        assert not list(Path(place).glob("*.sqlite3"))

    def test_is_refused_to_a_backup_of_a_newer_natch(self, backup, place, monkeypatch):
        older = inventory.known_migrations() - {max(inventory.migrations("default"))}
        monkeypatch.setattr(inventory, "known_migrations", lambda: older)

        with pytest.raises(CommandError, match="newer Natch"):
            call_command("restore", backup, into=place)

    def test_tells_of_a_lock_that_did_not_come_back(self, yard, place):
        with lifted("studio_journalentry"):
            unlocked = backups.make(folder=backups.usual_folder(), at=NOW)

        with pytest.raises(CommandError, match="studio_journalentry_no_update is missing"):
            call_command("restore", unlocked, into=place)


class TestBackup:
    def test_is_for_our_eyes_only_and_written_over_nothing(self, backup):
        assert backup.stat().st_mode & 0o777 == 0o600
        assert [file.name for file in backup.parent.iterdir()] == [backup.name]

        with pytest.raises(backups.BackupThere):
            backups.make(folder=backup.parent, at=NOW)

    def test_waits_for_another_one(self, backup):
        with backups.alone_in(backup.parent), pytest.raises(backups.BackupUnderWay):
            backups.make(folder=backup.parent, at=NOW)

    def test_says_which_program_is_missing(self, monkeypatch):
        monkeypatch.setattr(shutil, "which", lambda program: None)

        with pytest.raises(dumps.ProgramMissing, match="Install pg_dump"):
            dumps.call("pg_dump", "default", [])

    def test_lists_nothing_that_would_stand_outside_its_folder(self, backup, tmp_path):
        manifest = archives.read(backup)
        crooked = tmp_path / "crooked.zip"
        with zipfile.ZipFile(backup) as whole, zipfile.ZipFile(crooked, "w") as archive:
            told = whole.read(archives.MANIFEST).replace(b'"media/', b'"media/../../')
            archive.writestr(archives.MANIFEST, told)
            for name in manifest.members:
                archive.writestr(name.replace("media/", "media/../../"), whole.read(name))

        with pytest.raises(archives.BackupDamaged, match="outside"):
            archives.read(crooked)


class TestVerify:
    def test_finds_all_as_it_was_written(self, yard, capsys):
        call_command("verify")

        assert "all is as it was written" in capsys.readouterr().out

    def test_tells_of_a_database_that_has_to_be_brought_up_to_date(self, yard, monkeypatch):
        newer = {*inventory.known_migrations(), "studio.9999_from_tomorrow"}
        monkeypatch.setattr(inventory, "known_migrations", lambda: newer)

        with pytest.raises(CommandError, match="older Natch"):
            call_command("verify")

    def test_names_what_is_not(self, yard):
        photo = Photo.objects.get()
        (backups.media_folder() / photo.file_name(PhotoSize.IMAGE)).write_bytes(b"another")
        with lifted("studio_journalentry"), connection.cursor() as cursor:
            cursor.execute("UPDATE studio_journalentry SET verb = 'x' WHERE seq = 1")

        with pytest.raises(CommandError) as refused:
            call_command("verify")

        assert f"Photo {photo.pk} is not what was kept." in str(refused.value)
        assert "Journal of yard, act 1: changed." in str(refused.value)
