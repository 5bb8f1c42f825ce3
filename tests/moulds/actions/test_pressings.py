from datetime import timedelta
from itertools import permutations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from moulds.actions import bookings, parts
from moulds.actions.folds import MadeForGood
from moulds.actions.pressings import BeforePoured, PartOfAnotherCasting
from moulds.models import MouldPart, Pressing
from tests import factories
from tests.moulds import yard


def counts(casting):
    return dict(casting.parts.values_list("name", "presses"))


class TestRecord:
    def test_counts_every_mould_part_used(self, maker, casting):
        yard.pressed(maker[0], casting, count=12)

        assert counts(casting) == {"face": 12, "back": 12}

    def test_counts_only_the_part_used(self, maker, casting):
        face = casting.parts.get(name="face")

        yard.pressed(maker[0], casting, count=3, parts=[face])

        assert counts(casting) == {"face": 3, "back": 0}

    def test_goes_on_from_the_count_taken_over(self, maker, tile_set):
        casting = yard.poured(maker[0], tile_set, before=116)

        yard.pressed(maker[0], casting, count=15)

        assert counts(casting) == {"face": 131, "back": 131}

    def test_counts_no_more_when_it_is_taken_back(self, maker, casting):
        yard.pressed(maker[0], casting, count=5)
        mistaken = yard.pressed(maker[0], casting, count=12)

        yard.taken_back(maker[0], mistaken.pressing.pk)

        assert counts(casting) == {"face": 5, "back": 5}
        assert Pressing.objects.count() == 2

    def test_says_which_press_since_dry_it_was(self, maker, casting):
        yard.weighed(maker[0], casting, 2310, at=factories.NOW - timedelta(hours=9), is_dry=True)

        pressings = [
            yard.pressed(maker[0], casting, at=factories.NOW - timedelta(hours=h))
            for h in (5, 3, 1)
        ]

        assert [recorded.press_since_dry for recorded in pressings] == [1, 2, 3]

    def test_judges_a_late_press_by_what_was_known_at_its_time(self, maker, casting):
        yard.weighed(maker[0], casting, 2310, at=factories.NOW - timedelta(days=9), is_dry=True)
        yard.weighed(maker[0], casting, 2800, at=factories.NOW - timedelta(days=5))
        yard.weighed(maker[0], casting, 2315, at=factories.NOW - timedelta(days=1))

        late = yard.pressed(maker[0], casting, at=factories.NOW - timedelta(days=4))

        assert [c.code for c in late.cautions] == ["first-press-may-stick", "mould-wet"]

    def test_refuses_parts_of_another_casting(self, maker, casting, tile_set):
        other = yard.poured(maker[0], tile_set)

        with pytest.raises(PartOfAnotherCasting):
            yard.pressed(maker[0], casting, parts=list(other.parts.all()))

    def test_refuses_a_press_before_the_plaster_was_poured(self, maker, casting):
        with pytest.raises(BeforePoured):
            yard.pressed(maker[0], casting, at=casting.poured_at - timedelta(minutes=1))

    @settings(
        max_examples=12,
        deadline=None,
        suppress_health_check=[HealthCheck.function_scoped_fixture],
    )
    @given(
        presses=st.lists(
            st.tuples(st.integers(0, 48), st.integers(1, 12), st.booleans()),
            min_size=1,
            max_size=3,
        )
    )
    def test_never_depends_on_the_order_in_which_presses_arrive(self, maker, tile_set, presses):
        seen = set()
        for order in permutations(presses):
            casting = yard.poured(maker[0], tile_set, before=7)
            face = [casting.parts.get(name="face")]
            for hours, count, is_face_only in order:
                yard.pressed(
                    maker[0],
                    casting,
                    count=count,
                    parts=face if is_face_only else None,
                    at=factories.NOW - timedelta(hours=hours),
                )
            seen.add(tuple(sorted(counts(casting).items())))

        assert len(seen) == 1


class TestWarnings:
    def codes(self, recorded):
        return [caution.code for caution in recorded.cautions]

    def test_tells_that_a_first_press_may_stick_once(self, maker, casting):
        first, second = (
            self.codes(yard.pressed(maker[0], casting)),
            self.codes(yard.pressed(maker[0], casting)),
        )

        assert first == ["first-press-may-stick"]
        assert second == []

    def test_tells_of_a_wet_mould_but_takes_the_press(self, maker, casting):
        yard.weighed(maker[0], casting, 2310, at=factories.NOW - timedelta(hours=9), is_dry=True)
        yard.pressed(maker[0], casting, at=factories.NOW - timedelta(hours=5), count=2)
        # 19 % of 993 g is 189 g.
        yard.weighed(maker[0], casting, 2499, at=factories.NOW - timedelta(hours=1))

        recorded = yard.pressed(maker[0], casting)

        assert self.codes(recorded) == ["mould-wet"]
        assert recorded.cautions[0].detail.startswith("Third press since dry, 19.0 % free water")

    @pytest.mark.parametrize(
        ("kind", "code"),
        [
            ("chipped", "mould-chipped"),
            ("out_of_use", "mould-out-of-use"),
            ("missing", "mould-missing"),
        ],
    )
    def test_tells_of_the_parts(self, maker, casting, kind, code):
        yard.pressed(maker[0], casting)
        act = factories.act(maker[0])
        parts.tell(act=act, mould_part=casting.parts.first(), kind=kind, reason="edge")

        assert code in self.codes(yard.pressed(maker[0], casting))

    def test_tells_when_a_set_has_had_its_presses(self, maker, casting):
        assert self.codes(yard.pressed(maker[0], casting, count=5)) == [
            "first-press-may-stick",
            "mould-wants-rest",
        ]

    def test_says_how_far_twelve_at_once_go_beyond_it(self, maker, casting):
        recorded = yard.pressed(maker[0], casting, count=12)

        assert recorded.cautions[-1].detail == (
            "12th press since dry, and it should rest after 5: let it dry now."
        )

    def test_tells_of_a_casting_that_was_laid_aside(self, maker, casting, tile_set):
        yard.poured(maker[0], tile_set)

        assert "casting-retired" in self.codes(yard.pressed(maker[0], casting))


class TestFold:
    def test_leaves_a_part_whole_again_when_the_chip_is_taken_back(self, maker, casting):
        told = parts.tell(
            act=factories.act(maker[0]), mould_part=casting.parts.first(), kind="chipped"
        )
        assert told.mould_part.state == MouldPart.State.CHIPPED

        yard.taken_back(maker[0], told.event.pk)

        assert set(casting.parts.values_list("state", flat=True)) == {"whole"}

    def test_weighs_as_before_when_a_weighing_is_taken_back(self, maker, casting):
        yard.weighed(maker[0], casting, 2310, is_dry=True, at=factories.NOW - timedelta(hours=9))
        mistaken = yard.weighed(maker[0], casting, 2700)

        yard.taken_back(maker[0], mistaken.weighing.pk)

        casting.refresh_from_db()
        assert (casting.now_g, casting.weighed_at) == (2310, factories.NOW - timedelta(hours=9))

    def test_refuses_to_unmake_what_others_may_have_used(self, maker, casting):
        with pytest.raises(MadeForGood):
            yard.taken_back(maker[0], casting.pk)

    def test_frees_the_set_when_a_booking_is_taken_back(self, maker, tile_set):
        booking = bookings.book(
            act=factories.act(maker[0]),
            mould_set=tile_set,
            from_at=factories.NOW,
            until_at=factories.NOW + timedelta(hours=1),
        )

        yard.taken_back(maker[0], booking.pk)

        booking.refresh_from_db()
        assert booking.given_up_at == factories.NOW
