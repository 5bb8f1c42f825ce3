"""What was refused, acts that came too late, and who leaves when."""

from datetime import timedelta

from rest_framework.test import APIClient

from studio.actions import leaving, refused
from studio.models import Device, HeldAct, JournalEntry, Member, NumberBlock, RefusedTry
from studio.tasks import end_memberships
from tests.factories import sent
from tests.pictures import sent_photo

YARD = "/api/v1/studios/yard/"
BLOCKS = f"{YARD}number-blocks/"


def leave(owner, member, leaves_at):
    body = {"leaves_at": leaves_at.isoformat() if leaves_at else None}
    return sent(owner[1], f"{YARD}members/{member.pk}/leaving/", body)


def phone_of(joined):
    """Register a phone, and let the client name it from then on."""
    pk = sent(joined[1], f"{YARD}devices/", {"name": "phone"}).json()["id"]
    joined[1].credentials(HTTP_X_NATCH_DEVICE=pk)
    return pk


def shed_phone(owner, held_by):
    made = sent(owner[1], f"{YARD}devices/", {"name": "shed phone", "is_shared": True}).json()
    client = APIClient()
    client.credentials(
        HTTP_AUTHORIZATION=f"Device {made['key']}", HTTP_X_NATCH_MEMBER=str(held_by.pk)
    )
    return made["device"]["id"], client


def answer(owner, held_id, is_taken):
    return sent(owner[1], f"{YARD}held-acts/{held_id}/answers/", {"is_taken": is_taken})


class TestRefusedList:
    def test_works(self, owner, helper):
        phone = phone_of(helper)
        sent(helper[1], f"{YARD}invitations/", {"roles": ["owner"]})

        (row,) = owner[1].get(f"{YARD}refused/").json()["results"]

        assert row["member"]["first_name"] == "Hal"
        assert row["device"] == Device.objects.get(pk=phone).name
        assert (row["code"], row["needed"]) == ("not-permitted", "manage_members")
        assert (row["method"], row["path"]) == ("POST", f"{YARD}invitations/")

    def test_tells_of_history_that_somebody_would_delete(self, owner, helper):
        helper[1].delete(f"{YARD}journal/")

        (row,) = owner[1].get(f"{YARD}refused/").json()["results"]

        assert (row["code"], row["method"]) == ("method-not-allowed", "DELETE")

    def test_is_for_the_owner(self, helper):
        assert helper[1].get(f"{YARD}refused/").status_code == 403

    def test_holds_a_thumb_that_repeats_once(self, owner, helper):
        for _ in range(3):
            sent(helper[1], f"{YARD}invitations/", {"roles": ["owner"]})

        assert RefusedTry.objects.count() == 1

    def test_cannot_be_flooded(self, owner, helper):
        for number in range(refused.MOST_AN_HOUR + 5):
            helper[1].delete(f"{YARD}pieces/{number:08}-0000-7000-8000-000000000000/")

        assert RefusedTry.objects.count() == refused.MOST_AN_HOUR


class TestLeaving:
    def test_works(self, owner, maker, clock):
        leaves_at = clock.now + timedelta(days=14)

        told = leave(owner, maker[0], leaves_at)
        before = maker[1].get(f"{YARD}members/").status_code
        clock.move(days=14)
        end_memberships()

        assert (told.status_code, told.json()["has_left"]) == (201, False)
        assert before == 200
        assert maker[1].get(f"{YARD}members/").status_code == 404
        assert Member.objects.get(pk=maker[0].pk).left_at == leaves_at
        assert JournalEntry.objects.filter(verb="leaves").exists()

    def test_may_be_thought_better_of(self, owner, maker, clock):
        leave(owner, maker[0], clock.now + timedelta(days=1))

        leave(owner, maker[0], None)

        assert leaving.end_due(at=clock.move(days=2)) == 0

    def test_refuses_the_last_owner(self, studio, owner, clock):
        founder = Member.objects.get(studio=studio, first_name="Founder")
        leave(owner, founder, clock.now + timedelta(days=1))

        told = leave(owner, owner[0], clock.now)

        assert told.json()["type"] == "/problems/last-owner"

    def test_refuses_who_has_left(self, owner, maker, clock):
        leave(owner, maker[0], clock.now)

        assert leave(owner, maker[0], None).json()["type"] == "/problems/left-already"


