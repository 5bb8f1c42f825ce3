"""Ware that waits, what fits, tickets: over the wire."""

import math
from datetime import date

import pytest

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


class TestFit:
    def test_shows_where_everything_stands(self, yard, maker):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0], mark="T1"), tile(yard, maker[0], mark="T2"))
        tile(yard, maker[0], mark="T3")

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert (answer["verdict"], answer["reasons"]) == ("fits", [])
        items = [item for level in answer["levels"] for item in level["items"]]
        assert {item["mark"] for item in items} == {"T1", "T2"}
        # 169.7 mm wet is 159.5 mm when 6 % of it has gone.
        assert {round(item["width_mm"], 1) for item in items} == {159.5}
        assert all(item["placement_id"] and item["piece_id"] for item in items)
        assert all(abs(item["x_mm"]) <= 280 and abs(item["y_mm"]) <= 280 for item in items)
        assert "tile" in answer["levels"][0]["room_left"]["words"]
        assert answer["tallest"]["height_mm"] == pytest.approx(11.3, abs=0.05)
        assert "%" not in answer["sentence"]

    def test_is_doubtful_of_what_nobody_measured(self, yard, maker):
        yards.size(yard.kit.tile, None, None, None)
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]))[0]

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert answer["verdict"] == "doubtful"
        assert str(row.pk) in {reason["placement_id"] for reason in answer["reasons"]}

    def test_is_doubtful_of_a_kiln_without_shelves(self, yard, maker):
        yard.ox.shelves.all().delete()
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert (answer["verdict"], answer["reasons"][0]["code"]) == ("doubtful", "no-shelves")

    def test_tries_other_ware_beside_what_is_placed(self, yard, maker):
        """K2 takes nine jars of 110 mm to a shelf, so not ten that need its whole height."""
        yards.size(yard.kit.tile, 110.0, 110.0, 480.0, is_round=True)
        yard.body.dry_shrinkage_fraction = 0.0
        yard.body.save()
        load = yards.load(yard, "glaze")
        put(load, maker[0], *[tile(yard, maker[0], GLAZED) for _ in range(9)])
        tenth = tile(yard, maker[0], GLAZED)

        now = maker[1].get(f"{S}loads/{load.pk}/fit/").json()
        tried = maker[1].get(f"{S}loads/{load.pk}/fit/", {"pieces": str(tenth.pk)}).json()

        assert now["verdict"] == "fits"
        middle = [math.hypot(i["x_mm"], i["y_mm"]) for i in now["levels"][0]["items"]]
        assert max(middle) <= 215 - 55 + 1e-6
        assert tried["verdict"] == "does_not_fit"

    def test_counts_a_second_glaze_firing_as_needing_more_room(self, yard, maker):
        yards.size(yard.kit.tile, 110.0, 110.0, 440.0, is_round=True)
        yard.studio.settings.refire_headroom_mm = 60.0
        yard.studio.settings.save()
        load = yards.load(yard, "glaze")
        put(load, maker[0], tile(yard, maker[0], GLAZED))
        again = tile(yard, maker[0], GLAZE_FIRED)

        plain = maker[1].get(f"{S}loads/{load.pk}/fit/").json()
        tried = maker[1].get(f"{S}loads/{load.pk}/fit/", {"pieces": str(again.pk)}).json()

        assert tried["used_height_mm"] >= plain["used_height_mm"]


class TestCouldGo:
    def test_says_of_each_whether_it_fits_and_what_speaks_against_it(self, yard, maker, owner):
        load = yards.load(yard)
        tile(yard, maker[0], mark="T1", days=9)
        tile(yard, owner[0], DRYING, mark="T2", days=8)

        answer = maker[1].get(f"{S}loads/{load.pk}/could-go/").json()

        first, second = answer["rows"]
        assert (first["piece"]["mark"], first["fits"], first["refused"]) == ("T1", "fits", None)
        assert second["refused"]["code"] == "damp-evidence-missing"

    def test_names_the_cone_that_differs(self, yard, maker):
        load = yards.load(yard, "glaze")
        piece = tile(yard, maker[0], GLAZED)
        ask_for(piece, maker[0], "04")

        (row,) = maker[1].get(f"{S}loads/{load.pk}/could-go/").json()["rows"]

        assert row["refused"]["code"] == "cone-differs"

    def test_asks_as_many_questions_for_one_piece_as_for_many(
        self, yard, maker, django_assert_max_num_queries
    ):
        load = yards.load(yard)
        for _ in range(9):
            tile(yard, maker[0])

        with django_assert_max_num_queries(48):
            answer = maker[1].get(f"{S}loads/{load.pk}/could-go/")

        assert len(answer.json()["rows"]) == 9
