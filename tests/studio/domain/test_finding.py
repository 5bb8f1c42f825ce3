"""A search that a hurried thumb and a borrowed keyboard do not defeat."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.finding import BEGINS, EXACT, HOLDS, best, fit, folded, words_of


class TestFolded:
    @pytest.mark.parametrize(
        ("written", "asked"),
        [
            ("Café Wyvern", "cafe wyvern"),
            ("Cafe\u0301", "CAFÉ"),
            ("T\u200b01", "t01"),
            ("T01", "T\u2060\u00ad01"),
            ("Ｔ０１", "t01"),
            ("Straße", "STRASSE"),
            ("Bjørn Łuk", "bjorn luk"),
            ("Æsop", "aesop"),
            ("d\u2019Arcy", "d'arcy"),
            ("Ξένη", "ξενη"),
            ("ΣΊΣΥΦΟΣ", "σισυφος"),
            ("\u3164T01", "t01"),
            ("barley\u00a0 tile ", "barley tile"),
            ("שָׁלוֹם", "שלום"),
        ],
    )
    def test_is_the_same_for_what_reads_the_same(self, written, asked):
        assert folded(written) == folded(asked)

    @pytest.mark.parametrize(("one", "other"), [("T01", "T10"), ("o", "0"), ("B", "8"), ("", "a")])
    def test_differs_for_what_reads_otherwise(self, one, other):
        assert folded(one) != folded(other)

    @given(st.text(max_size=40))
    def test_folds_once_and_for_all(self, text):
        assert folded(folded(text)) == folded(text)

    @given(st.text(max_size=24))
    def test_is_at_most_three_times_as_long_as_a_mark(self, text):
        mark = unicodedata.normalize("NFKC", text)

        assert len(folded(mark)) <= 3 * len(mark)


class TestWordsOf:
    @pytest.mark.parametrize("asked", ["", "   ", "\u200b", "\u3164 \u0301"])
    def test_are_none_where_nothing_was_asked(self, asked):
        assert words_of(asked) == []

    def test_are_at_most_eight(self):
        assert len(words_of("a b c d e f g h i j")) == 8


class TestFit:
    def test_tells_the_whole_name_from_its_beginning_and_from_a_part(self):
        assert fit(["t01"], "T01", "barley tile") == EXACT
        assert fit(["t0"], "T01", "barley tile") == BEGINS
        assert fit(["barley"], "T01", "barley tile") == HOLDS

    def test_wants_every_word_somewhere(self):
        assert fit(["barley", "t01"], "T01", "barley tile") == HOLDS
        assert fit(["barley", "s01"], "T01", "barley tile") is None
        assert fit([], "T01") is None


class TestBest:
    def test_puts_the_very_name_first_and_keeps_the_order_else(self):
        rows = ["T10", "T100", "sT1", "T1", "S1"]

        found = best(rows, ["t1"], lambda row: (row,), most=3)

        assert found == [(EXACT, "T1"), (BEGINS, "T10"), (BEGINS, "T100")]
