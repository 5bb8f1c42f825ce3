"""Photos over the wire."""

import io
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from rest_framework.test import APIClient

from studio.actions import devices
from studio.domain import photos
from studio.domain.ids import uuid7
from studio.models import JournalEntry, Photo
from tests import factories, pictures
from tests.factories import sent
from tests.pictures import sent_photo

S = "/api/v1/studios/yard/"


@pytest.fixture(autouse=True)
def media(tmp_path: Path, settings: Any) -> Path:
    settings.MEDIA_ROOT = str(tmp_path)
    return tmp_path


@pytest.fixture
def photo_id(helper) -> str:
    answer = sent_photo(helper[1])
    assert answer.status_code == 201, answer.content
    return answer.json()["id"]


def files(media: Path) -> list[Path]:
    return [path for path in media.rglob("*") if path.is_file()]


class TestPhotoList:
    def test_takes_a_photo_from_anybody_here(self, helper, media):
        mine = str(uuid7())

        answer = sent_photo(helper[1], pictures.from_a_camera(3000, 2000), id=mine)

        assert answer.status_code == 201
        told = answer.json()
        assert told["id"] == told["photo"]["id"] == mine
        assert (told["photo"]["width"], told["photo"]["height"]) == (2048, 1365)
        assert told["photo"]["taken_by"] == "Hal"
        entry = JournalEntry.objects.get(pk=mine)
        assert (entry.verb, entry.seq) == ("took_photo", told["journal_seq"])
        assert entry.facts["sha256"] == told["photo"]["sha256"]

    def test_keeps_nothing_of_the_place_on_the_disk(self, photo_id, media):
        kept = files(media)

        assert len(kept) == 2
        assert not any(b"Exif" in path.read_bytes() for path in kept)
        assert not any(b"Box Camera" in path.read_bytes() for path in kept)

    def test_does_the_same_once_when_it_is_sent_twice(self, maker, media):
        mine = str(uuid7())
        first = sent_photo(maker[1], id=mine, sent_at="2026-10-31T09:00:00Z")

        again = sent_photo(maker[1], id=mine, sent_at="2026-10-31T09:20:00Z")

        assert again.status_code == 201
        assert again["Idempotent-Replay"] == "true"
        assert again.json() == first.json()
        assert Photo.objects.count() == 1

    def test_refuses_another_photo_under_the_same_id(self, maker):
        mine = str(uuid7())
        sent_photo(maker[1], id=mine)

        answer = sent_photo(maker[1], pictures.from_a_camera(80, 80), id=mine)

        assert answer.status_code == 422
        assert answer.json()["type"] == "/problems/act-id-reused"

    def test_keeps_the_same_picture_once_however_often_it_comes(self, maker, media):
        sent_photo(maker[1])
        sent_photo(maker[1])

        assert Photo.objects.count() == 2
        assert len(files(media)) == 2

    def test_refuses_what_is_too_large_to_read(self, maker, media):
        answer = sent_photo(maker[1], b"\xff" * (photos.BYTES_MOST + 200_000))

        assert answer.status_code == 413
        assert answer["Content-Type"] == "application/problem+json"
        assert answer.json()["type"] == "/problems/photo-too-large"
        assert files(media) == []

    def test_refuses_what_is_a_little_too_large(self, maker):
        answer = sent_photo(maker[1], b"\xff" * (photos.BYTES_MOST + 1))

        assert answer.status_code == 413
        assert answer.json()["most_bytes"] == photos.BYTES_MOST

    def test_refuses_a_bomb(self, maker, media):
        answer = sent_photo(maker[1], pictures.bomb(60_000, 60_000))

        assert answer.status_code == 413
        assert files(media) == []

    @pytest.mark.parametrize(
        ("data", "code"),
        [
            (b"a text named .jpg", "not-a-photo"),
            (pictures.from_a_camera()[:200], "not-a-photo"),
            (b"\0\0\0\x18ftypheic" + b"\0" * 40, "photo-is-heic"),
        ],
    )
    def test_says_what_cannot_be_read(self, maker, data, code):
        answer = sent_photo(maker[1], data)

        assert answer.status_code == 422
        assert answer.json()["type"] == f"/problems/{code}"
        assert Photo.objects.count() == 0

    def test_names_the_field_that_is_missing(self, maker):
        said = {"id": str(uuid7()), "happened_at": factories.NOW.isoformat()}

        answer = maker[1].post(f"{S}photos/", said, format="multipart")

        assert answer.status_code == 400
        assert [e["pointer"] for e in answer.json()["errors"]] == ["#/photo"]

    def test_reads_forms_only(self, maker):
        assert sent(maker[1], f"{S}photos/", {}).status_code == 415

    def test_is_for_browsers_with_a_page_of_ours_only(self, maker):
        client = APIClient(enforce_csrf_checks=True)
        client.force_login(maker[0].user)

        answer = sent_photo(client)

        assert answer.status_code == 403
        assert answer.json()["type"] == "/problems/csrf-failed"

    def test_takes_one_on_a_shared_phone(self, owner, maker):
        _, key = devices.share(act=factories.act(owner[0]), name="Shed phone")
        phone = APIClient(HTTP_AUTHORIZATION=f"Device {key}", HTTP_X_NATCH_MEMBER=str(maker[0].pk))

        answer = sent_photo(phone)

        assert answer.status_code == 201
        shown = phone.get(f"{S}photos/{answer.json()['id']}/image/")
        assert shown.status_code == 200
        assert shown["Content-Type"] == "image/jpeg"

    def test_lists_the_newest_first(self, maker):
        early = sent_photo(maker[1], happened_at="2026-10-30T09:00:00Z").json()["id"]
        late = sent_photo(maker[1], happened_at="2026-10-31T08:00:00Z").json()["id"]

        listed = maker[1].get(f"{S}photos/").json()["results"]

        assert [row["id"] for row in listed] == [late, early]

    def test_lists_with_a_fixed_number_of_queries(self, maker, django_assert_max_num_queries):
        for _ in range(8):
            sent_photo(maker[1])

        with django_assert_max_num_queries(8):
            listed = maker[1].get(f"{S}photos/").json()["results"]

        assert len(listed) == 8


