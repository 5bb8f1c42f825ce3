from datetime import date

import pytest

from pieces.actions import commissions, handing_over
from pieces.models import Commission, Piece, Use
from studio.domain.ids import uuid7
from studio.models import JournalEntry, Note
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import DAY, SECRET, S, form, jars, lose, piece, put, take


def sent(client, order, what, body=None, **more):
    return factories.sent(client, f"{S}commissions/{order.pk}/{what}/", {**(body or {}), **more})


def seen(client, order):
    return client.get(f"{S}commissions/{order.pk}/").json()


class TestTaking:
    def test_works(self, maker, studio):
        jar, lid = form(studio, "jar", "J"), form(studio, "lid", "L")
        recipe = [
            {"role": "jar", "design_id": str(jar.pk)},
            {"role": "lid", "design_id": str(lid.pk), "count": 1},
        ]
        body = {
            "number": "C-103",
            "client_name": "Marrowfield  Garden Society",
            "client_contact": SECRET,
            "what": "jars with pine-knop lids",
            "promised_date": "2026-12-04",
            "lines": [{"what": "jars", "wanted_sets": 6, "recipe": recipe}],
        }

        answer = factories.sent(maker[1], f"{S}commissions/", body)

        assert answer.status_code == 201
        order = answer.json()["commission"]
        assert (order["number"], order["client_name"]) == ("C-103", "Marrowfield Garden Society")
        assert (order["days_left"], order["state"]) == (34, "open")
        assert answer.json()["lines"][0]["sentence"] == "6 pairs wanted: none begun"
        assert order["client_contact"] == SECRET

    def test_numbers_go_on_after_one_that_was_given(self, maker):
        first = take(maker[0], number="C-105")
        second = take(maker[0])

        taken = {"client_name": "A", "what": "b", "number": "c-105"}
        answer = factories.sent(maker[1], f"{S}commissions/", taken)

        assert (first.number, second.number) == ("C-105", "C-106")
        assert answer.status_code == 409
        assert answer.json()["type"] == "/problems/commission-number-taken"

    @pytest.mark.parametrize(
        ("field", "value"),
        [
            ("client_name", "turned \u202e name"),
            ("client_name", "x" * 200_000),
            ("promised_date", "0001-01-01"),
            ("number", "../C"),
            ("use", "eating"),
        ],
    )
    def test_names_what_cannot_be(self, maker, field, value):
        body = {"client_name": "Larkspur Inn", "what": "tiles", field: value}

        answer = factories.sent(maker[1], f"{S}commissions/", body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == f"#/{field}"

    def test_a_set_names_each_design_once(self, maker, studio):
        jar = str(form(studio, "jar", "J").pk)
        recipe = [{"role": "jar", "design_id": jar}, {"role": "spare", "design_id": jar}]
        line = {"what": "jars", "wanted_sets": 1, "recipe": recipe}
        body = {"client_name": "Larkspur Inn", "what": "tiles", "lines": [line]}

        answer = factories.sent(maker[1], f"{S}commissions/", body)

        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/not-a-recipe")
        assert not Commission.objects.exists()

    def test_neither_name_nor_contact_enters_the_journal(self, maker):
        order = take(maker[0])
        change = {"client_name": "Somebody Else", "client_contact": "elsewhere"}
        answer = maker[1].patch(f"{S}commissions/{order.pk}/", change, format="json")
        assert answer.status_code == 200

        told = "".join(str(entry.facts) for entry in JournalEntry.objects.all())
        told += "".join(Note.objects.values_list("text", flat=True))

        for word in ("Marrowfield", SECRET, "Somebody", "elsewhere", "knop"):
            assert word not in told


class TestContact:
    def test_is_for_the_owner_and_the_orders_maker(
        self, maker, owner, helper, technician, studio, join
    ):
        order = take(maker[0])
        _, other = join(studio, ["maker"], "Mo")

        told = {
            name: SECRET in client.get(f"{S}commissions/{order.pk}/").content.decode()
            for name, client in (
                ("owner", owner[1]),
                ("maker", maker[1]),
                ("other", other),
                ("helper", helper[1]),
                ("technician", technician[1]),
            )
        }

        assert told == {
            "owner": True,
            "maker": True,
            "other": False,
            "helper": False,
            "technician": False,
        }
        assert SECRET not in maker[1].get(f"{S}commissions/").content.decode()

    def test_is_not_there_for_strangers(self, maker, stranger):
        order = take(maker[0])

        answers = [
            stranger[1].get(f"{S}commissions/{order.pk}/"),
            stranger[1].get(f"/api/v1/studios/quay/commissions/{order.pk}/"),
            maker[1].get(f"{S}commissions/{uuid7()}/"),
        ]

        assert [answer.status_code for answer in answers] == [404, 404, 404]
        assert answers[1].json()["type"] == answers[2].json()["type"]


class TestCounts:
    def test_are_in_sets(self, maker):
        order, _ = jars(maker[0], sets=3)
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "checked")
        put(maker[0], "J02", "drying", "bone_dry")
        lose(maker[0], "L03", cause="dropped")

        line = seen(maker[1], order)["lines"][0]

        counts = line["counts"]
        assert (counts["wanted"], counts["finished"], counts["alive"]) == (6, 1, 2)
        assert (counts["planned"], counts["pieces"], counts["lost_pieces"]) == (0, 5, 1)
        assert line["sentence"] == "6 pairs wanted: 1 finished, 1 on the way, 1 lost in pieces"
        assert {row["state"]: row["count"] for row in line["stages"]}["checked"] == 2

    def test_a_spare_lid_saves_a_jar(self, maker):
        order, _ = jars(maker[0], sets=3)
        lose(maker[0], "L01")
        lose(maker[0], "J03")
        assert seen(maker[1], order)["lines"][0]["counts"]["alive"] == 2

        lose(maker[0], "J02")
        body = {"piece_ids": [str(piece("L02").pk), str(piece("J01").pk)], "seat_gap_mm": "0.4 mm"}
        answer = factories.sent(maker[1], f"{S}matches/", {"kind": "matched", **body})

        assert answer.status_code == 201
        line = seen(maker[1], order)["lines"][0]
        assert line["counts"]["alive"] == 1
        words = {row["mark"]: row["words"] for row in line["pieces"]}
        assert words["L02"] == "lid for J01"
        lid = next(row for row in line["pieces"] if row["mark"] == "L02")
        assert lid["partners"][0]["seat_gap_mm"] == 0.4
        assert maker[1].get(f"{S}pieces/{lid['id']}/").json()["partners"][0]["mark"] == "J01"

    def test_the_newest_match_counts_and_taking_it_back_restores_the_old_one(self, maker):
        order, _ = jars(maker[0], sets=2)

        def partner():
            rows = seen(maker[1], order)["lines"][0]["pieces"]
            return next(row["words"] for row in rows if row["mark"] == "L02")

        body = {"kind": "matched", "piece_ids": [str(piece("L02").pk), str(piece("J01").pk)]}
        answer = factories.sent(maker[1], f"{S}matches/", body)
        assert partner() == "lid for J01"
        assert [row["code"] for row in answer.json()["warnings"]] == ["matched-before"]

        back = {"corrects": answer.json()["id"]}
        assert factories.sent(maker[1], f"{S}retractions/", back).status_code == 201
        assert partner() == "lid for J02"

    def test_two_stories_leave_a_set_in_doubt(self, maker):
        order, _ = jars(maker[0], sets=2)
        Piece.objects.filter(mark="J01").update(has_clash=True)

        shown = seen(maker[1], order)

        assert shown["lines"][0]["counts"]["in_doubt"] == 1
        assert [row["code"] for row in shown["warnings"]] == ["two-stories"]


