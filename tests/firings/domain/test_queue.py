"""The studio's rule for the last layer, on a worked example."""

from datetime import date, timedelta
from uuid import UUID

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.queue import Ask, order, share

TODAY = date(2026, 10, 31)


def ask(number: int, maker: str, litres: float, **more) -> Ask:
    given = {"due_date": None, "waiting_since": TODAY - timedelta(days=3), **more}
    return Ask(UUID(int=number), maker, litres=litres, **given)


BRAM = ask(1, "Bram", 9.0, due_date=date(2026, 11, 20))
PIET = ask(2, "Piet", 11.0, due_date=date(2026, 11, 13))
NESSA = ask(3, "Nessa", 6.0, waiting_since=TODAY - timedelta(days=16))


class TestOrder:
    def test_puts_the_near_promise_first_and_says_why(self):
        ranked = order([BRAM, NESSA, PIET], TODAY)

        assert [row.ask.maker for row in ranked] == ["Piet", "Nessa", "Bram"]
        assert [row.place for row in ranked] == [1, 2, 3]
        assert ranked[0].reason.startswith("Promised for 13 November, in 13 days.")
        assert ranked[1].reason.startswith("Has waited 16 days.")
        assert ranked[2].reason == "Has waited 3 days. Nessa's has waited longer."

    def test_lets_the_litres_of_the_month_decide_between_equals(self):
        much = ask(1, "Bram", 5.0, maker_litres_this_month=40.0)
        little = ask(2, "Nessa", 5.0, maker_litres_this_month=12.5)

        ranked = order([much, little], TODAY)

        assert [row.ask.maker for row in ranked] == ["Nessa", "Bram"]
        assert "40 l this month, Nessa 12.5 l" in ranked[1].reason

    def test_sets_the_rule_aside_for_what_was_put_first_and_says_who_and_why(self):
        first = ask(9, "Jun", 4.0, put_first="Odile: it is for the show.")

        ranked = order([BRAM, PIET, first], TODAY)

        assert [row.ask.maker for row in ranked] == ["Jun", "Piet", "Bram"]
        assert ranked[0].reason == "Put first by Odile: it is for the show."

    def test_names_another_of_the_same_maker(self):
        one, two = (ask(n, "Bram", 5.0, waiting_since=TODAY - timedelta(days=n)) for n in (5, 4))

        ranked = order([one, two], TODAY)

        assert ranked[1].reason == "Has waited 4 days. Another of Bram's has waited longer."
        put_off = share(ranked, 6.0).put_off[0]
        assert put_off.reason.startswith("After another of Bram's (")

    def test_says_that_a_promise_has_passed(self):
        late = ask(1, "Bram", 5.0, due_date=TODAY - timedelta(days=1))

        assert order([late], TODAY)[0].reason.startswith("Was promised for 30 October.")

    @pytest.mark.parametrize(("days", "first"), [(14, "Bram"), (15, "Nessa")])
    def test_counts_fourteen_days_and_not_one_more(self, days, first):
        bram = ask(1, "Bram", 5.0, due_date=TODAY + timedelta(days=days))

        assert order([NESSA, bram], TODAY)[0].ask.maker == first

    @settings(deadline=None)
    @given(
        waits=st.lists(st.integers(0, 30), min_size=1, max_size=8),
        dues=st.lists(st.none() | st.integers(-5, 40), min_size=8, max_size=8),
        random=st.randoms(use_true_random=False),
    )
    def test_does_not_depend_on_the_order_of_asking(self, waits, dues, random):
        asks = [
            ask(
                i,
                f"maker {i}",
                5.0,
                waiting_since=TODAY - timedelta(days=wait),
                due_date=None if dues[i] is None else TODAY + timedelta(days=dues[i]),
            )
            for i, wait in enumerate(waits)
        ]
        other = list(asks)
        random.shuffle(other)

        assert order(other, TODAY) == order(asks, TODAY)


class TestShare:
    def test_offers_the_litre_left_to_small_ware(self):
        shared = share(order([BRAM, NESSA, PIET], TODAY), 12.0)

        assert [row.ask.maker for row in shared.taken] == ["Piet"]
        assert shared.left_l == pytest.approx(1.0)
        assert shared.offer == "1 l left over for small ware."
        assert [off.ask.maker for off in shared.put_off] == ["Nessa", "Bram"]
        assert "13 November" in shared.put_off[0].reason
        assert "needs 9 l, 1 l left" in shared.put_off[1].reason

    def test_gives_what_is_left_to_ware_that_fits_it(self):
        small = ask(4, "Jun", 0.8)

        shared = share(order([BRAM, PIET, small], TODAY), 12.0)

        assert [row.ask.maker for row in shared.taken] == ["Piet", "Jun"]

    @settings(deadline=None)
    @given(litres=st.lists(st.floats(0.1, 30), min_size=1, max_size=10), room=st.floats(0.1, 60))
    def test_takes_no_more_than_there_is_and_loses_nobody(self, litres, room):
        asks = [ask(i, f"maker {i}", volume) for i, volume in enumerate(litres)]

        shared = share(order(asks, TODAY), room)

        assert sum(row.ask.litres for row in shared.taken) <= room + 1e-6
        assert len(shared.taken) + len(shared.put_off) == len(asks)
