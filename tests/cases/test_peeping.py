"""Somebody looks where they should not: at the next order, by an old link, at a photo."""

import logging
import re
from typing import Any
from uuid import uuid4

import pytest
from django.test import Client

from firings.actions import guesses
from firings.models import Share, ShareOpened
from studio.project import web

GONE = "There is nothing here"
STAFF = ("wainfleet@", "Rack", "Bench 2", "reclaim", "M03", "Farrant", "price", "£")


@pytest.fixture
def visitor() -> Client:
    """A browser that has never been here, with no account."""
    return Client()


def shared(yard, number: str = "C-102", who: str = "odile", **more: Any) -> Any:
    order = yard.order(number)["commission"]["id"]
    chosen = {"shows": ["counts", "delivery", "stages", "approvals", "history"], **more}
    body = {"expires_on": "2026-11-30", **chosen}
    return yard.tell(who, f"commissions/{order}/links/", **body)


def path_of(made: Any) -> str:
    found: str = "/c/" + made["address"].rpartition("/c/")[2]
    return found


class TestClientPage:
    def test_shows_what_was_chosen_and_no_staff_text_in_its_source(self, yard, visitor) -> None:
        page = visitor.get(path_of(shared(yard)))

        text = page.content.decode()
        assert page.status_code == 200
        assert "Sauce boat: 2 wanted, none finished, 4 being made" in text
        assert "lost" not in text
        assert "This page opens until 30 Nov 2026." in text
        history = text[text.index("What happened") :]
        assert re.search(r"<b>S0\d[^<]*</b> pressed", history)
        assert "<b>S02</b> fired once" in history
        assert "S01" not in text  # it was lost, and losses were not chosen
        for word in (*STAFF, "Larkspur", "Marrowfield", "Wainfleet", "Odile", "Piet"):
            assert word not in text, word

    def test_is_kept_by_nobody_and_found_by_no_search(self, yard, visitor) -> None:
        page = visitor.get(path_of(shared(yard)))

        assert page["Cache-Control"] == "no-store"
        assert page["Referrer-Policy"] == "no-referrer"
        assert "noindex" in page["X-Robots-Tag"]
        assert '<meta name="robots" content="noindex' in page.content.decode()
        assert "script-src 'self'" in page["Content-Security-Policy"]
        assert "<script" not in page.content.decode()
        assert "Disallow: /c/" in visitor.get("/robots.txt").content.decode()

    def test_tells_of_losses_where_they_were_chosen(self, yard, visitor) -> None:
        page = visitor.get(path_of(shared(yard, shows=["counts", "history", "losses"])))

        text = page.content.decode()
        assert "1 lost on the way" in text
        assert "<b>S01</b> lost" in text

    def test_says_for_display_only_whatever_was_chosen(self, yard, visitor) -> None:
        page = visitor.get(path_of(shared(yard, "C-105", "piet", shows=["delivery"])))

        assert "For display only, not for food." in page.content.decode()

    def test_tells_the_owner_when_it_was_opened_but_not_by_whom(self, yard, visitor) -> None:
        made = shared(yard)
        for wall in ("2026-10-31 10:02", "2026-10-31 10:09", "2026-11-01 20:31"):
            yard.at(wall)
            visitor.get(path_of(made))

        order = yard.order("C-102")["commission"]["id"]
        yard.demo.client("odile").get(path_of(made))  # a look of one's own is none of the client's
        (link, *_) = yard.get(f"commissions/{order}/links/")["results"]
        assert link["opened_times"] == 2
        assert link["opened_at"] == ["2026-11-01T20:30:00Z", "2026-10-31T10:00:00Z"]
        columns = {field.name for field in ShareOpened._meta.get_fields()}
        assert columns == {"id", "studio", "share", "opened_at"}


