from datetime import timedelta

import pytest
from rest_framework.test import APIClient

from studio.models import SignInTry
from tests import factories

PATH = "/api/v1/session/"


@pytest.fixture
def client():
    return APIClient(enforce_csrf_checks=True)


@pytest.fixture
def maud(studio):
    return factories.member(studio, first_name="Maud")


def tried(client, member, password, **extra):
    body = {"username": member.user.username, "password": password}
    return client.post(PATH, body, format="json", **extra)


class TestSignIn:
    def test_works(self, client, maud, studio):
        answer = tried(client, maud, factories.PASSWORD)

        assert answer.status_code == 200
        assert answer.json()["memberships"][0]["studio"]["slug"] == studio.slug
        assert client.get("/api/v1/me/").json()["username"] == maud.user.username

    def test_says_no_more_than_that_it_is_wrong(self, client, maud):
        wrong = tried(client, maud, "not it")
        unknown = client.post(PATH, {"username": "nobody", "password": "not it"}, format="json")

        assert wrong.status_code == unknown.status_code == 401
        assert wrong.json() == unknown.json()
        assert wrong.json()["type"] == "/problems/wrong-sign-in"

    def test_counts_wrong_passwords(self, client, maud, clock):
        answers = [tried(client, maud, "not it").status_code for _ in range(5)]
        clock.move(minutes=5)

        refused = tried(client, maud, factories.PASSWORD)

        assert answers == [401] * 5
        assert refused.status_code == 429
        assert refused.json()["type"] == "/problems/too-many-requests"
        assert int(refused["Retry-After"]) == 600

    def test_lets_in_again_when_the_time_is_over(self, client, maud, clock):
        for _ in range(9):
            tried(client, maud, "not it")
        clock.move(minutes=15)

        assert tried(client, maud, factories.PASSWORD).status_code == 200
        assert SignInTry.objects.count() == 0

    def test_counts_each_address_by_itself(self, client, maud):
        for _ in range(6):
            tried(client, maud, "not it")

        assert tried(client, maud, factories.PASSWORD, REMOTE_ADDR="10.0.0.9").status_code == 200

    def test_takes_the_address_from_the_proxy_it_stands_behind(self, client, maud, settings):
        settings.SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https")
        forged = "9.9.9.{}, 10.1.1.1"

        answers = [
            tried(client, maud, "not it", HTTP_X_FORWARDED_FOR=forged.format(n)).status_code
            for n in range(6)
        ]

        assert answers == [401] * 5 + [429]

    def test_keeps_no_name_that_was_typed(self, client, db):
        client.post(PATH, {"username": "my password", "password": "x"}, format="json")

        assert "password" not in SignInTry.objects.get().key

    def test_refuses_an_account_that_was_switched_off(self, client, maud):
        maud.user.is_active = False
        maud.user.save()

        assert tried(client, maud, factories.PASSWORD).status_code == 401


class TestCsrf:
    def test_is_asked_of_every_write_in_a_session(self, client, maud):
        tried(client, maud, factories.PASSWORD)

        bare = client.delete(PATH)
        token = client.cookies["csrftoken"].value
        full = client.delete(PATH, headers={"X-CSRFToken": token})

        assert bare.status_code == 403
        assert bare.json()["type"] == "/problems/csrf-failed"
        assert full.status_code == 204


class TestSignOut:
    def test_ends_the_session(self, maker):
        _, client = maker

        assert client.delete(PATH).status_code == 204
        assert client.get("/api/v1/me/").status_code == 401

    def test_needs_a_session(self, client, db):
        assert client.delete(PATH).status_code == 401


class TestRetryAfter:
    def test_is_never_nothing(self, client, maud, clock):
        for _ in range(5):
            tried(client, maud, "not it")
        clock.now += timedelta(minutes=14, seconds=59, milliseconds=900)

        assert int(tried(client, maud, "not it")["Retry-After"]) == 1
