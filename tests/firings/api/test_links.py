"""Links to an order over the wire, for those who may make them."""

import json
from typing import Any

import pytest
from django.test import Client

from firings.models import Share
from pieces.actions import commissions, handing_over
from studio.models import FrozenCopy
from studio.queries.frozen import digest_of
from tests import factories
from tests.factories import NOW
from tests.pictures import sent_photo
from tests.pieces.orders import DAY, SECRET, S, jars, piece, put, take

UNTIL = "2026-11-30"


@pytest.fixture
def order(maker):
    order, _ = jars(maker[0], sets=1, wanted=1)
    return order


def links(client, order):
    return client.get(f"{S}commissions/{order.pk}/links/").json()


def make(client, order, **more):
    body = {"shows": ["counts"], "expires_on": UNTIL, **more}
    return factories.sent(client, f"{S}commissions/{order.pk}/links/", body)


def preview(client, order, **more):
    body = {"shows": ["counts"], "expires_on": UNTIL, **more}
    path = f"{S}commissions/{order.pk}/links/preview/"
    return client.post(path, body, format="json")


def page(made) -> Any:
    return Client().get("/c/" + made.json()["address"].rpartition("/")[2])


class TestMaking:
    def test_answers_the_address_once_and_keeps_only_its_hash(self, maker, order):
        made = make(maker[1], order)

        assert made.status_code == 201
        told = made.json()
        key = told["address"].rpartition("/c/")[2]
        assert told["address"] in told["message"]
        assert told["link"]["state"] == "live"
        assert key not in json.dumps(links(maker[1], order))
        again = make(maker[1], order, id=told["id"])
        assert again.status_code == 409
        assert again.json()["type"] == "/problems/key-shown-already"
        assert Share.objects.count() == 1

    @pytest.mark.parametrize("day", ["2026-10-30", "2029-01-01"])
    def test_wants_a_last_day_that_is_to_come_and_not_far_off(self, maker, order, day):
        problem = make(maker[1], order, expires_on=day)

        assert problem.status_code == 422
        assert problem.json()["pointer"] == "#/expires_on"

    def test_wants_something_to_show(self, maker, order):
        assert make(maker[1], order, shows=[]).json()["type"] == "/problems/nothing-shown"
        unknown = make(maker[1], order, shows=["prices"])
        assert unknown.status_code == 400
        assert unknown.json()["errors"][0]["pointer"] == "#/shows/0"

    def test_is_in_the_history_without_its_key(self, maker, order):
        made = make(maker[1], order).json()

        history = maker[1].get(f"{S}commissions/{order.pk}/history/").json()["results"]

        assert history[0]["words"] == "a link was made for the client, until 30 Nov 2026"
        assert made["address"].rpartition("/")[2] not in json.dumps(history)


class TestPreview:
    def test_is_the_page_to_the_letter_but_for_its_form(self, maker, order):
        shows = ["counts", "delivery", "stages", "history"]

        shown = preview(maker[1], order, shows=shows).json()["html"]

        assert shown == page(make(maker[1], order, shows=shows)).content.decode()
        assert Share.objects.count() == 1

    def test_holds_nothing_that_was_not_chosen(self, maker, order):
        shown = preview(maker[1], order, shows=["stages"]).json()["shown"]

        plain = {"kind", "studio", "number", "what", "until", "use", "maker", "photos"}
        assert set(shown) == {*plain, "stages"}
        assert SECRET not in json.dumps(shown)
        assert "Marrowfield" not in json.dumps(shown)

    @pytest.mark.parametrize(
        ("people", "named"), [("nobody", ""), ("initials", None), ("first_name", "Maud")]
    )
    def test_names_people_as_was_agreed(self, maker, order, people, named):
        shown = preview(maker[1], order, people=people).json()["shown"]

        assert shown["maker"] == (maker[0].initials if named is None else named)

    def test_of_a_visitors_link_keeps_no_copy_yet(self, maker, order):
        shown = preview(maker[1], order, kind="visitor").json()["shown"]

        assert shown["kept_on"] == "31 Oct 2026"
        assert links(maker[1], order)["results"] == []
        rows = maker[1].get(f"{S}commissions/{order.pk}/history/").json()["results"]
        assert "froze_history" not in {row["verb"] for row in rows}


