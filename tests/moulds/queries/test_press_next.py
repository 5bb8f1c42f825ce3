import pytest

from moulds.actions import parts
from moulds.queries.press_next import press_next
from tests import factories
from tests.moulds import yard


@pytest.fixture
def offered(studio, shelves, now):
    def rows():
        return press_next(studio, at=now, busy=shelves.busy)

    return rows


def labels(rows):
    return [row.now.mould_set.label for row in rows]


class TestPressNext:
    def test_offers_the_dry_then_the_usable_then_those_held_back(self, offered):
        rows = offered()

        assert labels(rows) == ["M09", "M13", "M10", "M11"]
        assert [row.may_press for row in rows] == [True, True, True, False]
        assert [row.now.dryness.word for row in rows] == ["dry", "dry", "usable", "dry"]

    def test_says_why_a_set_is_held_back(self, offered):
        assert offered()[-1].reason == "its partner M12 is out of use; M08 is missing"

    def test_says_how_damp_a_set_is(self, offered):
        assert offered()[2].reason == "usable: 5.8 % free water, no press since dry"

    def test_offers_a_mended_set_and_its_partners(self, offered, shelves, owner):
        for label, kind in (("M12", "mended"), ("M08", "found")):
            part = shelves.casting(label).parts.get()
            parts.tell(act=factories.act(owner[0]), mould_part=part, kind=kind)

        rows = offered()

        assert labels(rows) == ["M08", "M09", "M11", "M12", "M13", "M10"]
        assert all(row.may_press for row in rows)

    def test_leaves_out_a_set_that_was_pressed_wet(self, offered, shelves, owner):
        # 160 g of clay give 11.6 g to 378 g of room: after six presses 5.8 + 18.3 %.
        yard.pressed(owner[0], shelves.casting("M10"), count=6)

        assert "M10" not in labels(offered())

    def test_asks_the_same_number_of_queries_however_many_sets(
        self, studio, shelves, now, django_assert_max_num_queries
    ):
        studio.settings  # noqa: B018  read once by whoever calls

        with django_assert_max_num_queries(10):
            press_next(studio, at=now, busy=shelves.busy)

    def test_shows_no_other_studio(self, shelves, other_studio, now):
        assert press_next(other_studio, at=now, busy=()) == []
