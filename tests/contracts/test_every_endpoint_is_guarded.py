"""Whatever address is added, it asks who calls, keeps strangers out and survives nonsense."""

import json

import pytest
from rest_framework.test import APIClient

from studio.api.views import StudioView
from studio.domain.ids import uuid7
from studio.models import Device
from studio.permissions import Permission, Scoped
from tests import factories, pictures
from tests.contracts import endpoints

PROBLEM = "application/problem+json"

# Addresses outside any studio, and why each is there. Those in OPEN answer whoever calls.
WITHOUT_STUDIO = {
    "api/v1/session/": "signing in and out",
    "api/v1/me/": "says which studios there are",
    "api/v1/sums/<slug:name>/": "reckons with what is given, of no studio",
    "api/v1/sums/drying/": "reckons with what is given, of no studio",
    "api/v1/invitations/<str:token>/": "its holder is in no studio yet",
    "api/v1/invitations/<str:token>/acceptance/": "its holder is in no studio yet",
    "api/v1/shares/<str:token>/": "a client, who is no member",
    "api/v1/shares/<str:token>/approvals/": "a client, who is no member",
    "api/v1/schema/": "describes the API",
    "api/v1/docs/": "describes the API",
}
OPEN = {
    "POST api/v1/session/",
    "GET api/v1/invitations/<str:token>/",
    "POST api/v1/invitations/<str:token>/acceptance/",
    "GET api/v1/shares/<str:token>/",
    "POST api/v1/shares/<str:token>/approvals/",
    "GET api/v1/schema/",
    "GET api/v1/docs/",
}

EVERY = endpoints.all_of_them()
OF_STUDIOS = [e for e in EVERY if e.route not in WITHOUT_STUDIO]

NONSENSE = [
    None,
    "",
    "nonsense",
    "null\x00byte",
    "\ud800",
    "9" * 5000,
    -1,
    2**70,
    1e308,
    True,
    [],
    [None],
    [[[]]],
    {},
    {"a": {"b": []}},
    "0001-01-01T00:00:00+14:00",
    "9999-12-31T23:59:59-14:00",
    "00000000-0000-0000-0000-000000000000",
]
UNREADABLE = [
    b"",
    b"{",
    b"null",
    b"[]",
    b"[1]",
    b'"text"',
    b"1e999",
    b"NaN",
    b"\xff\xfe",
    b"[" * 20000,
    b'{"id":' * 5000,
]


def call(client, endpoint, path, body=None, **extra):
    if endpoint.method == "get":
        return client.get(path, **extra)
    # Not the client's own JSON, which cannot hold half a character.
    written = json.dumps(body or {}).encode()
    return getattr(client, endpoint.method)(path, written, content_type="application/json", **extra)


def each(found):
    return pytest.mark.parametrize("endpoint", found, ids=str)


def test_endpoints_are_found_in_every_app_that_has_some():
    apps = {endpoint.view.__module__.partition(".")[0] for endpoint in EVERY}

    assert apps >= {"studio", "moulds", "pieces", "firings"}


@each(OF_STUDIOS)
class TestEndpointOfAStudio:
    def test_names_a_permission_for_the_method(self, endpoint):
        assert issubclass(endpoint.view, StudioView)
        assert endpoint.route.startswith("api/v1/studios/<slug:slug>/")
        assert isinstance(endpoint.view.needs[endpoint.method.upper()], Permission | Scoped)

    def test_turns_away_who_is_not_signed_in(self, endpoint, studio):
        answer = call(APIClient(), endpoint, endpoint.path())

        assert answer.status_code == 401
        assert answer["Content-Type"] == PROBLEM
        assert answer.json()["type"] == "/problems/not-signed-in"

    def test_is_not_there_for_strangers(self, endpoint, studio, stranger):
        answer = call(stranger[1], endpoint, endpoint.path())

        assert answer.status_code == 404
        assert answer["Content-Type"] == PROBLEM

    def test_refuses_a_member_without_the_role(self, endpoint, studio, join):
        _, client = join(studio, [], "Nell")

        answer = call(client, endpoint, endpoint.path())

        assert answer.status_code == 403
        assert answer["Content-Type"] == PROBLEM
        assert answer.json()["needed"] in set(Permission)


