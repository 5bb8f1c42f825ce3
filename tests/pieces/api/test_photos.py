from studio.domain.ids import uuid7
from studio.models import JournalEntry
from tests import factories, pictures
from tests.pictures import sent_photo
from tests.pieces.kit import part_of, pressed_tile

S = "/api/v1/studios/yard/"


def told(client, piece, what, **body):
    return factories.sent(client, f"{S}pieces/{piece.pk}/{what}/", body)


def whole(client, piece):
    return client.get(f"{S}pieces/{piece.pk}/").json()


class TestPiecePhotoList:
    def test_shows_the_newest_first(self, kit, maker, technician):
        piece = pressed_tile(kit, maker[0])
        early = sent_photo(maker[1], happened_at="2026-10-30T09:00:00Z").json()["id"]
        late = sent_photo(technician[1], pictures.from_a_camera(80, 80)).json()["id"]

        answers = [
            told(client, piece, "photos", photo_ids=[photo])
            for client, photo in ((technician[1], late), (maker[1], early))
        ]

        assert [answer.status_code for answer in answers] == [201, 201]
        assert answers[1].json()["photo_ids"] == [late, early]
        assert whole(maker[1], piece)["photo_ids"] == [late, early]

    def test_wants_a_photo(self, kit, maker):
        piece = pressed_tile(kit, maker[0])

        for body in ({}, {"photo_ids": []}):
            answer = told(maker[1], piece, "photos", **body)

            assert answer.status_code == 400
            assert answer.json()["errors"][0]["pointer"] == "#/photo_ids"

    def test_names_no_photo_of_another_studio(self, kit, maker, stranger):
        piece = pressed_tile(kit, maker[0])
        theirs = sent_photo(stranger[1], slug="quay").json()["id"]

        answers = [told(maker[1], piece, "photos", photo_ids=[pk]) for pk in (theirs, str(uuid7()))]

        assert [answer.status_code for answer in answers] == [400, 400]
        details = [answer.json()["errors"][0]["detail"] for answer in answers]
        assert details[0] == details[1]

    def test_lets_it_go_from_the_piece_when_it_is_taken_back(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        photo = sent_photo(maker[1]).json()["id"]
        shown = told(maker[1], piece, "photos", photo_ids=[photo]).json()["id"]

        back = factories.sent(maker[1], f"{S}retractions/", {"corrects": shown})

        assert back.status_code == 201
        answer = whole(maker[1], piece)
        assert answer["photo_ids"] == []
        taken_back = next(row for row in answer["story"] if row["id"] == shown)
        assert (taken_back["is_taken_back"], taken_back["photo_ids"]) == (True, [photo])
        assert maker[1].get(f"{S}photos/{photo}/image/").status_code == 200

    def test_leaves_the_photo_itself_for_ever(self, kit, maker):
        photo = sent_photo(maker[1]).json()["id"]

        back = factories.sent(maker[1], f"{S}retractions/", {"corrects": photo})

        assert back.status_code == 422
        assert back.json()["concerns"] == ["photo"]


class TestPhotosOfActs:
    def test_come_with_a_crack_and_a_loss(self, kit, maker, technician):
        piece = pressed_tile(kit, maker[0])
        crack, broken = (sent_photo(technician[1]).json()["id"] for _ in range(2))
        events = f"{S}parts/{part_of(piece, 'tile').pk}/events/"

        cracked = factories.sent(technician[1], events, {"kind": "cracked", "photo_ids": [crack]})
        lost = {"stage": "lost", "state": "scrapped", "cause": "cracked", "photo_ids": [broken]}
        scrapped = told(maker[1], piece, "stage-events", **lost)

        assert (cracked.status_code, scrapped.status_code) == (201, 201)
        rows = maker[1].get(f"{S}pieces/{piece.pk}/history/").json()["results"]
        assert {row["verb"]: row["photo_ids"] for row in rows} == {
            "scrapped": [broken],
            "cracked": [crack],
            "pressed": [],
        }

    def test_come_with_a_check(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        photo = sent_photo(maker[1]).json()["id"]

        answer = told(maker[1], piece, "checks", feel="soft", photo_ids=[photo])

        assert answer.status_code == 201
        entry = JournalEntry.objects.get(pk=answer.json()["id"])
        assert entry.facts["photos"] == [photo]
