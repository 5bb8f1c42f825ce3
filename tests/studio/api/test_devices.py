import pytest
from rest_framework.test import APIClient

from studio.actions import devices
from studio.api.numbers import NumberBlockList
from studio.domain.ids import uuid7
from studio.models import Device, JournalEntry, Replay
from studio.permissions import P
from tests import factories
from tests.factories import sent

PATH = "/api/v1/studios/yard/devices/"
PIN = "4711"


@pytest.fixture
def shed_phone(owner):
    """The key of a shared phone, and its row."""
    answer = sent(owner[1], PATH, {"name": "shed phone", "is_shared": True})
    return answer.json()["key"], Device.objects.get(pk=answer.json()["device"]["id"])


def held_by(shed_phone, member=None, pin=None):
    """Return a client that speaks as the shared phone, for `member` where given."""
    said = {"HTTP_AUTHORIZATION": f"Device {shed_phone[0]}"}
    if member is not None:
        said["HTTP_X_NATCH_MEMBER"] = str(member.pk)
    if pin is not None:
        said["HTTP_X_NATCH_PIN"] = pin
    client = APIClient()
    client.credentials(**said)
    return client


def with_pin(client, pin=PIN):
    client.patch("/api/v1/me/", {"pin": pin}, format="json")


def leased(client):
    return sent(client, "/api/v1/studios/yard/number-blocks/", {"series": "T"})


class TestRegister:
    def test_works(self, maker):
        member, client = maker

        answer = sent(client, PATH, {"name": "Maud's phone"})

        assert answer.status_code == 201
        device = Device.objects.get(pk=answer.json()["device"]["id"])
        assert (device.member, device.name) == (member, "Maud's phone")
        entry = JournalEntry.objects.get(verb="registered_device")
        assert (entry.pk, entry.device) == (device.pk, device)

    def test_lets_acts_be_written_on_it(self, maker):
        device = sent(maker[1], PATH, {"name": "phone"}).json()["id"]
        maker[1].credentials(HTTP_X_NATCH_DEVICE=device)

        act = leased(maker[1]).json()["id"]

        assert str(JournalEntry.objects.get(pk=act).device_id) == device

    def test_may_be_said_again(self, maker):
        first = sent(maker[1], PATH, {"name": "phone"}).json()

        again = sent(maker[1], PATH, {"id": first["id"], "name": "phone"})

        assert again.status_code == 200
        assert again.json()["device"] == first["device"]

    def test_leaves_others_their_ids(self, maker, technician, stranger):
        taken = sent(maker[1], PATH, {"name": "phone"}).json()["id"]

        here = sent(technician[1], PATH, {"id": taken, "name": "phone"})
        there = sent(stranger[1], PATH.replace("yard", "quay"), {"id": taken, "name": "phone"})

        assert here.status_code == 422
        assert there.status_code == 409

    def test_refuses_a_device_it_does_not_know(self, maker):
        maker[1].credentials(HTTP_X_NATCH_DEVICE=str(uuid7()))
        unknown = leased(maker[1])
        maker[1].credentials(HTTP_X_NATCH_DEVICE="my phone")
        unreadable = leased(maker[1])

        assert (unknown.status_code, unreadable.status_code) == (404, 400)
        assert unknown.json()["type"] == "/problems/device-unknown"


class TestList:
    def test_shows_ones_own_and_owners_all(self, owner, maker, technician):
        for _, client in (maker, technician):
            sent(client, PATH, {"name": "phone"})

        assert len(maker[1].get(PATH).json()["results"]) == 1
        assert len(owner[1].get(PATH).json()["results"]) == 2

    def test_takes_as_many_queries_for_many(self, owner, maker, django_assert_max_num_queries):
        for _ in range(9):
            factories.device(maker[0])

        with django_assert_max_num_queries(4):
            rows = owner[1].get(PATH).json()["results"]

        assert len(rows) == 9

    def test_hides_the_clockwork(self, studio, owner):
        assert owner[1].get(PATH).json()["results"] == []


