from datetime import date

import pytest
from rest_framework.test import APIClient

from pieces.actions import commissions
from pieces.models import Commission, Piece
from studio.domain.ids import uuid7
from studio.models import JournalEntry, Note
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import SECRET, S, form, jars, lose, piece, put, take


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

    def test_is_for_nobody_on_a_shared_phone_or_by_a_script(self, owner):
        order = take(owner[0])
        shed = {"name": "shed phone", "is_shared": True}
        key = factories.sent(owner[1], f"{S}devices/", shed).json()["key"]
        phone, script = APIClient(), APIClient()
        phone.credentials(HTTP_AUTHORIZATION=f"Device {key}", HTTP_X_NATCH_MEMBER=str(owner[0].pk))
        meter = {"name": "meter", "grants": ["see_studio"]}
        token = factories.sent(owner[1], f"{S}tokens/", meter).json()["key"]
        script.credentials(HTTP_AUTHORIZATION=f"Token {token}")

        answers = [client.get(f"{S}commissions/{order.pk}/") for client in (phone, script)]

        assert [answer.status_code for answer in answers] == [200, 200]
        assert not [answer for answer in answers if SECRET in answer.content.decode()]
        assert phone.patch(f"{S}commissions/{order.pk}/", {}, format="json").status_code == 403

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
        (jar,) = maker[1].get(f"{S}pieces/{lid['id']}/").json()["partners"]
        assert (jar["mark"], jar["noun"], jar["seat_gap_mm"]) == ("J01", "jar", 0.4)
        assert jar["state_words"] == "out, to join"

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

    def test_is_not_for_others(self, maker, helper, technician, studio, join):
        order = take(maker[0])
        _, other = join(studio, ["maker"], "Mo")
        body = {"what": "mine now"}

        answers = [
            client.patch(f"{S}commissions/{order.pk}/", body, format="json").status_code
            for client in (other, helper[1], technician[1])
        ]

        assert answers == [403, 403, 403]


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
