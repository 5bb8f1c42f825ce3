import pytest
from rest_framework.test import APIClient

from studio.models import Invitation, JournalEntry, Member, Replay
from tests import factories
from tests.factories import sent

PATH = "/api/v1/studios/yard/invitations/"
NEW = {
    "username": "gwen",
    "password": "slip and score",
    "first_name": "Gwen",
    "full_name": "Gwen Slype",
    "initials": "GS",
}


@pytest.fixture
def invitation(owner):
    return sent(owner[1], PATH, {"roles": ["maker", "technician"], "email": "g@example.org"}).json()


def link(invitation):
    return f"/api/v1/invitations/{invitation['token']}/"


def accepted(invitation, client=None, **body):
    path = f"{link(invitation)}acceptance/"
    return (client or APIClient()).post(path, {**NEW, **body}, format="json")


class TestMake:
    def test_works(self, invitation):
        assert invitation["state"] == "open"
        assert invitation["link"] == f"/join/{invitation['token']}"
        assert invitation["expires_at"].startswith("2026-11-07")

    def test_keeps_the_token_nowhere(self, studio, invitation):
        kept = Invitation.objects.values_list("token_hash", flat=True).get()
        told = str(list(JournalEntry.objects.values())) + str(list(Replay.objects.values()))

        assert invitation["token"] not in kept + told

    def test_is_not_repeated(self, owner, invitation):
        again = sent(owner[1], PATH, {"id": invitation["id"], "roles": ["maker"]})

        assert again.status_code == 409
        assert again.json()["type"] == "/problems/key-shown-already"

    def test_is_for_owners(self, maker):
        assert sent(maker[1], PATH, {"roles": ["owner"]}).status_code == 403


class TestList:
    def test_takes_as_many_queries_for_many(self, owner, django_assert_max_num_queries):
        for _ in range(5):
            sent(owner[1], PATH, {"roles": ["maker"]})

        with django_assert_max_num_queries(4):
            rows = owner[1].get(PATH).json()["results"]

        assert [row["state"] for row in rows] == ["open"] * 5


class TestLink:
    def test_tells_where_it_leads(self, invitation):
        told = APIClient().get(link(invitation)).json()

        assert told["studio"]["name"] == "Yard"
        assert told["roles"] == ["maker", "technician"]

    def test_is_unknown_when_cut_short(self, invitation):
        cut = {"token": invitation["token"][:-1]}

        assert APIClient().get(link(cut)).status_code == 404
        assert accepted(cut).status_code == 404


class TestAccept:
    def test_works(self, studio, invitation):
        client = APIClient()

        answer = accepted(invitation, client)

        assert answer.status_code == 201
        assert answer.json()["memberships"][0]["member"]["roles"] == ["maker", "technician"]
        assert client.get("/api/v1/me/").json()["username"] == "gwen"
        member = Member.objects.get(studio=studio, initials="GS")
        assert member.email == "g@example.org"
        assert JournalEntry.objects.filter(verb="joined_studio", member=member).exists()

    def test_takes_an_account_there_is(self, invitation, stranger, other_studio):
        member, client = stranger

        answer = accepted(invitation, client, username="ignored")

        assert answer.status_code == 201
        assert answer.json()["username"] == member.user.username
        assert len(answer.json()["memberships"]) == 2

    def test_works_once(self, invitation):
        accepted(invitation)

        again = accepted(invitation, username="other", initials="O")

        assert again.status_code == 409
        assert again.json()["why"] == "taken"

    def test_ends_with_its_time(self, invitation, clock):
        clock.move(days=7)

        assert accepted(invitation).json()["why"] == "expired"

    def test_ends_when_withdrawn(self, owner, invitation):
        assert owner[1].delete(f"{PATH}{invitation['id']}/").status_code == 204

        assert accepted(invitation).json()["why"] == "withdrawn"
        assert owner[1].get(PATH).json()["results"][0]["state"] == "withdrawn"

    @pytest.mark.parametrize(
        ("body", "code"),
        [({"username": "GWEN-2"}, "username-taken"), ({"initials": "ZZ"}, "initials-taken")],
    )
    def test_leaves_the_link_open_when_a_name_is_taken(self, studio, invitation, body, code):
        taken = factories.member(studio, first_name="Zoe")
        taken.user.username, taken.initials = "gwen-2", "ZZ"
        taken.user.save()
        taken.save()

        refused = accepted(invitation, **body)

        assert refused.status_code == 409
        assert refused.json()["type"] == f"/problems/{code}"
        assert accepted(invitation).status_code == 201

    @pytest.mark.parametrize(
        ("body", "pointer"),
        [
            ({"password": "short"}, "#/password"),
            ({"username": "a b"}, "#/username"),
            ({"initials": "ABCDE"}, "#/initials"),
            ({"first_name": ""}, "#/first_name"),
        ],
    )
    def test_names_the_field_it_cannot_take(self, invitation, body, pointer):
        answer = accepted(invitation, **body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer

    def test_needs_a_name_from_whoever_is_not_signed_in(self, invitation):
        body = {name: NEW[name] for name in ("first_name", "full_name", "initials")}

        answer = APIClient().post(f"{link(invitation)}acceptance/", body, format="json")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/username"


class TestWithdraw:
    def test_is_too_late_when_taken(self, owner, invitation):
        accepted(invitation)

        assert owner[1].delete(f"{PATH}{invitation['id']}/").status_code == 409