class TestParting:
    def test_refuses_what_was_not_matched(self, maker):
        jars(maker[0], sets=2)
        body = {"kind": "parted", "piece_ids": [str(piece("L02").pk), str(piece("J01").pk)]}

        answer = factories.sent(maker[1], f"{S}matches/", body)

        assert (answer.status_code, answer.json()["type"]) == (409, "/problems/not-matched")

    def test_a_piece_does_not_stand_with_itself(self, maker):
        jars(maker[0], sets=1)
        pk = str(piece("J01").pk)

        answer = factories.sent(
            maker[1], f"{S}matches/", {"kind": "matched", "piece_ids": [pk, pk]}
        )

        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/with-itself")


class TestPlanning:
    def test_sets_are_matched_and_known_to_their_order(self, maker):
        order, line = jars(maker[0], sets=1)
        named = [{"id": str(uuid7()), "role": "lid", "mark": "L42"}]

        body = {"sets": 2, "pieces": named}
        answer = factories.sent(maker[1], f"{S}lines/{line.pk}/plannings/", body)

        assert answer.status_code == 201
        assert answer.json()["matches"] == 2
        marks = [row["mark"] for row in answer.json()["pieces"]]
        assert "L42" in marks
        assert len(marks) == 4
        assert seen(maker[1], order)["lines"][0]["counts"]["pieces"] == 6
        told = maker[1].get(f"{S}pieces/{piece('L42').pk}/").json()
        assert told["order"]["number"] == order.number

    def test_pieces_planned_together_for_one_recipe_are_matched(self, maker, studio):
        bracket = form(studio, "bracket", "B")
        order = take(maker[0])
        line = order.lines.get()
        recipe = {"recipe": [{"role": "bracket", "design_id": str(bracket.pk), "count": 2}]}
        assert factories.sent(maker[1], f"{S}lines/{line.pk}/recipe/", recipe).status_code == 201

        body = {"design_id": str(bracket.pk), "count": 2, "line_id": str(line.pk)}
        answer = factories.sent(maker[1], f"{S}pieces/", body)

        assert answer.status_code == 201
        rows = seen(maker[1], order)["lines"][0]["pieces"]
        assert {row["words"] for row in rows} == {"bracket for B01", "bracket for B02"}

    def test_a_piece_takes_its_use_from_the_order(self, maker, studio):
        order = take(maker[0], use="display")
        body = {
            "design_id": str(form(studio, "tray", "Y").pk),
            "line_id": str(order.lines.get().pk),
        }

        factories.sent(maker[1], f"{S}pieces/", body)

        assert piece("Y01").use == Use.DISPLAY

    def test_is_for_the_orders_own_maker(self, maker, studio, join):
        _, line = jars(maker[0], sets=1)
        _, other = join(studio, ["maker"], "Mo")

        assert (
            factories.sent(other, f"{S}lines/{line.pk}/plannings/", {"sets": 1}).status_code == 403
        )


