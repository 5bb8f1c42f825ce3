"""A phone lies in the shed for everybody: on it one reads of work, not of clients or money."""

import json
import re
from collections import defaultdict
from collections.abc import Iterator
from typing import Any

import pytest
from django.apps import apps
from rest_framework.test import APIClient

from pieces.models import Commission
from studio.actions import devices
from studio.models import StudioOwned
from tests import factories
from tests.contracts import endpoints

# As many of each thing are looked at, beside all orders.
OF_EACH = 2
# Names in addresses that differ from the models'.
MODELS = {
    "set": "mouldset",
    "found": "foundpiece",
    "copy": "frozencopy",
    "mould-parts": "mouldpart",
    "parts": "part",
    "clay-bodies": "claybody",
    "test-bars": "testbar",
    "colour-batches": "colourbatch",
    "glaze-batches": "glazebatch",
    "slab-blocks": "slabblock",
}
TELEPHONE = "01632 960961"
PRICE = "£140"


@pytest.fixture
def shed(yard) -> APIClient:
    """A shared phone in Odile's hand, who as the owner could read everything on her own."""
    act = factories.act(yard.demo.member("odile"))
    _, key = devices.share(act=act, name="Shed phone")
    client = APIClient()
    client.credentials(HTTP_AUTHORIZATION=f"Device {key}", HTTP_X_NATCH_MEMBER=str(act.member.pk))
    return client


@pytest.fixture
def secrets(yard) -> set[str]:
    """What must not be read, once somebody has also written it where it does not belong."""
    order = yard.order("C-102")["commission"]["id"]
    told = f"Dr E. Wainfleet rang from {TELEPHONE}, wainfleet@clients.example: {PRICE} is fine."
    yard.demo.client("odile").patch(
        f"/api/v1/studios/{yard.demo.studio.slug}/commissions/{order}/",
        {"what": "Wainfleet’s ribbed sauce boats"},
        format="json",
    )
    piece = yard.piece("S03")
    yard.tell("odile", f"pieces/{piece.pk}/moves/", place_id=str(piece.place_id), note=told)
    orders = Commission.objects.of(yard.demo.studio)
    assert orders.count() == 5
    return {
        TELEPHONE,
        PRICE,
        "Wainfleet",
        "Larkspur",
        "Marrowfield",
        "Oakhanger",
        "Coldwater",
        "GBP",
        *(row.client_name for row in orders),
        *(row.client_contact for row in orders),
    }


def told_by(client: APIClient, yard, *, about: str = "") -> dict[str, list[str]]:
    """Return what every address that can be read answers, over the things of the demo."""
    rows = {
        model.__name__.lower(): list(
            model._default_manager.filter(studio=yard.demo.studio)
            .order_by("-pk")
            .values_list("pk", flat=True)[:OF_EACH]
        )
        for model in apps.get_models()
        if issubclass(model, StudioOwned)
    }
    rows["piece"].append(yard.piece("S03").pk)
    rows["commission"] = list(Commission.objects.values_list("pk", flat=True))
    told: dict[str, list[str]] = defaultdict(list)
    for endpoint in endpoints.all_of_them():
        if endpoint.method == "get" and "<slug:slug>" in endpoint.route and about in endpoint.route:
            for path in _paths(endpoint.route, rows, yard.demo.studio.slug):
                answer = client.get(path, {"q": "wainfleet"} if "search" in path else {})
                body = answer.getvalue() if answer.streaming else answer.content
                told[endpoint.route].append(f"{answer.status_code} {_unescaped(body)}")
    return told


def _unescaped(body: bytes) -> str:
    try:
        return json.dumps(json.loads(body), ensure_ascii=False)
    except ValueError:
        return body.decode("latin-1")


def _paths(route: str, rows: dict[str, list[Any]], slug: str) -> Iterator[str]:
    names = [name for _, name in endpoints.PARAMETER.findall(route) if name != "slug"]
    base = "/" + route.replace("<slug:slug>", slug)
    if not names:
        yield base
        return
    if len(names) > 1:
        base = base.replace(f"<uuid:{names[0]}>", str(rows[names[0][:-3]][0]))
    stem = names[-1].removesuffix("_id")
    word = route.split("/")[4] if stem in ("row", "part") else stem
    for pk in rows[MODELS.get(word, word)]:
        yield re.sub(r"<uuid:\w+>", str(pk), base)


class TestSharedPhone:
    def test_reads_no_client_no_contact_and_no_price(self, yard, shed, secrets) -> None:
        told = told_by(shed, yard)
        odile = yard.demo.client("odile")
        in_person = [
            told_by(odile, yard, about=one) for one in ("/commissions/", "history", "/settings/")
        ]

        read = [(route, each) for route, answers in told.items() for each in answers]
        found = {(route, one) for route, each in read for one in secrets if one in each}
        assert found == set()
        minor = {route for route, each in read if re.search(r'"\w*minor\w*"', each)}
        assert minor == set()
        # Odile reads each of them on her own phone, so that the walk looked where they stand.
        own = " ".join(each for part in in_person for answers in part.values() for each in answers)
        assert {one for one in secrets if one not in own} == set()

    def test_is_refused_what_is_about_clients_papers_and_keys(self, yard, shed) -> None:
        order = yard.order("C-102")["commission"]["id"]
        base = f"/api/v1/studios/{yard.demo.studio.slug}"
        under_order = [f"commissions/{order}/{name}" for name in ("links/", "approvals/")]
        papers = [f"commissions/{order}/{name}" for name in ("papers/facts/", "history.csv")]
        keys = ["tokens/", "invitations/", "held-acts/", "refused/"]

        for path in [*under_order, *papers, *keys]:
            answer = shed.get(f"{base}/{path}")

            assert answer.status_code == 403, path
            assert answer.json()["type"] == "/problems/not-on-shared-phone", path

    def test_reads_what_work_needs(self, yard, shed) -> None:
        order = yard.order("C-102")["commission"]["id"]
        base = f"/api/v1/studios/{yard.demo.studio.slug}"
        design = yard.piece("S03").design_id

        whole = shed.get(f"{base}/commissions/{order}/").json()["commission"]
        listed = shed.get(f"{base}/search/?q=c-102").json()["results"]

        assert (whole["number"], whole["client_name"]) == ("C-102", "")
        assert whole["what"] == "ribbed sauce boats, marbled brown and cream"
        assert [hit["name"] for hit in listed if hit["kind"] == "order"] == ["C-102"]
        # What food may touch is a caution, not a way to reach anybody.
        assert shed.get(f"{base}/designs/{design}/").json()["contact"] == "table"

    def test_finds_no_order_by_whom_it_is_for(self, yard, shed) -> None:
        base = f"/api/v1/studios/{yard.demo.studio.slug}"

        answer = shed.get(f"{base}/search/?q=wainfleet").json()

        assert answer == {"results": [], "is_cut": False}
