"""What a load costs each maker."""

from uuid import UUID, uuid4

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.bills import Line, bill, which
from firings.domain.fees import NothingToShare

BRAM, PIET, NESSA = (UUID(int=number) for number in (1, 2, 3))


def line(payer, litres, **more):
    return Line(uuid4(), payer, litres, **more)


class TestBill:
    def test_shares_a_cost_so_that_it_adds_up_exactly(self):
        # £27.40 by 46.0, 31.5 and 22.5 l is £12.60, £8.63 and £6.17. Arithmetic.
        lines = [line(BRAM, 40.0), line(PIET, 31.5), line(NESSA, 22.5), line(BRAM, 6.0)]

        shares = bill(lines, cost_minor=2740, per_litre_minor=180)

        assert [(one.payer, one.litres, one.minor) for one in shares] == [
            (BRAM, 46.0, 1260),
            (PIET, 31.5, 863),
            (NESSA, 22.5, 617),
        ]
        assert sum(shares[0].lines.values()) == 1260

    def test_goes_by_the_tariff_where_no_cost_is_said(self):
        # 4.68 l at £2.60 is £12.168; arithmetic.
        shares = bill([line(BRAM, 4.68)], per_litre_minor=260)

        assert shares[0].minor == 1217

    def test_rounds_half_a_penny_up(self):
        assert bill([line(BRAM, 0.25)], per_litre_minor=10)[0].minor == 3

    def test_says_the_litres_and_no_money_without_a_tariff(self):
        share = bill([line(BRAM, 2.5)])[0]

        assert (share.litres, share.minor, share.lines) == (2.5, None, {})

    def test_bills_what_was_said_and_keeps_what_was_reckoned(self):
        share = bill([line(BRAM, 4.68)], said_l={BRAM: 4.0, PIET: 9.0}, per_litre_minor=100)[0]

        assert (share.litres, share.said_l, share.billed_l, share.minor) == (4.68, 4.0, 4.0, 400)

    def test_does_not_charge_what_did_not_fire(self):
        lines = [line(BRAM, 2.0), line(PIET, 3.0, is_charged=False)]

        shares = bill(lines, cost_minor=1000)

        assert [(one.payer, one.minor) for one in shares] == [(BRAM, 1000)]

    def test_refuses_to_share_a_cost_by_nothing(self):
        with pytest.raises(NothingToShare):
            bill([line(BRAM, 0.0)], cost_minor=1000)

    @settings(deadline=None)
    @given(
        cost=st.integers(0, 100_000),
        litres=st.lists(st.floats(0.01, 200.0), min_size=1, max_size=12),
    )
    def test_adds_up_over_payers_and_over_their_things(self, cost, litres):
        payers = (BRAM, PIET, NESSA)
        lines = [line(payers[number % 3], each) for number, each in enumerate(litres)]

        shares = bill(lines, cost_minor=cost)

        assert sum(one.minor for one in shares) == cost
        assert all(sum(one.lines.values()) == one.minor for one in shares)


class TestWhich:
    def test_counts_the_firings_of_a_kind(self):
        assert which("glaze", 2) == "second glaze firing"
        assert which("bisque", 7) == "7th bisque firing"
