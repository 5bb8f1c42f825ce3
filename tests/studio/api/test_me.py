import pytest

from studio.models import Member
from studio.permissions import GRANTS, Role
from tests import factories

PATH = "/api/v1/me/"


def changed(client, **body):
    return client.patch(PATH, body, format="json")


class TestRead:
    def test_works(self, maker, studio):
        member, client = maker

        told = client.get(PATH).json()

        assert told["username"] == member.user.username
        (membership,) = told["memberships"]
        assert membership["studio"]["zone"] == "Europe/London"
        assert membership["member"]["grants"] == sorted(GRANTS[Role.MAKER])
        assert membership["member"]["units"] == {"length": "mm", "mass": "g", "temperature": "c"}
        assert (membership["member"]["theme"], membership["member"]["text"]) == ("phone", 100)

    def test_tells_of_every_studio_but_those_left(self, maker, other_studio, now):
        member, client = maker
        there = factories.member(other_studio, first_name="Maud")
        Member.objects.filter(pk=there.pk).update(user=member.user)

        both = client.get(PATH).json()["memberships"]
        Member.objects.filter(pk=there.pk).update(left_at=now)
        one = client.get(PATH).json()["memberships"]

        assert [m["studio"]["slug"] for m in both] == ["quay", "yard"]
        assert [m["studio"]["slug"] for m in one] == ["yard"]


class TestChange:
    def test_works(self, maker):
        member, client = maker

        answer = changed(
            client,
            units={"length": "in", "temperature": "f"},
            left_handed=True,
            theme="shed",
            text=200,
            quiet_from="21:00",
            email="maud@example.org",
        )

        assert answer.status_code == 200
        told = answer.json()["memberships"][0]["member"]
        assert told["units"] == {"length": "in", "mass": "g", "temperature": "f"}
        assert (told["left_handed"], told["theme"], told["text"]) == (True, "shed", 200)
        member.refresh_from_db()
        assert (member.quiet_from.hour, member.email) == (21, "maud@example.org")

    def test_keeps_a_pin_as_a_hash(self, maker):
        member, client = maker

        told = changed(client, pin="4711").json()["memberships"][0]["member"]

        member.refresh_from_db()
        assert told["has_pin"] is True
        assert "4711" not in member.pin_hash
        assert changed(client, pin="").json()["memberships"][0]["member"]["has_pin"] is False

    @pytest.mark.parametrize(
        ("body", "pointer"),
        [
            ({"pin": "12"}, "#/pin"),
            ({"text": 300}, "#/text"),
            ({"units": {"length": "ell"}}, "#/units/length"),
            ({"email": "nowhere"}, "#/email"),
            ({"quiet_from": "25:00"}, "#/quiet_from"),
        ],
    )
    def test_names_the_field_it_cannot_read(self, maker, body, pointer):
        answer = changed(maker[1], **body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer

    def test_knows_no_studio_of_strangers(self, maker, other_studio):
        assert changed(maker[1], studio="quay", text=150).status_code == 404