class TestOldLink:
    def test_is_not_there_like_one_that_never_was(self, yard, visitor) -> None:
        made = shared(yard)
        yard.tell("odile", f"links/{made['link']['id']}/revocations/")
        unknown = visitor.get("/c/" + "x" * 43)
        yard.at("2026-12-01 00:00")
        expired = visitor.get(path_of(made))

        revoked = visitor.get(path_of(made))

        for answer in (revoked, expired, unknown):
            assert answer.status_code == 404
            assert answer.content == unknown.content
            assert dict(answer.headers) == dict(unknown.headers)
        assert GONE in unknown.content.decode()

    def test_runs_out_at_the_end_of_its_day(self, yard, visitor) -> None:
        made = shared(yard)

        yard.at("2026-11-30 23:59")
        assert visitor.get(path_of(made)).status_code == 200
        yard.at("2026-12-01 00:00")
        assert visitor.get(path_of(made)).status_code == 404

    def test_is_revoked_once(self, yard) -> None:
        made = shared(yard)
        path = f"links/{made['link']['id']}/revocations/"
        yard.tell("odile", path)

        again = yard.refused("odile", path)

        assert again["type"] == "/problems/link-revoked-already"


class TestNextOrder:
    def test_is_not_shown_by_another_orders_link(self, yard, visitor) -> None:
        asked = yard.order("C-103")["commission"]["id"]
        ask = {"about": "colour", "waits": "glazing", "due_date": "2026-11-06"}
        other = yard.tell("jun", f"commissions/{asked}/approvals/", **ask)["approval"]
        path = path_of(shared(yard))

        for foreign in (f"/c/{asked}", f"{path}/{asked}", f"/c/{asked}/approvals/{other['id']}"):
            assert visitor.get(foreign).status_code == 404
        token = path.rpartition("/")[2]
        answer = visitor.post(
            f"/api/v1/shares/{token}/approvals/",
            {"approval_id": other["id"], "answer": "yes"},
            content_type="application/json",
        )
        assert answer.status_code == 404

    @pytest.mark.parametrize("who", ["bram", "nessa"])
    def test_is_shared_by_its_own_maker_alone(self, yard, who: str) -> None:
        order = yard.order("C-103")["commission"]["id"]

        answer = yard.send(who, f"commissions/{order}/links/", expires_on="2026-11-30")
        listed = yard.demo.client(who).get(
            f"/api/v1/studios/{yard.demo.studio.slug}/commissions/{order}/links/"
        )

        assert (answer.status_code, listed.status_code) == (403, 403)


class TestGuessing:
    def test_of_very_many_links_a_minute_is_told_to_wait(self, yard, visitor) -> None:
        good = path_of(shared(yard))

        codes = [visitor.get(f"/c/{uuid4().hex}").status_code for _ in range(500)]

        assert codes == [404] * guesses.MOST_OF_ONE + [429] * (500 - guesses.MOST_OF_ONE)
        slowed = visitor.get(good)
        assert slowed.status_code == 429
        assert 0 < int(slowed["Retry-After"]) <= guesses.WITHIN.total_seconds()
        assert visitor.get(good, REMOTE_ADDR="203.0.113.9").status_code == 200
        yard.clock.move(minutes=15)
        assert visitor.get(good).status_code == 200

    def test_over_all_addresses_waits_while_real_links_open(self, yard, visitor, monkeypatch):
        monkeypatch.setattr(guesses, "MOST_OF_ALL", 30)
        good = path_of(shared(yard))

        codes = [
            visitor.get(f"/c/{uuid4().hex}", REMOTE_ADDR=f"198.51.100.{n}").status_code
            for n in range(40)
        ]

        assert codes == [404] * 30 + [429] * 10
        assert visitor.get(good, REMOTE_ADDR="192.0.2.1").status_code == 200

    def test_of_a_household_counts_as_one(self, yard, visitor) -> None:
        addresses = [f"2001:db8:1:2::{n:x}" for n in range(1, guesses.MOST_OF_ONE + 2)]

        codes = [visitor.get("/c/no", REMOTE_ADDR=one).status_code for one in addresses]

        assert codes[-2:] == [404, 429]

    def test_has_two_to_the_256_keys_to_go_through(self, yard) -> None:
        keys = {path_of(shared(yard)).rpartition("/")[2] for _ in range(3)}

        # 43 letters of base64url hold 32 bytes of the system's randomness.
        assert len(keys) == 3
        assert all(re.fullmatch(r"[A-Za-z0-9_-]{43}", key) for key in keys)
        kept = Share.objects.values_list("token_hash", flat=True)
        assert not keys & set(kept)
        assert all(re.fullmatch(r"[0-9a-f]{64}", one) for one in kept)


