"""Marks cut in the clay."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from pieces.domain.numbers import (
    NotAMark,
    NotASeries,
    Numbered,
    clean_mark,
    clean_series,
    free_suffix,
    mark_key,
    mark_of,
    numbered,
    shown_mark,
    split_shown,
)

series = st.text("ABCTXYZ", min_size=1, max_size=4)


class TestMarkKey:
    @pytest.mark.parametrize(
        "twin",
        [
            "T01",
            "t01",
            "T\u200b01",
            "\u202eT01",
            "T0\xad1",
            "\ufeffT01",
            " T01 ",
            "Ｔ０１",
            "T01️",
            "Tᅟ01",
            "T\x0001",
            "T01󠄁",
        ],
    )
    def test_is_one_for_marks_that_look_alike(self, twin):
        assert mark_key(twin) == mark_key("T01")

    @pytest.mark.parametrize("other", ["T1", "T 01", "T10", "TT01", "T01a"])
    def test_differs_for_marks_that_look_different(self, other):
        assert mark_key(other) != mark_key("T01")

    def test_does_not_mind_how_an_accent_is_typed(self):
        assert mark_key("e\u0301 4") == mark_key("\u00c9 4")

    @pytest.mark.parametrize("empty", ["", "  ", "\u200b", "\u3164", "\x00"])
    def test_refuses_a_mark_nobody_can_see(self, empty):
        with pytest.raises(NotAMark):
            mark_key(empty)

    def test_tells_how_long_a_mark_may_be(self):
        with pytest.raises(NotAMark) as refused:
            clean_mark("x" * 25)

        assert refused.value.facts == {"most": 24, "length": 25}

    def test_keeps_the_suffix_dot_for_itself(self):
        with pytest.raises(NotAMark):
            clean_mark("T29·b")

    @given(st.text(max_size=24))
    def test_cleaning_twice_is_cleaning_once(self, text):
        try:
            mark = clean_mark(text)
        except NotAMark:
            return

        assert clean_mark(mark) == mark
        assert mark_key(mark) == mark_key(text)


class TestNumbered:
    @given(series, st.integers(1, 9_999_999))
    def test_a_number_comes_back_from_its_mark(self, letters, counter):
        assert numbered(mark_of(letters, counter)) == Numbered(letters, counter)

    def test_pads_to_two_figures(self):
        assert [mark_of("t", 7), mark_of("T", 129)] == ["T07", "T129"]

    @pytest.mark.parametrize("text", ["29", "T", "blue", "T29b", "T-29", "ABCDE1", "T٢٩"])
    def test_is_none_for_marks_of_another_form(self, text):
        assert numbered(text) is None

    def test_reads_small_letters(self):
        assert numbered("sb12") == Numbered("SB", 12)

    @pytest.mark.parametrize("text", ["", "1", "T1", "ABCDE", "T-"])
    def test_refuses_a_series_that_is_not_letters(self, text):
        with pytest.raises(NotASeries):
            clean_series(text)

    @pytest.mark.parametrize("counter", [0, -1, 10_000_000])
    def test_takes_a_counter_out_of_range_for_a_bug(self, counter):
        with pytest.raises(ValueError, match="counter"):
            mark_of("T", counter)


class TestFreeSuffix:
    def test_begins_at_b_since_the_first_has_none(self):
        assert free_suffix([""]) == "b"
        assert free_suffix(["", "b"]) == "c"
        assert free_suffix(["", "b", "d"]) == "c"

    def test_goes_on_after_z(self):
        taken = list("bcdefghijklmnopqrstuvwxyz")

        assert free_suffix(taken) == "bb"

    def test_gives_650_and_none_twice_then_gives_up(self):
        taken: set[str] = set()
        for _ in range(650):
            taken.add(free_suffix(taken))

        assert len(taken) == 650
        with pytest.raises(NotAMark):
            free_suffix(taken)

    @given(st.text(min_size=1, max_size=24), st.sampled_from(["", "b", "bb"]))
    def test_comes_apart_from_its_mark(self, text, suffix):
        try:
            mark = clean_mark(text)
        except NotAMark:
            assume(False)

        assert split_shown(shown_mark(mark, suffix)) == (mark, suffix)