class TestPhotoOne:
    def test_tells_of_it(self, maker, photo_id):
        told = maker[1].get(f"{S}photos/{photo_id}/").json()

        assert (told["width"], told["height"]) == (60, 40)

    def test_hides_it_alike_from_strangers_and_whoever_guesses(self, maker, stranger, photo_id):
        theirs = sent_photo(stranger[1], slug="quay").json()["id"]

        answers = [
            client.get(f"{S}photos/{pk}/{end}")
            for client, pk in (
                (maker[1], uuid7()),
                (maker[1], theirs),
                (stranger[1], photo_id),
                (stranger[1], uuid7()),
            )
            for end in ("", "image/", "thumbnail/")
        ]

        assert {answer.status_code for answer in answers} == {404}
        assert {answer.json()["type"] for answer in answers} == {"/problems/unknown-thing"}


class TestPhotoImage:
    def test_gives_a_jpeg_to_who_is_here(self, technician, maker):
        big = sent_photo(maker[1], pictures.from_a_camera(3000, 1500)).json()["id"]

        answer = technician[1].get(f"{S}photos/{big}/image/")

        assert answer.status_code == 200
        image = Image.open(io.BytesIO(answer.content))
        assert (image.format, image.size) == ("JPEG", (2048, 1024))

    @pytest.mark.parametrize("size", ["image", "thumbnail"])
    def test_is_kept_by_nobody_between(self, maker, photo_id, size):
        answer = maker[1].get(f"{S}photos/{photo_id}/{size}/")

        assert answer["Cache-Control"].startswith("private")
        assert answer["X-Content-Type-Options"] == "nosniff"
        assert {"Cookie", "X-Natch-Member"} <= set(answer["Vary"].split(", "))

    def test_is_not_for_who_left(self, maker, photo_id):
        maker[0].left_at = factories.NOW
        maker[0].save()

        assert maker[1].get(f"{S}photos/{photo_id}/image/").status_code == 404

    def test_says_that_its_file_was_lost(self, maker, photo_id, media):
        for path in files(media):
            path.unlink()

        answer = maker[1].get(f"{S}photos/{photo_id}/image/")

        assert answer.status_code == 404
        assert answer.json()["type"] == "/problems/photo-file-gone"

    def test_stands_at_no_address_of_its_own(self, maker, photo_id):
        name = Photo.objects.get().file_name("image")

        answers = [maker[1].get(f"/{name}"), maker[1].get(f"/media/{name}")]

        assert all(answer.get("Content-Type") != "image/jpeg" for answer in answers)


class TestPhotoThumbnail:
    def test_is_small(self, maker):
        big = sent_photo(maker[1], pictures.from_a_camera(3000, 1500)).json()["id"]

        answer = maker[1].get(f"{S}photos/{big}/thumbnail/")

        assert Image.open(io.BytesIO(answer.content)).size == (256, 128)


class TestPhotosOfAnAct:
    """Any act may name photos; a place's is the plainest."""

    def shelf(self, client: APIClient, *photo_ids: str) -> Any:
        said = {"name": f"Shelf {uuid7()}", "kind": "shelf", "photo_ids": list(photo_ids)}
        return sent(client, f"{S}places/", said)

    def test_are_found_by_what_it_told_of(self, owner, photo_id):
        place = self.shelf(owner[1], photo_id).json()["id"]

        listed = owner[1].get(f"{S}photos/?subject={place}").json()["results"]

        assert [row["id"] for row in listed] == [photo_id]

    def test_stand_in_the_journal(self, owner, photo_id):
        answer = self.shelf(owner[1], photo_id, photo_id).json()

        told = owner[1].get(f"{S}journal/?subject={answer['id']}").json()["results"][0]

        assert told["photo_ids"] == [photo_id]
        assert told["facts"]["photos"] == [photo_id]

    def test_must_be_of_this_studio(self, owner, stranger):
        theirs = sent_photo(stranger[1], slug="quay").json()["id"]

        answer = self.shelf(owner[1], theirs)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"].startswith("#/photo_ids")

    def test_are_not_without_number(self, owner, photo_id):
        answer = self.shelf(owner[1], *[photo_id] * 13)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["code"] == "too-many"

    def test_answers_what_is_no_id(self, owner):
        answer = owner[1].get(f"{S}photos/?subject=shelf")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/subject"