class TestChanging:
    def test_wants_the_row_that_was_read(self, maker):
        order = take(maker[0])
        etag = maker[1].get(f"{S}commissions/{order.pk}/")["ETag"]

        def change(what, tag):
            body, path = {"what": what}, f"{S}commissions/{order.pk}/"
            return maker[1].patch(path, body, format="json", headers={"If-Match": tag})

        first, second = change("tall jars", etag), change("squat jars", etag)

        assert (first.status_code, second.status_code) == (200, 412)
        assert second.json()["current"]["what"] == "tall jars"
        assert change("squat jars", first["ETag"]).status_code == 200

    def test_only_the_owner_lifts_display(self, maker, owner):
        order = take(maker[0])
        path = f"{S}commissions/{order.pk}/"

        assert maker[1].patch(path, {"use": "display"}, format="json").status_code == 200
        refused = maker[1].patch(path, {"use": "food"}, format="json")
        lifted = owner[1].patch(path, {"use": "food"}, format="json")

        assert (refused.status_code, refused.json()["type"]) == (403, "/problems/not-permitted")
        assert lifted.json()["commission"]["use"] == "food"

    def test_only_the_owner_lifts_display_from_a_piece(self, maker, owner, helper):
        jars(maker[0], sets=1)
        path = f"{S}pieces/{piece('J01').pk}/uses/"

        restricted = factories.sent(helper[1], path, {"use": "display"})
        refused = [factories.sent(who[1], path, {"use": "food"}) for who in (helper, maker)]
        back = {"corrects": restricted.json()["id"]}
        taken_back = factories.sent(helper[1], f"{S}retractions/", back)

        assert restricted.status_code == 201
        assert [answer.status_code for answer in refused] == [403, 403]
        assert taken_back.json()["type"] == "/problems/undone-otherwise"
        assert piece("J01").use == Use.DISPLAY
        assert factories.sent(owner[1], path, {"use": "food"}).status_code == 201
        assert piece("J01").use == Use.FOOD

    def test_is_not_for_others(self, maker, helper, technician, studio, join):
        order = take(maker[0])
        _, other = join(studio, ["maker"], "Mo")
        body = {"what": "mine now"}

        answers = [
            client.patch(f"{S}commissions/{order.pk}/", body, format="json").status_code
            for client in (other, helper[1], technician[1])
        ]

        assert answers == [403, 403, 403]

    def test_a_closed_order_stays_as_it_is_until_opened(self, maker):
        order = take(maker[0])
        assert sent(maker[1], order, "closings", {"kind": "cancelled"}).status_code == 201

        refused = sent(maker[1], order, "promises", {"promised_date": "2026-12-24"})
        sent(maker[1], order, "closings", {"kind": "reopened"})
        now = sent(maker[1], order, "promises", {"promised_date": "2026-12-24"})

        assert (refused.status_code, refused.json()["type"]) == (
            409,
            "/problems/commission-closed",
        )
        assert now.json()["commission"]["promised_date"] == "2026-12-24"