class TestPhotos:
    @pytest.fixture(autouse=True)
    def media(self, tmp_path, settings):
        settings.MEDIA_ROOT = str(tmp_path)

    @pytest.fixture
    def taken(self, maker, order):
        """Two photos of a jar of the order, and one of something else."""
        own = [self.photo_of(maker, "J01") for _ in range(2)]
        take(maker[0], client="Larkspur Inn")
        factories.piece(piece("J01").design, maker[0], mark="J77")
        return [*own, self.photo_of(maker, "J77")]

    def photo_of(self, maker, mark):
        photo = sent_photo(maker[1]).json()["id"]
        path = f"{S}pieces/{piece(mark).pk}/checks/"
        said = factories.sent(maker[1], path, {"feel": "soft", "photo_ids": [photo]})
        assert said.status_code == 201, said.content
        return photo

    def test_are_those_of_the_order_and_only_the_chosen_are_given(self, maker, order, taken):
        chosen, left, foreign = taken
        known = {row["id"] for row in links(maker[1], order)["photos"]}
        assert known == {chosen, left}

        made = make(maker[1], order, shows=[], shown_photo_ids=[chosen])
        address = "/c/" + made.json()["address"].rpartition("/")[2]
        codes = [Client().get(f"{address}/photos/{one}/image/").status_code for one in taken]

        assert codes == [200, 404, 404]
        assert make(maker[1], order, shown_photo_ids=[foreign]).status_code == 400
        shown = Client().get(f"{address}/photos/{chosen}/thumbnail/")
        assert (shown["Content-Type"], shown["Cache-Control"]) == ("image/jpeg", "no-store")
        assert f"{address}/photos/{chosen}/thumbnail/" in page(made).content.decode()
        assert Client().get(f"{S}photos/{chosen}/image/").status_code == 401

    def test_go_when_the_link_does(self, maker, order, taken):
        made = make(maker[1], order, shown_photo_ids=taken[:1]).json()
        address = "/c/" + made["address"].rpartition("/")[2]

        factories.sent(maker[1], f"{S}links/{made['link']['id']}/revocations/")

        assert Client().get(f"{address}/photos/{taken[0]}/image/").status_code == 404


class TestVisitor:
    def test_reads_the_history_as_it_was_handed_over_and_what_was_told_later(self, maker, order):
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "checked")
        handing_over.hand_over(act=factories.act(maker[0], NOW), commission=order)
        late = factories.act(maker[0], NOW + DAY)
        commissions.reopen(act=late, commission=order)

        made = make(maker[1], order, kind="visitor", shows=[])
        shown = page(made)
        address = "/c/" + made.json()["address"].rpartition("/")[2]
        copy = Client().get(f"{address}/history.json")

        text = shown.content.decode()
        assert "History as kept on 31 Oct 2026" in text
        assert "Told after this copy was kept" in text
        assert text.index("Order opened again") < text.index("Handed over")
        assert digest_of(copy.content) in text
        kept = json.loads(copy.content)
        assert kept["order"] == order.number
        assert "order opened again" not in copy.content.decode()
        assert "Marrowfield" not in copy.content.decode()
        assert {act["by"] for act in kept["acts"]} == {maker[0].initials}

    def test_of_an_order_not_handed_over_is_kept_as_it_stands(self, maker, order):
        make(maker[1], order, kind="visitor", shows=[])

        rows = maker[1].get(f"{S}commissions/{order.pk}/history/?filter=clients").json()["results"]

        assert [row["verb"] for row in rows[:2]] == ["made_link", "froze_history"]

    def test_has_no_history_file_by_a_clients_link(self, maker, order):
        made = make(maker[1], order)
        key = made.json()["address"].rpartition("/")[2]

        assert Client().get(f"/c/{key}/history.json").status_code == 404


class TestPapers:
    def test_signed_last_are_given_byte_for_byte_where_papers_were_chosen(
        self, maker, owner, order
    ):
        signed = factories.sent(owner[1], f"{S}commissions/{order.pk}/papers/", {})
        assert signed.status_code == 201, signed.content
        with_them = make(maker[1], order, shows=["papers"])
        without = make(maker[1], order, shows=["counts"])

        given, refused = (
            Client().get("/c/" + made.json()["address"].rpartition("/")[2] + "/papers.pdf")
            for made in (with_them, without)
        )

        assert given["Content-Type"] == "application/pdf"
        assert digest_of(given.content) == FrozenCopy.objects.get().sha256
        assert "Papers signed 31 Oct 2026" in page(with_them).content.decode()
        assert refused.status_code == 404
        assert "signed" not in page(without).content.decode()


class TestRevoking:
    def test_ends_a_link_for_good(self, maker, order):
        made = make(maker[1], order).json()

        told = factories.sent(maker[1], f"{S}links/{made['link']['id']}/revocations/")

        assert told.status_code == 201
        assert told.json()["link"]["state"] == "revoked"
        assert links(maker[1], order)["results"][0]["revoked_at"] is not None

    def test_is_for_the_orders_own_maker_or_an_owner(self, maker, owner, join, studio, order):
        made = make(maker[1], order).json()
        _, other = join(studio, ["maker"], "Bo")
        path = f"{S}links/{made['link']['id']}/revocations/"

        assert factories.sent(other, path).status_code == 403
        assert factories.sent(owner[1], path).status_code == 201


class TestDay:
    def test_ends_at_midnight_of_the_studio(self, maker, order):
        make(maker[1], order, expires_on="2027-06-30")

        # London is an hour ahead of UTC in June.
        assert Share.objects.get().expires_at.isoformat() == "2027-06-30T23:00:00+00:00"
