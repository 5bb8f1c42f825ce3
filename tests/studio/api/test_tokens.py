import pytest
from rest_framework.test import APIClient

from studio.models import AccessToken, JournalEntry, Member, Replay
from studio.permissions import Role
from tests.factories import sent

PATH = "/api/v1/studios/yard/tokens/"
LEASE = "/api/v1/studios/yard/number-blocks/"


def made(client, *grants, **body):
    return sent(client, PATH, {"name": "shed meter", "grants": list(grants), **body})


def script(answer):
    client = APIClient()
    client.credentials(HTTP_AUTHORIZATION=f"Token {answer.json()['key']}")
    return client


class TestMake:
    def test_works(self, maker):
        answer = made(maker[1], "press_own")

        assert answer.status_code == 201
        key, token = answer.json()["key"], answer.json()["token"]
        assert key.startswith(token["prefix"])
        assert len(token["prefix"]) < len(key) / 3
        act = sent(script(answer), LEASE, {"series": "T"}).json()["id"]
        entry = JournalEntry.objects.get(pk=act)
        assert (entry.member, str(entry.device_id)) == (maker[0], token["device_id"])

    def test_keeps_the_key_nowhere(self, maker):
        answer = made(maker[1], "press_own")

        told = [list(model.objects.values()) for model in (AccessToken, JournalEntry, Replay)]
        assert answer.json()["key"] not in str(told)
        assert made(maker[1], "press_own", id=answer.json()["id"]).status_code == 409

    def test_gives_no_more_than_ones_own(self, technician):
        answer = made(technician[1], "see_studio", "manage_members")

        assert answer.status_code == 403
        assert answer.json()["beyond"] == ["manage_members"]

    @pytest.mark.parametrize("grants", [[], ["fly"]])
    def test_needs_grants_that_there_are(self, maker, grants):
        answer = made(maker[1], *grants)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"].startswith("#/grants")


class TestUse:
    def test_is_narrower_than_the_member(self, maker):
        client = script(made(maker[1], "record_climate"))

        assert sent(client, LEASE, {"series": "T"}).status_code == 403
        assert client.get("/api/v1/studios/yard/members/").status_code == 403

    def test_shrinks_with_the_member(self, maker):
        client = script(made(maker[1], "press_own"))
        Member.objects.filter(pk=maker[0].pk).update(roles=[Role.TECHNICIAN])

        assert sent(client, LEASE, {"series": "T"}).status_code == 403

    def test_makes_no_keys(self, owner):
        client = script(made(owner[1], "see_studio", "manage_members"))

        answers = [
            made(client, "see_studio"),
            sent(client, "/api/v1/studios/yard/invitations/", {"roles": ["owner"]}),
            sent(client, "/api/v1/studios/yard/devices/", {"name": "x"}),
            client.patch("/api/v1/me/", {"pin": "1234"}, format="json"),
        ]

        assert [answer.status_code for answer in answers] == [403] * 4
        assert {answer.json()["type"] for answer in answers} == {"/problems/not-in-person"}

    def test_is_of_one_studio(self, owner, stranger):
        Member.objects.filter(pk=stranger[0].pk).update(user=owner[0].user)
        client = script(made(owner[1], "see_studio"))

        assert client.get("/api/v1/studios/quay/members/").status_code == 404
        assert len(client.get("/api/v1/me/").json()["memberships"]) == 1

    def test_needs_no_csrf(self, maker):
        client = APIClient(enforce_csrf_checks=True)
        client.credentials(**script(made(maker[1], "press_own"))._credentials)

        assert sent(client, LEASE, {"series": "T"}).status_code == 201

    def test_tells_when_it_was_used(self, maker, now):
        script(made(maker[1], "see_studio")).get("/api/v1/me/")

        assert AccessToken.objects.get().used_at == now

    def test_is_not_guessed(self, db):
        client = APIClient()
        client.credentials(HTTP_AUTHORIZATION="Token nt_guess")

        answer = client.get("/api/v1/me/")

        assert answer.status_code == 401
        assert answer["WWW-Authenticate"] == "Token"


class TestList:
    def test_takes_as_many_queries_for_many(self, maker, django_assert_max_num_queries):
        keys = [made(maker[1], "see_studio").json()["key"] for _ in range(5)]

        with django_assert_max_num_queries(4):
            answer = maker[1].get(PATH)

        assert len(answer.json()["results"]) == 5
        assert not any(key in answer.content.decode() for key in keys)


class TestRevoke:
    def test_works_for_maker_and_owner(self, owner, maker):
        answers = [made(maker[1], "see_studio") for _ in range(2)]

        for (_, client), answer in zip((owner, maker), answers, strict=True):
            assert client.delete(f"{PATH}{answer.json()['id']}/").status_code == 204
            assert script(answer).get("/api/v1/me/").status_code == 401
        assert {t["revoked_at"] for t in maker[1].get(PATH).json()["results"]} != {None}

    def test_is_not_for_others(self, maker, technician):
        token = made(maker[1], "see_studio").json()["id"]

        assert technician[1].delete(f"{PATH}{token}/").status_code == 403
        assert technician[1].get(PATH).json()["results"] == []

    def test_ends_with_the_member(self, maker, now):
        client = script(made(maker[1], "see_studio"))
        Member.objects.filter(pk=maker[0].pk).update(left_at=now)

        assert client.get("/api/v1/me/").status_code == 401