class TestHeldList:
    def test_works(self, owner, maker, clock):
        phone_of(maker)
        before = clock.now
        leave(owner, maker[0], clock.move(hours=1))
        clock.move(days=7)

        told = sent(maker[1], BLOCKS, {"series": "T", "happened_at": before.isoformat()})

        assert (told.status_code, told.json()["held"]) == (202, True)
        (row,) = owner[1].get(f"{YARD}held-acts/").json()["results"]
        assert (row["why"], row["member"]["first_name"]) == ("left", "Maud")
        assert row["body"]["series"] == "T"
        assert not NumberBlock.objects.exists()

    def test_holds_nothing_from_after_leaving(self, owner, maker, clock):
        phone_of(maker)
        leave(owner, maker[0], clock.now)
        clock.move(days=7)

        told = sent(maker[1], BLOCKS, {"series": "T", "happened_at": clock.now.isoformat()})

        assert (told.status_code, told.json()["type"]) == (403, "/problems/has-left")
        assert not HeldAct.objects.exists()
        assert RefusedTry.objects.get().code == "has-left"

    def test_holds_what_a_phone_had_not_sent_when_it_was_signed_off(self, owner, maker, clock):
        phone, client = shed_phone(owner, maker[0])
        before = clock.now
        clock.move(hours=1)
        owner[1].delete(f"{YARD}devices/{phone}/")

        read = client.get(f"{YARD}members/")
        late = sent(client, BLOCKS, {"series": "T", "happened_at": clock.now.isoformat()})
        told = sent(client, BLOCKS, {"series": "T", "happened_at": before.isoformat()})

        assert (read.status_code, read.json()["type"]) == (401, "/problems/device-signed-off")
        assert late.status_code == 403
        assert RefusedTry.objects.get().code == "device-revoked"
        assert told.status_code == 202
        assert HeldAct.objects.get().why == "signed_off"

    def test_holds_what_ones_own_phone_had_not_sent_when_it_was_signed_off(
        self, owner, maker, clock
    ):
        phone = phone_of(maker)
        before = clock.now
        clock.move(hours=1)
        owner[1].delete(f"{YARD}devices/{phone}/")

        read = maker[1].get(f"{YARD}members/")
        told = [
            sent(maker[1], BLOCKS, {"series": "T", "happened_at": before.isoformat()})
            for _ in range(2)
        ]
        late = sent(maker[1], BLOCKS, {"series": "T", "happened_at": clock.now.isoformat()})

        assert (read.status_code, read.json()["type"]) == (401, "/problems/device-signed-off")
        assert [answer.status_code for answer in told] == [202, 202]
        held = HeldAct.objects.first()
        assert (held.why, str(held.device_id), held.member) == ("signed_off", phone, maker[0])
        assert (late.status_code, late.json()["type"]) == (403, "/problems/device-revoked")
        noted = RefusedTry.objects.get()
        assert (noted.code, str(noted.device_id)) == ("device-revoked", phone)

    def test_says_of_a_photo_that_it_stays_where_it_is(self, owner, maker):
        phone, client = shed_phone(owner, maker[0])
        owner[1].delete(f"{YARD}devices/{phone}/")

        told = sent_photo(client)

        assert (told.status_code, told.json()["type"]) == (403, "/problems/photo-not-held")
        assert not HeldAct.objects.exists()
        assert RefusedTry.objects.get().code == "photo-not-held"

    def test_holds_what_a_leaver_did_on_a_shared_phone(self, owner, maker, clock):
        _, client = shed_phone(owner, maker[0])
        before = clock.now
        leave(owner, maker[0], clock.move(hours=1))

        read = client.get(f"{YARD}members/")
        told = sent(client, BLOCKS, {"series": "T", "happened_at": before.isoformat()})
        late = sent(client, BLOCKS, {"series": "T", "happened_at": clock.now.isoformat()})

        assert (read.status_code, read.json()["type"]) == (401, "/problems/has-left")
        assert (told.status_code, told.json()["why"]) == (202, "left")
        assert (late.status_code, late.json()["type"]) == (403, "/problems/has-left")

    def test_holds_nothing_of_another_studio(self, owner, maker, clock, other_studio):
        phone = phone_of(maker)
        before = clock.now
        clock.move(hours=1)
        owner[1].delete(f"{YARD}devices/{phone}/")

        there = BLOCKS.replace("yard", other_studio.slug)
        told = sent(maker[1], there, {"series": "T", "happened_at": before.isoformat()})

        assert (told.status_code, HeldAct.objects.count()) == (401, 0)


class TestHeldAnswer:
    def held(self, owner, maker, clock):
        phone_of(maker)
        before = clock.now
        leave(owner, maker[0], clock.move(hours=1))
        return sent(maker[1], BLOCKS, {"series": "T", "happened_at": before.isoformat()}).json()[
            "id"
        ]

    def test_works(self, owner, maker, clock):
        held_id = self.held(owner, maker, clock)

        told = answer(owner, held_id, True)

        assert told.status_code == 201, told.content
        entry = JournalEntry.objects.get(pk=held_id)
        assert entry.member == maker[0]
        assert NumberBlock.objects.exists()
        assert owner[1].get(f"{YARD}held-acts/").json()["results"] == []

    def test_may_be_no_and_what_was_sent_stays(self, owner, maker, clock):
        held_id = self.held(owner, maker, clock)

        answer(owner, held_id, False)

        assert not JournalEntry.objects.filter(pk=held_id).exists()
        assert HeldAct.objects.get(pk=held_id).body["series"] == "T"

    def test_is_given_once(self, owner, maker, clock):
        held_id = self.held(owner, maker, clock)
        answer(owner, held_id, False)

        again = answer(owner, held_id, True)

        assert again.json()["type"] == "/problems/held-answered-already"

    def test_is_for_the_owner(self, owner, maker, technician, clock):
        held_id = self.held(owner, maker, clock)

        assert answer(technician, held_id, True).status_code == 403
