"""Ware that waits, what fits, tickets: over the wire."""

from datetime import date

from pieces.domain.stages import DRYING, GLAZE_FIRED, GLAZED
from pieces.models import Commission, CommissionLine, Piece
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, ask_for, put, tell, tile

S = "/api/v1/studios/yard/"


def promise(its, maker, piece, due):
    order = Commission.objects.create(
        studio=its.studio,
        number=f"C-{piece.mark}",
        client_name="An Inn",
        maker=maker,
        what="tiles",
        promised_date=due,
        taken_at=NOW - 30 * DAY,
    )
    line = CommissionLine.objects.create(
        studio=its.studio, commission=order, what="tiles", wanted_sets=1
    )
    Piece.objects.filter(pk=piece.pk).update(line=line)
    return order


class TestQueue:
    def test_groups_by_kind_and_cone_and_explains_every_place(self, yard, maker, owner):
        """The studio's rule: a promise inside 14 days, then the longest wait."""
        yards.load(yard)
        tile(yard, maker[0], mark="T1", days=16)
        promised = tile(yard, owner[0], mark="T2", days=2)
        order = promise(yard, owner[0], promised, date(2026, 11, 13))
        far_off = tile(yard, maker[0], mark="T3", days=3)
        promise(yard, maker[0], far_off, date(2026, 12, 18))
        tile(yard, maker[0], DRYING, mark="T4")

        answer = maker[1].get(f"{S}kiln-queue/").json()

        (group,) = answer["groups"]
        assert (group["kind"], group["cone"], group["oldest_days"]) == ("bisque", "04", 16)
        assert [row["piece"]["mark"] for row in group["rows"]] == ["T2", "T1", "T3"]
        first, second, third = group["rows"]
        assert first["due_date"] == "2026-11-13"
        assert first["commission"] == {"id": str(order.pk), "number": order.number}
        assert "An Inn" not in str(answer)
        assert "in 13 days" in first["reason"]
        assert second["waits_days"] == 16
        assert second["reason"].startswith("Has waited 16 days.")
        assert third["dry_evidence"] == {
            "word": "check",
            "ok": True,
            "detail": "Called bone dry by touch, 28 October.",
        }
        assert second["mine"]
        assert not first["mine"]
        assert "14 days" in answer["rule"]

    def test_prefers_whoever_fired_less_this_month(self, yard, maker, owner, technician):
        load = yards.load(yard, starts_at=NOW - 9 * DAY, made_at=NOW - 12 * DAY)
        put(load, technician[0], tile(yard, maker[0], days=12), may_build=True)
        tell(load, technician[0], "started", NOW - 9 * DAY, is_catching_up=True)
        tile(yard, maker[0], mark="T1", days=5)
        tile(yard, owner[0], mark="T2", days=5)

        (group,) = maker[1].get(f"{S}kiln-queue/").json()["groups"]

        assert [row["piece"]["mark"] for row in group["rows"]] == ["T2", "T1"]
        assert "0.3 l" in group["rows"][1]["reason"]

    def test_says_whose_ware_gets_a_layer_and_why_others_do_not(self, yard, maker, owner):
        """By the rule; a tile of 170 by 170 by 12 mm wet is 0.3 l dry, by multiplication."""
        waits = tile(yard, maker[0], mark="T1", days=16)
        promised = tile(yard, owner[0], mark="T2", days=2)
        promise(yard, owner[0], promised, date(2026, 11, 13))

        (group,) = maker[1].get(f"{S}kiln-queue/", {"room_l": "0.5"}).json()["groups"]

        layer = group["layer"]
        assert layer["taken"] == [str(promised.pk)]
        (put_off,) = layer["put_off"]
        assert put_off["piece_id"] == str(waits.pk)
        assert "in 13 days" in put_off["reason"]
        assert "needs 0.3 l, 0.2 l left" in put_off["reason"]
        assert layer["offer"] == "0.2 l left over for small ware."

    def test_refuses_a_layer_without_room(self, yard, maker):
        answer = maker[1].get(f"{S}kiln-queue/", {"room_l": "0"})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/room_l"

    def test_leaves_out_what_is_booked_held_or_unclaimed(self, yard, maker):
        put(yards.load(yard), maker[0], tile(yard, maker[0]))
        held, found = tile(yard, maker[0]), tile(yard, maker[0])
        Piece.objects.filter(pk=held.pk).update(has_clash=True)
        Piece.objects.filter(pk=found.pk).update(unclaimed_since=NOW)

        assert maker[1].get(f"{S}kiln-queue/").json()["groups"] == []

    def test_shows_what_dries_when_asked(self, yard, maker):
        tile(yard, maker[0], DRYING, mark="T4")

        groups = maker[1].get(f"{S}kiln-queue/", {"drying": "true"}).json()["groups"]

        (row,) = groups[0]["rows"]
        assert (row["dry_evidence"]["word"], row["dry_evidence"]["ok"]) == ("none", False)

    def test_puts_ware_with_a_ticket_under_its_cone(self, yard, maker):
        yards.load(yard, "glaze")
        tile(yard, maker[0], GLAZED, mark="T1")
        ticketed = tile(yard, maker[0], GLAZED, mark="T2")
        ask_for(ticketed, maker[0], "04", words="two cones lower")

        groups = maker[1].get(f"{S}kiln-queue/", {"kind": "glaze"}).json()["groups"]

        assert [(g["cone"], [r["piece"]["mark"] for r in g["rows"]]) for g in groups] == [
            ("04", ["T2"]),
            ("6", ["T1"]),
        ]
        assert groups[0]["rows"][0]["ticket"] == {
            "cone": "04",
            "words": "two cones lower",
            "why": "",
        }
        only = maker[1].get(f"{S}kiln-queue/", {"kind": "glaze", "cone": "6"}).json()["groups"]
        assert [group["cone"] for group in only] == ["6"]

    def test_asks_as_many_questions_for_one_piece_as_for_many(
        self, yard, maker, django_assert_max_num_queries
    ):
        for _ in range(9):
            tile(yard, maker[0])

        with django_assert_max_num_queries(36):
            answer = maker[1].get(f"{S}kiln-queue/")

        assert len(answer.json()["groups"][0]["rows"]) == 9