class TestHandingOver:
    def test_gives_what_is_finished_and_closes_when_no_more_is_wanted(self, maker):
        order, _ = jars(maker[0], sets=2, wanted=1)
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "packed")

        answer = sent(maker[1], order, "deliveries")

        assert answer.status_code == 201
        assert [row["state"] for row in answer.json()["pieces"]] == ["delivered", "delivered"]
        assert answer.json()["commission"]["state"] == "closed"
        assert answer.json()["lines"][0]["counts"]["delivered"] == 1
        assert answer.json()["cautions"][0]["code"] == "food-use-not-declared"

    def test_stays_open_while_more_is_wanted(self, maker):
        order, _ = jars(maker[0], sets=2, wanted=2)
        put(maker[0], "J01", "finished", "packed")

        answer = sent(maker[1], order, "deliveries", {"piece_ids": [str(piece("J01").pk)]})

        assert answer.json()["commission"]["state"] == "open"

    def test_refuses_nothing_and_strange_pieces(self, maker, studio):
        order, _ = jars(maker[0], sets=1)
        strange = factories.piece(form(studio, "tray", "Y"), maker[0])

        nothing = sent(maker[1], order, "deliveries")
        other = sent(maker[1], order, "deliveries", {"piece_ids": [str(strange.pk)]})

        assert nothing.json()["type"] == "/problems/nothing-to-hand-over"
        assert other.json()["type"] == "/problems/not-of-this-order"
        assert other.status_code == 409


class TestReports:
    # Figures as in the case about the sauce boat: Pb < 0.1, Cd < 0.01 mg/l; depth 58 mm, 310 ml.
    REPORT = {
        "laboratory": "Assay Office",
        "reported_on": "2026-10-30",
        "glaze": "clear 12",
        "occasion_name": "F-205",
        "lead_value": 0.1,
        "lead_is_below": True,
        "cadmium_value": 0.01,
        "cadmium_is_below": True,
        "unit": "mg_per_l",
        "depth_mm": 58,
        "volume_ml": "310 ml",
    }

    def test_are_kept_as_they_were_written_and_declare_nothing(self, maker):
        order = take(maker[0])

        answer = sent(maker[1], order, "reports", self.REPORT)

        assert answer.status_code == 201
        kept = seen(maker[1], order)
        assert kept["reports"][0]["lead_is_below"]
        assert kept["reports"][0]["volume_ml"] == 310
        assert [row["code"] for row in kept["cautions"]] == ["food-use-report-kept"]
        assert "safe" not in maker[1].get(f"{S}commissions/{order.pk}/").content.decode().lower()

    @pytest.mark.parametrize(
        ("field", "value"), [("lead_value", "NaN"), ("lead_value", -1), ("unit", "ppm")]
    )
    def test_name_what_cannot_be(self, maker, field, value):
        order = take(maker[0])

        answer = sent(maker[1], order, "reports", {**self.REPORT, field: value})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == f"#/{field}"


