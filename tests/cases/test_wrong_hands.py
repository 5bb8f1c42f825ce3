"""What is refused at the server whoever sends it, and text that bites."""

import csv
import io
from typing import Any
from uuid import uuid4

import pytest

from studio.domain.text import fused
from studio.models import JournalEntry
from tests import factories


def acts(yard) -> int:
    found: int = JournalEntry.objects.of(yard.demo.studio).count()
    return found


class TestApprentice:
    @pytest.mark.parametrize(
        ("path", "body"),
        [
            ("pieces/{S02}/stage-events/", {"stage": "lost", "state": "scrapped", "cause": "x"}),
            ("loads/{F-210}/events/", {"kind": "opened", "celsius": 60}),
            (
                "loads/{F-210}/readings/",
                {"reading_c": 700, "happened_at": "2026-10-30T20:00:00Z"},
            ),
            ("commissions/{C-102}/promises/", {"promised_date": "2027-01-08"}),
        ],
        ids=["scraps", "opens a kiln", "backdates a firing", "promises"],
    )
    def test_is_refused_and_changes_nothing(self, yard, path: str, body: dict[str, Any]) -> None:
        names = {
            "S02": yard.piece("S02").pk,
            "F-210": yard.load("F-210")["id"],
            "C-102": yard.order("C-102")["commission"]["id"],
        }
        for name, pk in names.items():
            path = path.replace(f"{{{name}}}", str(pk))
        before = acts(yard)

        answer = yard.send("nessa", path, **body)

        assert answer.status_code == 403
        assert acts(yard) == before
        newest = yard.get("refused/")["results"][0]
        assert newest["member"]["first_name"] == "Nessa"
        assert newest["path"].endswith(path)

    @pytest.mark.parametrize("who", ["nessa", "bram"])
    def test_does_not_lift_display_only(self, yard, who: str) -> None:
        path = f"pieces/{yard.piece('T18').pk}/"
        address = f"/api/v1/studios/{yard.demo.studio.slug}/{path}"
        client = yard.demo.client(who)

        answer = client.patch(
            address,
            {"id": str(uuid4()), "happened_at": yard.clock.now.isoformat(), "use": "food"},
            format="json",
            headers={"If-Match": client.get(address)["ETag"]},
        )

        assert answer.status_code == 403
        assert yard.piece("T18").use == "display"

    @pytest.mark.parametrize("who", ["nessa", "odile"])
    def test_nor_the_owner_deletes_what_happened(self, yard, who: str) -> None:
        before, client = acts(yard), yard.demo.client(who)
        studio = f"/api/v1/studios/{yard.demo.studio.slug}"

        for path in (
            f"pieces/{yard.piece('S02').pk}/",
            f"loads/{yard.load('F-210')['id']}/",
            f"commissions/{yard.order('C-102')['commission']['id']}/history/",
            "journal/",
        ):
            assert client.delete(f"{studio}/{path}").status_code in (403, 405), path
        assert acts(yard) == before
        written = {row["path"] for row in yard.get("refused/")["results"]}
        assert f"{studio}/journal/" in written


class TestPeeping:
    def test_finds_nothing_of_another_studio_whether_it_is_there_or_not(self, yard, db) -> None:
        quay = factories.studio("quay")
        stranger = factories.member(quay, ["owner"], "Sid")
        client = yard.demo.client("odile")
        client.force_login(stranger.user)
        order = yard.order("C-103")["commission"]["id"]

        answers = [client.get(f"/api/v1/studios/quay/commissions/{pk}/") for pk in (order, uuid4())]
        own = client.get(f"/api/v1/studios/{yard.demo.studio.slug}/commissions/{order}/")

        assert [answer.status_code for answer in (*answers, own)] == [404, 404, 404]
        foreign, unknown = (answer.json() for answer in answers)
        assert {**foreign, "instance": ""} == {**unknown, "instance": ""}
        assert "Marrowfield" not in answers[0].content.decode()


class TestTextThatBites:
    def test_is_kept_as_it_was_written(self, yard) -> None:
        bite = "<img src=x onerror=alert(1)>"
        tile = yard.piece("T18")

        yard.tell("bram", f"pieces/{tile.pk}/checks/", feel="bone_dry", note=bite)

        newest = yard.whole("T18")["story"][0]
        answer = yard.demo.client("bram").get(
            f"/api/v1/studios/{yard.demo.studio.slug}/pieces/{tile.pk}/"
        )
        assert newest["note"] == bite
        assert answer["Content-Type"].startswith("application/json")
        assert answer["X-Content-Type-Options"] == "nosniff"

    def test_too_long_is_refused_with_its_limit_and_nothing_is_kept(self, yard) -> None:
        before = acts(yard)

        problem = yard.refused(
            "bram", f"pieces/{yard.piece('T18').pk}/checks/", feel="bone_dry", note="a" * 200_000
        )

        (error,) = problem["errors"]
        assert error["pointer"] == "#/note"
        assert any(figure.isdigit() for figure in error["detail"])
        assert acts(yard) == before

    def test_hidden_in_a_number_is_seen(self, yard) -> None:
        tile = yard.piece("T01")

        told = yard.tell(
            "bram",
            "pieces/",
            design_id=str(tile.design_id),
            pieces=[{"id": str(uuid4()), "mark": "T\u200b01"}],
        )

        assert told["pieces"][0]["mark"] == "T01·b"

    @pytest.mark.parametrize(
        "bite", ['=HYPERLINK("http://example.org","tile")', "+44 blue", "\tbegins with a tab"]
    )
    def test_of_a_sum_is_defused_in_a_table_and_plain_on_the_screen(self, yard, bite) -> None:
        order = yard.order("C-102")["commission"]["id"]
        yard.tell("odile", f"commissions/{order}/promises/", promised_date=None, note=bite)

        told = yard.get(f"commissions/{order}/history/")["results"][0]
        table = yard.demo.client("odile").get(
            f"/api/v1/studios/{yard.demo.studio.slug}/commissions/{order}/history.csv"
        )

        text = b"".join(table.streaming_content) if table.streaming else table.content
        rows = list(csv.DictReader(io.StringIO(text.decode(), newline="")))
        assert told["note"] == bite
        assert rows[0]["note"] == f"'{bite}"
        assert fused(rows[0]["note"]) == bite
        # The order's first line: who took it, and what.
        assert rows[-1]["what_happened"].startswith("order C-102 taken")

    def test_of_two_makers_called_alike_is_told_apart_by_initials(self, yard) -> None:
        twin = factories.member(yard.demo.studio, ["maker"], "Bram")

        people = yard.get("members/")["results"]

        named = [row["initials"] for row in people if row["first_name"] == "Bram"]
        assert sorted(named) == sorted(["BT", twin.initials])