class TestNeeds:
    @pytest.mark.parametrize("view", sorted({e.view for e in OF_STUDIOS}, key=str), ids=str)
    def test_are_named_for_methods_there_are(self, view):
        assert {name.lower() for name in view.needs} == {
            method for method in endpoints.METHODS if hasattr(view, method)
        }


@each([e for e in EVERY if e.route in WITHOUT_STUDIO and str(e) not in OPEN])
class TestEndpointWithoutStudio:
    def test_turns_away_who_is_not_signed_in(self, endpoint, db):
        answer = call(APIClient(), endpoint, endpoint.path())

        assert answer.status_code == 401
        assert answer["Content-Type"] == PROBLEM


@pytest.fixture
def known(studio, owner):
    """Ids of rows there are, by the names that addresses give them."""
    member = owner[0]
    body = factories.clay_body(studio)
    design = factories.design(studio, body=body)
    made_as = factories.design_part(design)
    mould_set = factories.mould_set(made_as)
    casting = factories.casting(mould_set)
    piece = factories.piece(design, member)
    kiln = factories.kiln(studio)
    load = factories.load(kiln)
    rows = {
        "member": member,
        "device": Device.objects.create(
            studio=studio, member=member, name="phone", added_at=factories.NOW
        ),
        "place": factories.place(studio),
        "body": body,
        "clay_body": body,
        "batch": factories.colour_batch(studio, body=body),
        "block": factories.slab_block(studio),
        "design": design,
        "master": casting.master,
        "mould_set": mould_set,
        "set": mould_set,
        "casting": casting,
        "mould_part": factories.mould_part(casting),
        "piece": piece,
        "part": factories.part(piece, made_as),
        "kiln": kiln,
        "programme": factories.programme(studio),
        "load": load,
        "placement": factories.placement(load, member),
        "photo": pictures.kept_photo(factories.act(member)),
    }
    return {f"{name}_id": row.pk for name, row in rows.items()}


@each([e for e in EVERY if e.method != "get"])
class TestBody:
    def test_may_be_unreadable(self, endpoint, known, owner):
        for body in UNREADABLE:
            method = getattr(owner[1], endpoint.method)

            answer = method(endpoint.path(**known), body, content_type="application/json")

            expect_no_breakage(answer, body)

    def test_may_hold_nonsense_in_every_field(self, endpoint, known, owner):
        names = endpoints.fields_of(endpoint)
        for value in NONSENSE:
            envelope = {"id": str(uuid7()), "happened_at": factories.NOW.isoformat()}
            fields = {name: value for name in names if name not in envelope}

            answer = call(owner[1], endpoint, endpoint.path(**known), {**envelope, **fields})

            expect_no_breakage(answer, value)


@each([e for e in EVERY if e.method == "get"])
class TestQuery:
    def test_may_be_nonsense(self, endpoint, known, owner):
        for value in ("", "nonsense", "null\x00byte", "-1", "9" * 400, "W10", "bnVsbA"):
            query = dict.fromkeys(endpoints.queries_of(endpoint), value)

            answer = owner[1].get(endpoint.path(**known), query)

            expect_no_breakage(answer, query)


def expect_no_breakage(answer, sent):
    assert answer.status_code < 500, sent
    if answer.status_code >= 400:
        assert answer["Content-Type"] == PROBLEM, sent
        assert answer.json()["status"] == answer.status_code


class TestUnknownAddress:
    def test_is_answered_as_a_problem(self, owner):
        answer = owner[1].get("/api/v1/nowhere/")

        assert answer.status_code == 404
        assert answer["Content-Type"] == PROBLEM

    def test_is_answered_as_a_problem_when_the_method_is_wrong(self, owner):
        answer = owner[1].put("/api/v1/studios/yard/members/", {}, format="json")

        assert answer.status_code == 405
        assert answer["Content-Type"] == PROBLEM