class TestList:
    def test_tells_those_at_risk_first(self, maker):
        take(maker[0], promised=date(2026, 10, 30), client="Late")
        risky = take(maker[0], promised=date(2026, 11, 13), client="Risky")
        take(maker[0], promised=date(2026, 11, 20), client="Fine")
        done = take(maker[0], client="Done")
        commissions.close(act=factories.act(maker[0]), commission=done, is_cancelled=False)
        commissions.judge(
            commission=risky,
            risk="at_risk",
            words="hardly enough in time",
            likely_from=date(2026, 11, 14),
            likely_until=date(2026, 11, 20),
            at=NOW,
        )

        answer = maker[1].get(f"{S}commissions/").json()

        names = {
            block: [row["client_name"] for row in answer[block]]
            for block in ("at_risk", "on_course", "closed")
        }
        assert names == {"at_risk": ["Late", "Risky"], "on_course": ["Fine"], "closed": ["Done"]}
        assert answer["at_risk"][1]["risk_words"] == "hardly enough in time"
        assert answer["at_risk"][0]["days_left"] == -1

    def test_costs_the_same_however_many(self, maker, django_assert_num_queries):
        take(maker[0])
        maker[1].get(f"{S}commissions/")
        jars(maker[0], sets=4)
        take(maker[0])

        with django_assert_num_queries(11):
            assert maker[1].get(f"{S}commissions/").status_code == 200


class TestAssigning:
    def test_moves_a_piece_with_its_maker_asked_in_both_orders(self, maker, studio, join, owner):
        _, line = jars(maker[0], sets=2)
        other, client = join(studio, ["maker"], "Mo")
        mine = take(other, client="Larkspur Inn")
        body = {"piece_ids": [str(piece("J01").pk)], "line_id": str(mine.lines.get().pk)}

        refused = factories.sent(client, f"{S}assignments/", body)
        moved = factories.sent(owner[1], f"{S}assignments/", body)

        assert refused.status_code == 403
        assert moved.status_code == 201
        assert piece("J01").line_id == mine.lines.get().pk
        assert line.pieces.count() == 3

    def test_warns_of_another_design_and_of_display(self, maker, studio):
        _, line = jars(maker[0], sets=1)
        tray = factories.piece(form(studio, "tray", "Y"), maker[0], use="display", mark="Y09")

        body = {"piece_ids": [str(tray.pk)], "line_id": str(line.pk)}
        answer = factories.sent(maker[1], f"{S}assignments/", body)

        assert [row["code"] for row in answer.json()["warnings"]] == [
            "not-in-recipe",
            "display-only",
        ]

    def test_a_piece_with_the_client_stays_there(self, maker):
        order, _ = jars(maker[0], sets=1)
        put(maker[0], "J01", "finished", "packed", at=NOW - 2 * DAY)
        handing_over.hand_over(act=factories.act(maker[0], NOW - DAY), commission=order)

        body = {"piece_ids": [str(piece("J01").pk)], "line_id": None}
        answer = factories.sent(maker[1], f"{S}assignments/", body)

        assert answer.json()["type"] == "/problems/handed-over-already"

    def test_is_refused_to_the_helper_and_the_technician(self, maker, helper, technician):
        jars(maker[0], sets=1)
        body = {"piece_ids": [str(piece("J01").pk)], "line_id": None}

        for client in (helper[1], technician[1]):
            assert factories.sent(client, f"{S}assignments/", body).status_code == 403
