"""On what the dates of a change rest, in words."""

from pieces.domain.supposing_words import rests_on, rests_on_like

AS_IT_IS = {"is_thickness_other": False, "room": "", "is_room_learned": False}


class TestRestsOn:
    def test_owns_up_to_starting_figures_where_nobody_checked_the_clay(self) -> None:
        (said,) = rests_on(checks=0, looks=0, **AS_IT_IS)

        assert said.startswith("Nobody has checked this clay yet")

    def test_counts_the_studios_checks_and_the_pieces_own(self) -> None:
        studio, piece = rests_on(checks=12, looks=2, **AS_IT_IS)

        assert "from 12 checks of this clay" in studio
        assert "looked at 2 times" in piece

    def test_leaves_the_pieces_own_out_at_another_thickness(self) -> None:
        said = rests_on(checks=12, looks=2, **{**AS_IT_IS, "is_thickness_other": True})

        assert "left out" in said[1]
        assert not any("looked at 2" in sentence for sentence in said)

    def test_says_whether_anything_was_learned_of_the_other_place(self) -> None:
        there = {"checks": 12, "looks": 0, "is_thickness_other": False, "room": "Glaze room"}

        known = rests_on(**there, is_room_learned=True)
        unknown = rests_on(**there, is_room_learned=False)

        assert known[-1] == "In Glaze room it goes by what was learned there."
        assert unknown[-1].startswith("Nothing was learned in Glaze room yet")


class TestRestsOnLike:
    def test_counts_the_checks_of_such_clay_and_speaks_of_the_room(self) -> None:
        said = rests_on_like(checks=9, room="Glaze room", is_room_learned=True)

        assert said == [
            "It goes by what this studio learned, from 9 checks of such clay.",
            "In Glaze room it goes by what was learned there.",
        ]
