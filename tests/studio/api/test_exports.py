import csv
import io
import zipfile

import pytest

from pieces.models import Commission
from studio.actions import photos
from studio.domain.photos import develop
from studio.domain.text import fused
from studio.models import Note, Photo
from studio.queries import exports
from tests import factories, pictures
from tests.factories import sent

PATH = "/api/v1/studios/yard/exports/"
# What table programs take for a sum, and what only looks like one that was defused.
NAMES = ['=HYPERLINK("http://quay.test","tile")', "+44 blue", "@lid", "'=1", "-3 shelf", "T26"]
NOTE = '\tto the left of the\ndoor, "wet"'


@pytest.fixture
def archive(studio, owner, settings, tmp_path, other_studio):
    settings.MEDIA_ROOT = str(tmp_path)
    for name in NAMES:
        factories.design(studio, name=name)
    factories.design(other_studio, name="Theirs")
    place = factories.place(studio, "out of doors")
    sent(owner[1], f"/api/v1/studios/yard/places/{place.pk}/readings/", {"air_c": -3.5})
    photos.add(
        act=factories.act(owner[0], note=NOTE),
        developed=develop(pictures.from_a_camera()),
    )
    answer = owner[1].get(PATH)
    assert answer.status_code == 200
    return zipfile.ZipFile(io.BytesIO(answer.getvalue()))


def rows(archive, name):
    text = archive.read(name).decode()
    return list(csv.DictReader(io.StringIO(text, newline="")))


class TestExports:
    def test_give_names_that_are_no_sums_and_read_back_as_they_were_typed(self, archive):
        told = [row["name"] for row in rows(archive, "design.csv")]

        assert not [name for name in told if name[0] in "=+-@\t\r"]
        assert sorted(fused(name) for name in told) == sorted(NAMES)
        assert [fused(row["text"]) for row in rows(archive, "note.csv")] == [NOTE]

    def test_leave_negative_numbers_as_they_are(self, archive):
        (row,) = rows(archive, "climatereading.csv")

        assert row["air_c"] == "-3.5"

    def test_hold_the_limits_of_this_studio_and_nothing_of_another(self, archive, studio):
        assert [row["studio_id"] for row in rows(archive, "studiosettings.csv")] == [str(studio.pk)]
        assert "Theirs" not in archive.read("design.csv").decode()

    def test_hold_the_photos_under_their_digest(self, archive):
        (row,) = rows(archive, "photo.csv")

        assert f"photos/{Photo.objects.get().sha256}-image.jpg" in archive.namelist()
        assert row["sha256"] == Photo.objects.get().sha256

    def test_hold_no_key_password_or_pin(self, archive):
        columns = {
            column
            for name in archive.namelist()
            if name.endswith(".csv")
            for column in archive.read(name).decode().splitlines()[0].split(",")
        }

        assert "first_name" in columns
        assert not {c for c in columns if "hash" in c or "password" in c or "token" in c}
        assert "accesstoken.csv" not in archive.namelist()

    def test_are_for_owners_only(self, studio, maker, technician):
        assert maker[1].get(PATH).status_code == 403
        assert technician[1].get(PATH).status_code == 403


class TestModels:
    def test_are_of_every_app_each_under_a_name_of_its_own(self):
        names = [exports.name_of(model) for model in exports.models()]

        assert len(names) == len(set(names))
        assert {model._meta.app_label for model in exports.models()} == {
            "studio",
            "moulds",
            "pieces",
            "firings",
        }
        assert {Note, Commission} <= set(exports.models())
