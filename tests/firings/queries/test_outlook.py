"""Six jars with lids, of which jars and lids do not fare alike."""

from dataclasses import replace

import pytest

from firings.api.outlook import shown_outlook
from firings.domain.outlook import STEPS
from firings.domain.survival import ENOUGH_OUTCOMES
from firings.queries.outlook import Ground, outlook_of
from moulds.models import Design
from pieces.queries import commissions
from tests.factories import NOW
from tests.pieces.orders import jars


def all_at_once(share: float) -> dict[str, float]:
    """Return the steps of a design that loses what it loses in the first of them."""
    return dict.fromkeys(STEPS, 1.0) | {STEPS[0]: share}


@pytest.fixture
def order(maker):
    """An order of six jars with lids, of which one jar and its lid are planned."""
    return jars(maker[0], sets=1)[0]


def seen(order, outcomes: int):
    ground = Ground.of(order.studio, [], at=NOW)
    shares = {
        Design.objects.get(noun="jar").pk: all_at_once(0.80),
        Design.objects.get(noun="lid").pk: all_at_once(0.90),
    }
    known = replace(ground.known, outcomes=outcomes, survival_of=shares)
    now = commissions.orders_now([order])[0]
    found = outlook_of(now, replace(ground, known=known))
    return shown_outlook(found, at=NOW, journal_seq=1)["lines"][0]["press"]


class TestOutlookOf:
    # The binomial by hand: ten jars at 0.80 and eight lids at 0.90 give six pairs or more in
    # 0.967 x 0.962 = 0.930, nine of each in 0.914 x 0.992 = 0.907; seventeen in less than 0.9.
    def test_presses_each_kind_by_its_own_losses(self, order):
        press = seen(order, ENOUGH_OUTCOMES)

        assert press["by_role"] == [{"role": "jar", "count": 9}, {"role": "lid", "count": 7}]
        assert press["words"] == (
            "press 9 × jar and 7 × lid more (93 in 100), or 8 × jar and 8 × lid (91 in 100)"
        )

    def test_gives_no_chance_before_there_are_own_figures(self, order):
        press = seen(order, ENOUGH_OUTCOMES - 1)

        assert press["words"] == "press 9 × jar and 7 × lid more"
