from pieces.domain import stages
from pieces.domain.lives import Stay, stays
from pieces.domain.stages import Spot
from tests.pieces.domain.telling import Book, at, bone_dry_tile, joined_boat, pressed_tile

DRYING = stages.DRYING


def told(book: Book) -> list[tuple[str, str]]:
    return [(stay.spot.state, stay.cover) for stay in stays(book.told(), book.facts)]


class TestStays:
    def test_follow_each_other_without_gaps_and_the_last_lasts(self):
        book = bone_dry_tile()

        found = stays(book.told(), book.facts)

        assert [stay.spot.state for stay in found][-1] == "bone_dry"
        assert [stay.until_at for stay in found[:-1]] == [stay.from_at for stay in found[1:]]
        assert (found[0].from_at, found[-1].until_at) == (at(0), None)

    def test_are_cut_where_the_cover_changes_while_it_dries(self):
        book = joined_boat().cover(20, "tucked").cover(100, "open").cover(120, "open", "again")

        found = stays(book.told(), book.facts)

        assert found[-2:] == [
            Stay(DRYING, "tucked", at(20), at(100)),
            Stay(DRYING, "open", at(100), None),
        ]

    def test_are_not_cut_by_a_cover_outside_the_drying(self):
        book = bone_dry_tile().cover(210, "sealed")

        assert told(book)[-1] == ("bone_dry", "")

    def test_end_where_the_piece_was_lost(self):
        book = bone_dry_tile().stage(220, Spot("lost", "scrapped"))

        found = stays(book.told(), book.facts)

        assert (found[-2].until_at, found[-1].spot.stage) == (at(220), "lost")

    def test_leave_out_what_was_passed_within_one_instant(self):
        book = pressed_tile().part(16, "tile", "demoulded").stage(16, DRYING, "set to dry")

        assert [state for state, _ in told(book)].count("out") == 0
