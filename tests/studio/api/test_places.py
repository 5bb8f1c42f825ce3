"""Places over the wire."""

from studio.models import JournalEntry
from tests import factories
from tests.factories import sent

PLACES = "/api/v1/studios/yard/places/"


class TestPlaceList:
    def test_works(self, owner, maker, stranger):
        room = sent(owner[1], PLACES, {"name": "Drying room", "kind": "room"})
        rack = sent(
            owner[1], PLACES, {"name": "Rack A", "kind": "rack", "parent_id": room.json()["id"]}
        )

        listed = maker[1].get(PLACES).json()

        assert (room.status_code, rack.status_code) == (201, 201)
        assert rack.json()["journal_seq"] == room.json()["journal_seq"] + 1
        assert [row["name"] for row in listed["results"]] == ["Drying room", "Rack A"]
        assert listed["results"][1]["parent_id"] == room.json()["id"]
        assert stranger[1].get(PLACES).status_code == 404

    def test_lists_with_a_fixed_number_of_queries(self, owner, django_assert_max_num_queries):
        for number in range(30):
            factories.place(owner[0].studio, f"Shelf {number}")

        with django_assert_max_num_queries(6):
            owner[1].get(PLACES)

    def test_is_the_owners_to_add_to(self, maker):
        assert sent(maker[1], PLACES, {"name": "Attic", "kind": "room"}).status_code == 403

    def test_refuses_a_name_twice(self, owner):
        sent(owner[1], PLACES, {"name": "Attic", "kind": "room"})

        answer = sent(owner[1], PLACES, {"name": "attic", "kind": "room"})

        assert answer.status_code == 409
        assert answer.json()["type"] == "/problems/place-name-taken"

    def test_does_not_know_the_places_of_another_studio(self, owner, other_studio):
        there = factories.place(other_studio)

        body = {"name": "Attic", "kind": "room", "parent_id": str(there.pk)}
        answer = sent(owner[1], PLACES, body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/parent_id"


class TestPlaceOne:
    def test_changes_what_is_said_and_tells_the_journal(self, owner):
        room = factories.place(owner[0].studio, "Room")
        shelf = factories.place(owner[0].studio, "Shelf", kind="shelf")

        answer = owner[1].patch(f"{PLACES}{shelf.pk}/", {"parent_id": str(room.pk)})

        assert answer.status_code == 200
        assert (answer.json()["parent_id"], answer.json()["name"]) == (str(room.pk), "Shelf")
        entry = JournalEntry.objects.get(seq=answer.json()["journal_seq"])
        assert (entry.verb, entry.facts["changed"]) == ("changed_place", ["parent"])

    def test_refuses_to_stand_in_itself(self, owner):
        room = factories.place(owner[0].studio)
        rack = factories.place(owner[0].studio, kind="rack", parent=room)
        shelf = factories.place(owner[0].studio, kind="shelf", parent=rack)

        answer = owner[1].patch(f"{PLACES}{room.pk}/", {"parent_id": str(shelf.pk)})

        assert answer.status_code == 422
        assert answer.json()["type"] == "/problems/place-in-itself"
        room.refresh_from_db()
        assert room.parent_id is None

    def test_refuses_air_that_goes_round_in_a_circle(self, owner):
        room = factories.place(owner[0].studio)
        shed = factories.place(owner[0].studio, air_from=room)

        answer = owner[1].patch(f"{PLACES}{room.pk}/", {"air_from_id": str(shed.pk)})

        assert answer.json()["type"] == "/problems/air-from-itself"

    def test_gives_the_row_as_it_stands_when_it_changed_meanwhile(self, owner):
        made = sent(owner[1], PLACES, {"name": "Attic", "kind": "room"}).json()
        address = f"{PLACES}{made['id']}/"
        tag = owner[1].get(address)["ETag"]
        owner[1].patch(address, {"name": "Loft"}, headers={"If-Match": tag})

        answer = owner[1].patch(address, {"name": "Garret"}, headers={"If-Match": tag})

        assert answer.status_code == 412
        assert answer.json()["current"]["name"] == "Loft"