class TestRevoke:
    def test_ends_the_session_of_the_device(self, owner, maker):
        device = sent(maker[1], PATH, {"name": "lost phone"}).json()["id"]

        assert owner[1].delete(f"{PATH}{device}/").status_code == 204

        assert maker[1].get("/api/v1/me/").status_code == 401
        assert owner[1].get("/api/v1/me/").status_code == 200

    def test_is_told_once(self, maker, clock):
        device = sent(maker[1], PATH, {"name": "phone"}).json()["id"]
        other = APIClient()
        other.force_login(maker[0].user)

        answers = [other.delete(f"{PATH}{device}/").status_code for _ in range(2)]

        assert answers == [204, 204]
        assert JournalEntry.objects.filter(verb="revoked_device").count() == 1
        other.credentials(HTTP_X_NATCH_DEVICE=device)
        after = {"series": "T", "happened_at": clock.move(minutes=1).isoformat()}
        late = sent(other, "/api/v1/studios/yard/number-blocks/", after)
        assert late.json()["type"] == "/problems/device-revoked"

    def test_lets_its_person_in_again_by_name(self, owner, maker):
        device = sent(maker[1], PATH, {"name": "found phone"}).json()["id"]
        owner[1].delete(f"{PATH}{device}/")
        known = {"username": maker[0].user.get_username(), "password": factories.PASSWORD}

        again = maker[1].post("/api/v1/session/", known, format="json")

        assert again.status_code == 200
        assert sent(maker[1], PATH, {"name": "found phone"}).status_code == 201

    def test_is_not_for_other_members(self, maker, technician):
        device = sent(maker[1], PATH, {"name": "phone"}).json()["id"]

        assert technician[1].delete(f"{PATH}{device}/").status_code == 403


class TestSharedPhone:
    def test_is_made_by_owners(self, maker):
        answer = sent(maker[1], PATH, {"name": "mine", "is_shared": True})

        assert answer.status_code == 403
        assert answer.json()["needed"] == "manage_members"

    def test_shows_its_key_once(self, owner, shed_phone):
        key, device = shed_phone

        again = sent(owner[1], PATH, {"id": str(device.pk), "name": "x", "is_shared": True})

        assert again.status_code == 409
        assert key not in str(list(Device.objects.values())) + str(list(Replay.objects.values()))

    def test_offers_its_people_before_anybody_picked(self, studio, maker, shed_phone):
        told = held_by(shed_phone).get("/api/v1/me/").json()

        assert (told["username"], told["memberships"]) == (None, [])
        assert [p["first_name"] for p in told["device"]["people"]] == ["Founder", "Maud", "Orla"]

    def test_writes_for_who_holds_it(self, maker, shed_phone):
        act = leased(held_by(shed_phone, maker[0])).json()["id"]

        entry = JournalEntry.objects.get(pk=act)
        assert (entry.member, entry.device) == (maker[0], shed_phone[1])

    def test_writes_for_nobody_without_a_name(self, shed_phone, stranger):
        assert leased(held_by(shed_phone)).status_code == 401
        assert leased(held_by(shed_phone, stranger[0])).status_code == 401

    def test_knows_its_own_studio_only(self, maker, shed_phone, other_studio):
        there = factories.member(other_studio, first_name="Maud")
        maker[0].user.memberships.filter(pk=there.pk).update(user=maker[0].user)

        assert held_by(shed_phone, maker[0]).get("/api/v1/studios/quay/").status_code == 404

    def test_shows_no_addresses(self, owner, maker, shed_phone):
        maker[1].patch("/api/v1/me/", {"email": "maud@example.org"}, format="json")
        client = held_by(shed_phone, owner[0])

        answers = [
            client.get(path)
            for path in (
                "/api/v1/me/",
                "/api/v1/studios/yard/members/",
                f"/api/v1/studios/yard/members/{maker[0].pk}/",
            )
        ]

        assert [answer.status_code for answer in answers] == [200, 200, 200]
        assert not any(
            b"email" in answer.content.replace(b"wants_email", b"") for answer in answers
        )

    def test_shows_no_prices(self, owner, shed_phone):
        told = held_by(shed_phone, owner[0]).get("/api/v1/studios/yard/settings/").json()

        assert "wall_limit_mm" in told
        assert not [name for name in told if "minor" in name]

    def test_is_not_for_people_and_papers(self, owner, shed_phone):
        with_pin(owner[1])
        client = held_by(shed_phone, owner[0], pin=PIN)

        answers = [
            client.get("/api/v1/studios/yard/invitations/"),
            sent(client, "/api/v1/studios/yard/tokens/", {"name": "x", "grants": ["see_studio"]}),
            client.patch("/api/v1/me/", {"pin": "0000"}, format="json"),
            client.patch("/api/v1/studios/yard/settings/", {"wall_limit_mm": 5}, format="json"),
        ]

        assert [answer.status_code for answer in answers] == [403] * 4


