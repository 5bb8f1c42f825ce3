from studio.domain import cautions


class TestOfClay:
    def test_says_its_own_first_then_colour_then_dust(self) -> None:
        said = cautions.of_clay(own="Holds cobalt.", is_coloured=True)

        assert said == ["Holds cobalt.", cautions.COLOURANT, cautions.DUST]

    def test_leaves_colour_out_of_plain_clay(self) -> None:
        assert cautions.of_clay(own="", is_coloured=False) == [cautions.DUST]


class TestJoined:
    def test_says_each_once_in_order(self) -> None:
        assert cautions.joined([["a", "dust"], ["b", "dust"]]) == ["a", "dust", "b"]


class TestWords:
    def test_never_call_anything_safe(self) -> None:
        said = (cautions.DUST, cautions.COLOURANT, cautions.DRY_ENOUGH)

        assert not any("safe" in words.lower() for words in said)