class TestLog:
    def test_holds_no_key_of_a_link(self, yard, visitor, caplog) -> None:
        made = shared(yard)
        key = path_of(made).rpartition("/")[2]
        yard.tell("odile", f"links/{made['link']['id']}/revocations/")
        caplog.set_level(logging.DEBUG)

        for path in (f"/c/{key}", f"/c/{key}/approvals", f"/api/v1/shares/{key}/"):
            assert visitor.get(path).status_code in (404, 405)
        visitor.put(f"/c/{key}")

        written = " ".join(record.getMessage() for record in caplog.records)
        assert "/c/…" in written
        assert key not in written

    def test_of_the_web_server_holds_no_addresses(self) -> None:
        assert web.accesslog is None


class TestApproval:
    def asked(self, yard) -> Any:
        order = yard.order("C-102")["commission"]["id"]
        rows = yard.get(f"commissions/{order}/approvals/")["results"]
        return next(row for row in rows if row["about"] == "colour")

    def form(self, page: Any) -> str:
        found = re.search(r'name="form" value="([^"]+)"', page.content.decode())
        assert found is not None
        return found[1]

    def test_is_given_once_and_told_to_the_maker(self, yard, visitor) -> None:
        path = path_of(shared(yard))
        form = self.form(visitor.get(path))

        given = {"form": form, "answer": "yes", "words": "A shade darker, if it can be."}
        taken = visitor.post(f"{path}/approvals", given)
        again = visitor.post(f"{path}/approvals", {**given, "answer": "no"})

        assert (taken.status_code, taken["Location"]) == (303, path)
        assert again.status_code == 409
        assert "already" in again.content.decode()
        answer = self.asked(yard)["answer"]
        assert (answer["answer"], answer["through"]) == ("yes", "link")
        assert answer["client_words"] == "A shade darker, if it can be."
        told = [row["title"] for row in yard.get("reminders/?state=due")["results"]]
        assert "C-102, colour: the client said yes." in told

    @pytest.mark.parametrize(
        ("changes", "code"), [({"answer": "maybe"}, 400), ({"words": "n" * 501}, 409)]
    )
    def test_keeps_what_was_typed_where_it_is_not_taken(self, yard, visitor, changes, code):
        path = path_of(shared(yard))
        form = self.form(visitor.get(path))
        given = {"form": form, "answer": "yes", "words": "<b>Darker</b>", **changes}

        answer = visitor.post(f"{path}/approvals", given)

        assert answer.status_code == code
        typed = given["words"].replace("<", "&lt;").replace(">", "&gt;")
        assert typed in answer.content.decode()
        assert self.asked(yard)["answer"] is None

    def test_wants_the_form_of_the_page(self, yard, visitor) -> None:
        path = path_of(shared(yard))
        self.form(visitor.get(path))

        for form in ("", self.asked(yard)["id"], "x:y"):
            assert (
                visitor.post(f"{path}/approvals", {"form": form, "answer": "yes"}).status_code
                == 404
            )
        assert self.asked(yard)["answer"] is None

    def test_is_not_to_be_given_by_a_link_that_does_not_show_it(self, yard, visitor) -> None:
        token = path_of(shared(yard, shows=["counts"])).rpartition("/")[2]

        answer = visitor.post(
            f"/api/v1/shares/{token}/approvals/",
            {"approval_id": self.asked(yard)["id"], "answer": "yes"},
            content_type="application/json",
        )

        assert answer.status_code == 404
        assert self.asked(yard)["answer"] is None