class TestPin:
    """Kiln work on a shared phone, seen at the base that every endpoint shares."""

    def test_proves_and_forgets_wrong_tries(self, studio, technician, shed_phone):
        _, device = shed_phone
        with_pin(technician[1])
        technician[0].refresh_from_db()

        with pytest.raises(devices.PinWrong) as wrong:
            devices.prove(device=device, member=technician[0], pin="0000")
        devices.prove(device=device, member=technician[0], pin=PIN)

        device.refresh_from_db()
        assert wrong.value.facts == {"tries_left": 4}
        assert device.wrong_pins == 0

    def test_is_needed_for_kiln_work_only(self, studio, technician, shed_phone, kiln_work):
        with_pin(technician[1])

        without = held_by(shed_phone, technician[0])
        answers = [
            leased(without),
            leased(held_by(shed_phone, technician[0], pin="0000")),
            leased(held_by(shed_phone, technician[0], pin=PIN)),
        ]

        assert [answer.status_code for answer in answers] == [403, 403, 201]
        codes = [answer.json()["type"] for answer in answers[:2]]
        assert codes == ["/problems/pin-needed", "/problems/pin-wrong"]
        assert without.get("/api/v1/studios/yard/members/").status_code == 200

    def test_must_have_been_set(self, technician, shed_phone, kiln_work):
        answer = leased(held_by(shed_phone, technician[0], pin=PIN))

        assert answer.json()["type"] == "/problems/pin-not-set"

    def test_gives_no_more_than_the_role(self, maker, shed_phone, kiln_work):
        with_pin(maker[1])

        answer = leased(held_by(shed_phone, maker[0], pin=PIN))

        assert answer.json()["type"] == "/problems/not-permitted"

    def test_locks_the_phone_after_five_wrong_tries(self, owner, technician, shed_phone, kiln_work):
        with_pin(technician[1])
        guessing = held_by(shed_phone, technician[0], pin="0000")

        codes = [leased(guessing).json()["type"] for _ in range(6)]
        right = leased(held_by(shed_phone, technician[0], pin=PIN))
        unlocked = owner[1].patch(f"{PATH}{shed_phone[1].pk}/", {"is_locked": False}, format="json")

        assert codes == ["/problems/pin-wrong"] * 5 + ["/problems/device-locked"]
        assert right.json()["type"] == "/problems/device-locked"
        assert unlocked.json()["device"]["is_locked"] is False
        assert leased(held_by(shed_phone, technician[0], pin=PIN)).status_code == 201

    @pytest.fixture
    def kiln_work(self, monkeypatch):
        """Makes an endpoint one that takes a technician's permission."""
        monkeypatch.setattr(NumberBlockList, "needs", {"POST": P.RECORD_FIRINGS})

    def test_lets_an_owner_reach_others_things(self, owner, maker, shed_phone):
        with_pin(owner[1])
        path = "/api/v1/studios/yard/away/"
        away = {"member_id": str(maker[0].pk), "from_date": "2026-11-02"}
        away["until_date"] = "2026-11-03"

        bare = sent(held_by(shed_phone, owner[0]), path, away)
        proved = sent(held_by(shed_phone, owner[0], pin=PIN), path, away)

        assert bare.json()["type"] == "/problems/pin-needed"
        assert proved.status_code == 201
