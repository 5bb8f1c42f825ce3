from datetime import date

from pieces.models import Piece
from studio.domain.ids import uuid7
from studio.models import OpeningHours
from tests import factories
from tests.firings import yard as yards
from tests.pieces.orders import DAY, S, form, jars, lose, put, take


def outlook(client, order):
    answer = client.get(f"{S}commissions/{order.pk}/outlook/")
    assert answer.status_code == 200
    return answer.json()


def fates(member, good, lost):
    """Let so many pieces of the studio be finished, and so many be lost in drying."""
    tray = form(member.studio, "tray", "Y")
    for number in range(good + lost):
        mark = f"Y{number:02}"
        factories.piece(tray, member, mark=mark, begun_at=factories.NOW - 60 * DAY)
        at = factories.NOW - 30 * DAY
        put(member, mark, "drying", "drying", at=at)
        if number < lost:
            lose(member, mark, at=at + DAY)
            continue
        steps = (
            ("bisque", "in_bisque", 3),
            ("bisque", "bisqued", 5),
            ("glaze", "glaze_fired", 9),
            ("finished", "checked", 10),
        )
        for stage, state, days in steps:
            put(member, mark, stage, state, at=at + days * DAY)


class TestOutlook:
    def test_is_a_guess_in_words_until_twenty_fates_are_known(self, maker):
        order, _ = jars(maker[0], sets=3)

        seen = outlook(maker[1], order)

        line = seen["lines"][0]
        assert (seen["basis"], seen["chance"], line["chance"]) == ("guess", None, None)
        assert seen["basis_words"].startswith("A guess: 0 of your own pieces")
        assert line["chance_words"] == "hardly enough by 4 Dec 2026"
        assert seen["is_at_risk"]
        assert line["press"]["more"] > 6
        assert line["press"]["words"].startswith("press ")
        assert {risk["code"] for risk in line["risks"]} == {"too-few", "wet"}
        assert seen["likely_from"] <= seen["likely_middle"] <= seen["likely_until"]
        assert line["still_needed"] == 6

    def test_tells_figures_from_own_fates(self, maker):
        fates(maker[0], good=18, lost=2)
        order = take(maker[0], wanted=1)

        seen = outlook(maker[1], order)

        assert (seen["basis"], seen["outcomes"]) == ("outcomes", 20)
        assert 0.0 <= seen["chance"] <= 1.0
        forming = next(step for step in seen["steps"] if step["step"] == "forming")
        assert (forming["lost"], forming["entered"]) == (2, 20)
        # (2 lost + a guess of 1.4 in 10) of 30: the mean of a beta distribution.
        assert forming["survival_fraction"] == round(1 - 3.4 / 30, 4)
        bisque = next(step for step in seen["steps"] if step["step"] == "bisque")
        assert (bisque["least_days"], bisque["usual_days"]) == (2.0, 2.0)

    def test_says_the_last_days_on_which_to_press(self, maker, studio):
        order = take(maker[0], promised=date(2026, 12, 18))
        for weekday in range(5):
            OpeningHours.objects.create(
                studio=studio, weekday=weekday, opens="08:00", closes="17:00"
            )

        days = outlook(maker[1], order)["lines"][0]["latest_press"]

        # The guessed days: mean 24.2, deviation 3.9; 18 December less 25, 28 and 30, on workdays.
        assert [row["date"] for row in days] == ["2026-11-23", "2026-11-20", "2026-11-18"]
        assert days[2]["words"] == "for 90 in 100 press by 18 Nov 2026"

    def test_is_all_there_when_enough_is_finished(self, maker):
        order, _ = jars(maker[0], sets=1, wanted=1)
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "checked")

        seen = outlook(maker[1], order)

        assert seen["words"] == "all that was wanted is finished"
        assert not seen["is_at_risk"]
        assert seen["lines"][0]["press"]["more"] == 0
        assert (seen["likely_from"], seen["lines"][0]["risks"]) == (None, [])

    def test_a_lost_lid_lowers_the_chance_of_pairs(self, maker):
        fates(maker[0], good=20, lost=0)
        order, _ = jars(maker[0], sets=3, wanted=2)
        before = outlook(maker[1], order)["chance"]

        lose(maker[0], "L03")
        lose(maker[0], "L02")

        assert outlook(maker[1], order)["chance"] < before
        assert Piece.objects.get(mark="J03").stage != "lost"

    def test_goes_by_the_kiln_and_says_that_it_is_one_fate(self, yard, maker, studio):
        order = take(maker[0], wanted=2)
        tiles = [yards.tile(yard, maker[0]) for _ in range(2)]
        Piece.objects.filter(pk__in=[t.pk for t in tiles]).update(line=order.lines.get())
        alone = outlook(maker[1], order)
        yards.put(yards.load(yard), maker[0], *tiles)

        seen = outlook(maker[1], order)

        codes = {risk["code"]: risk["words"] for risk in seen["lines"][0]["risks"]}
        assert codes["one-kiln"].endswith("one firing, one fate. Spread them over two loads.")
        assert seen["likely_until"] < alone["likely_until"]

    def test_costs_the_same_however_many(self, maker, django_assert_num_queries):
        order, _ = jars(maker[0], sets=1)
        outlook(maker[1], order)
        path = f"{S}lines/{order.lines.get().pk}/plannings/"
        assert factories.sent(maker[1], path, {"sets": 4}).status_code == 201

        with django_assert_num_queries(16):
            outlook(maker[1], order)

    def test_is_not_there_for_strangers_and_says_nothing_of_the_client(self, maker, stranger):
        order = take(maker[0])

        assert stranger[1].get(f"{S}commissions/{order.pk}/outlook/").status_code == 404
        assert maker[1].get(f"{S}commissions/{uuid7()}/outlook/").status_code == 404
        assert "Marrowfield" not in str(outlook(maker[1], order))