class TestTicket:
    def test_makes_fired_ware_wait_to_be_fired_again(self, yard, maker, sent):
        """Crawled, ground, glazed thick: its cone is chosen on purpose."""
        piece = tile(yard, maker[0], GLAZE_FIRED, mark="T1")
        body = {
            "kind": "glaze",
            "cone": "5",
            "words": "the back edge",
            "fault": "crawled",
            "mended": ["ground", "glazed_thicker"],
        }

        answer = sent(maker[1], f"{S}pieces/{piece.pk}/firing-tickets/", body)

        assert answer.json()["ticket"]["cone"] == "5"
        assert answer.json()["warnings"][0]["code"] == "glaze-fired-again"
        (group,) = maker[1].get(f"{S}kiln-queue/").json()["groups"]
        assert (group["kind"], group["cone"]) == ("glaze", "5")
        rows = maker[1].get(f"{S}pieces/{piece.pk}/firing-tickets/").json()["results"]
        assert [(row["words"], row["why"]) for row in rows] == [
            ("the back edge", "crawled; ground back, glazed again thickly")
        ]

    def test_is_for_its_maker_or_who_builds_loads(self, yard, maker, technician, join, sent):
        piece = tile(yard, maker[0], GLAZED)
        _, other = join(yard.studio, ["maker"], "Mo")
        path, body = f"{S}pieces/{piece.pk}/firing-tickets/", {"kind": "glaze", "cone": "5"}

        assert sent(other, path, body).status_code == 403
        assert sent(technician[1], path, body).status_code == 201
