"""Names, notes, and cells that look like sums."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.text import (
    LONGEST_NOTE,
    ControlCharacter,
    NothingWritten,
    TooLong,
    clean_name,
    clean_note,
    defused,
    fused,
)

sums = st.text(alphabet="'=+-@\t\r\n \u2212＝ab1", max_size=8)


class TestCleanName:
    @pytest.mark.parametrize(
        ("typed", "name"),
        [
            ("  barley   tile ", "barley tile"),
            ("cafe\u0301", "caf\u00e9"),
            ('=HYPERLINK("http://…","tile")', '=HYPERLINK("http://…","tile")'),
            ("<img src=x onerror=alert(1)>", "<img src=x onerror=alert(1)>"),
            ("שלום", "שלום"),
            ("👩\u200d🎨", "👩\u200d🎨"),
        ],
    )
    def test_keeps_what_can_be_shown(self, typed, name):
        assert clean_name(typed) == name

    @pytest.mark.parametrize(
        "char", ["\x00", "\t", "\n", "\x1b", "\x7f", "\x85", "\ud800", "\u202e"]
    )
    def test_refuses_what_cannot_be_shown_and_says_where(self, char):
        with pytest.raises(ControlCharacter) as refused:
            clean_name(f"ti{char}le")

        assert refused.value.facts["place"] == 3

    @pytest.mark.parametrize("typed", ["", "   ", "\u200b", "\u00a0\ufeff"])
    def test_refuses_no_name(self, typed):
        with pytest.raises(NothingWritten):
            clean_name(typed)

    def test_tells_the_limit_and_the_length(self):
        with pytest.raises(TooLong) as refused:
            clean_name("x" * 125)

        assert refused.value.facts == {"most": 120, "length": 125}


class TestCleanNote:
    def test_keeps_tabs_blanks_and_lines(self):
        assert clean_note("\t=1+1\r\n  two\rthree ") == "\t=1+1\n  two\nthree "

    def test_may_be_empty(self):
        assert clean_note("") == ""

    def test_tells_the_limit_before_anything_is_lost(self):
        with pytest.raises(TooLong) as refused:
            clean_note("x" * 200_000)

        assert refused.value.facts == {"most": LONGEST_NOTE, "length": 200_000}

    def test_refuses_control_characters(self):
        with pytest.raises(ControlCharacter):
            clean_note("a\x07b")

    @given(st.text(max_size=50))
    def test_cleaning_twice_is_cleaning_once(self, text):
        try:
            note = clean_note(text)
        except ControlCharacter:
            return

        assert clean_note(note) == note


class TestDefused:
    # which first characters matter: OWASP, "CSV Injection"
    @pytest.mark.parametrize(
        "first", ["=", "+", "-", "@", "\t", "\r", "\n", "\u2212", "＝", "＋", "－", "＠"]
    )
    def test_takes_the_sting_out_of_a_sum(self, first):
        assert defused(f"{first}44 blue") == f"'{first}44 blue"

    @pytest.mark.parametrize("text", ["barley tile", "", "'tis", "T29", "a=b", "3 - 4"])
    def test_leaves_other_text_alone(self, text):
        assert defused(text) == text

    @given(sums | st.text())
    def test_fusing_is_its_exact_inverse(self, text):
        assert fused(defused(text)) == text

    @given(sums | st.text())
    def test_never_begins_like_a_sum(self, text):
        assert not defused(text).startswith(("=", "+", "-", "@", "\t", "\r", "\n"))

    @given(st.lists(st.text(alphabet="'=+-@\t\r\n ,;\"ab", max_size=8), min_size=1, max_size=5))
    def test_survives_a_written_table(self, texts):
        table = io.StringIO(newline="")
        csv.writer(table, quoting=csv.QUOTE_ALL).writerow([defused(text) for text in texts])

        [cells] = csv.reader(io.StringIO(table.getvalue(), newline=""))

        assert [fused(cell) for cell in cells] == texts
