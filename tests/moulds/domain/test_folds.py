from datetime import UTC, datetime, timedelta
from uuid import UUID

import pytest
from hypothesis import given
from hypothesis import strategies as st

from moulds.domain.folds import (
    Pressed,
    StateChanged,
    Weighed,
    count_of,
    dry_at,
    ordinal_of,
    since_dry,
    state_of,
    weights_of,
)

NOON = datetime(2026, 10, 31, 12, 0, tzinfo=UTC)
FACE, BACK = UUID(int=1), UUID(int=2)


def at(hours: float) -> datetime:
    return NOON + timedelta(hours=hours)


def pressed(hours: float, count: int = 1, *parts: UUID, number: int = 0) -> Pressed:
    return Pressed(at(hours), UUID(int=100 + number), count, frozenset(parts or (FACE, BACK)))


def weighed(hours: float, mass_g: float, *, is_dry: bool = False) -> Weighed:
    return Weighed(at(hours), UUID(int=int(abs(hours) * 60) + 1), mass_g, is_dry)


moments = st.integers(-500, 500).map(lambda h: at(h / 2))
presses = st.lists(
    st.builds(
        Pressed,
        happened_at=moments,
        id=st.uuids(),
        count=st.integers(1, 20),
        mould_parts=st.frozensets(st.sampled_from([FACE, BACK]), min_size=1),
    ),
    max_size=12,
)
weights = st.lists(
    st.builds(
        Weighed,
        happened_at=moments,
        id=st.uuids(),
        mass_g=st.floats(2000, 2900),
        is_dry=st.booleans(),
    ),
    max_size=8,
)
changes = st.lists(
    st.builds(
        StateChanged,
        happened_at=moments,
        id=st.uuids(),
        state=st.sampled_from(["whole", "chipped", "out_of_use", "missing"]),
    ),
    max_size=8,
)


class TestOrderOfArrival:
    @given(st.data(), presses, weights, changes)
    def test_never_matters(self, data, presses, weights, changes):
        def folded(presses, weights, changes):
            dry = dry_at(weights)
            weighed_at = weights_of(weights).weighed_at
            return (
                count_of(FACE, before=7, pressings=presses),
                count_of(BACK, before=0, pressings=presses),
                weights_of(weights),
                state_of(changes),
                since_dry(presses, dry_at=dry, weighed_at=weighed_at, at=at(300)),
            )

        shuffled = [data.draw(st.permutations(facts)) for facts in (presses, weights, changes)]

        assert folded(*shuffled) == folded(presses, weights, changes)

    @given(presses)
    def test_counts_every_press_once(self, presses):
        with_face = sum(p.count for p in presses if FACE in p.mould_parts)

        assert count_of(FACE, before=116, pressings=presses) == 116 + with_face


class TestCountOf:
    def test_counts_only_the_parts_that_were_used(self):
        presses = [pressed(0, 12, FACE, number=1), pressed(1, 1, FACE, BACK, number=2)]

        assert count_of(FACE, before=0, pressings=presses) == 13
        assert count_of(BACK, before=0, pressings=presses) == 1


class TestDryAt:
    def test_is_the_last_weighing_under_the_limit(self):
        # 43 % of 2310 g is 993 g of water: 30 g are 3 %, 85 g are 8.6 % of it.
        scale = [weighed(-48, 2310, is_dry=True), weighed(-10, 2340), weighed(-1, 2395)]

        assert dry_at(scale) == at(-10)

    def test_is_unknown_where_nobody_weighed_it_dry(self):
        assert dry_at([weighed(-1, 2395)]) is None


class TestSinceDry:
    def test_counts_presses_after_the_dry_weighing(self):
        presses = [pressed(-20, number=1), pressed(-5, 2, number=2), pressed(-1, number=3)]

        since = since_dry(presses, dry_at=at(-10), weighed_at=at(-3), at=NOON)

        assert (since.count, since.unweighed, since.last_at) == (3, 1, at(-1))

    def test_starts_anew_after_two_weeks_on_the_shelf_where_nobody_weighs(self):
        presses = [pressed(-24 * 30, 4, number=1), pressed(-24 * 15.5, number=2)]

        since = since_dry(presses, dry_at=None, weighed_at=None, at=NOON)

        assert since.count == 0

    def test_keeps_counting_after_a_short_rest_where_nobody_weighs(self):
        presses = [pressed(-24 * 30, 4, number=1), pressed(-24 * 5, number=2)]

        assert since_dry(presses, dry_at=None, weighed_at=None, at=NOON).count == 1


class TestOrdinalOf:
    def test_is_one_for_the_first_after_dry(self):
        scale = [weighed(-40, 2310, is_dry=True), weighed(-4, 2320)]
        presses = [pressed(-9, number=1), pressed(-8, number=2), pressed(-2, number=3)]

        ordinals = [ordinal_of(p, presses, scale) for p in presses]

        assert ordinals == [1, 2, 1]

    @given(presses, weights)
    def test_is_never_below_one(self, presses, weights):
        assert all(ordinal_of(p, presses, weights) >= 1 for p in presses)


class TestStateOf:
    def test_is_whole_until_somebody_says_otherwise(self):
        assert state_of([]) == ("whole", "")

    def test_is_the_latest_by_the_time_it_happened(self):
        said = [
            StateChanged(at(-1), UUID(int=5), "out_of_use", "edge chipped"),
            StateChanged(at(-9), UUID(int=6), "chipped", "nick"),
        ]

        assert state_of(said) == ("out_of_use", "edge chipped")


class TestWeightsOf:
    @pytest.mark.parametrize("later", [2395.0, 2300.0])
    def test_keeps_the_latest_dry_weight_and_the_latest_of_all(self, later):
        scale = [weighed(-9, 2310, is_dry=True), weighed(-1, later)]

        found = weights_of(scale)

        assert (found.dry_g, found.now_g, found.weighed_at) == (2310, later, at(-1))
