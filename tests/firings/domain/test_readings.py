"""Which readings of a kiln are believed. 2232 °F is 1222 °C, cone 6 at 60 °C/h."""

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.readings import gate, read_celsius, read_table
from studio.domain.climate_table import TooManyRows, UnreadableTable
from studio.domain.refusals import Refusal

LONDON = ZoneInfo("Europe/London")
TOP_C = 1300.0


class TestGate:
    def test_asks_whether_2232_was_fahrenheit(self):
        found = gate(2232.0, TOP_C)

        assert found.verdict == "asked"
        assert found.instead_c == pytest.approx(1222.2, abs=0.05)
        assert "2232 °F" in found.detail
        assert not found.is_used

    def test_takes_and_sounds_what_is_over_the_top(self):
        assert gate(1300.0, TOP_C).verdict == "taken"
        found = gate(1312.0, TOP_C)
        assert found.verdict == "over_top"
        assert found.is_used
        assert "Go and look" in found.detail

    @pytest.mark.parametrize("reading_c", [9999.0, -200.0, 2700.0])
    def test_leaves_out_what_no_kiln_has(self, reading_c):
        assert gate(reading_c, TOP_C).verdict == "out_of_range"

    @pytest.mark.parametrize("reading_c", [float("nan"), float("inf")])
    def test_is_never_asked_about_what_is_no_number(self, reading_c):
        with pytest.raises(ValueError, match="finite"):
            gate(reading_c, TOP_C)

    @settings(deadline=None)
    @given(reading_c=st.floats(-1e6, 1e6), top_c=st.floats(200, 1400))
    def test_uses_nothing_far_outside_the_kiln(self, reading_c, top_c):
        found = gate(reading_c, top_c)

        assert not found.is_used or -30.0 <= reading_c <= top_c + 100.0
        assert found.instead_c is None or found.instead_c <= top_c + 100.1


class TestReadCelsius:
    @pytest.mark.parametrize(
        ("given", "unit", "celsius", "as_typed"),
        [
            (868, "c", 868.0, None),
            ("868", "c", 868.0, None),
            ("1594 °F", "c", 867.78, "1594 °F"),
            (1594, "f", 867.78, "1594 °F"),
            ("1594", "f", 867.78, "1594 °F"),
        ],
    )
    def test_reads_both_scales(self, given, unit, celsius, as_typed):
        found = read_celsius(given, unit)

        assert found.value == pytest.approx(celsius, abs=0.01)
        assert found.as_typed == as_typed

    @pytest.mark.parametrize("given", ["NaN", float("nan"), 1e9, "", "12 mm", True, None])
    def test_refuses_nonsense(self, given):
        with pytest.raises(Refusal):
            read_celsius(given)


class TestReadTable:
    def test_reads_a_log_over_the_night_the_clocks_go_back(self):
        text = (
            "taken_at,set_c,reading_c,note\n"
            "2026-10-25T01:30+00:00,1055,1031,second\n"
            "2026-10-25T01:30+01:00,905,890,first\n"
        )

        table = read_table(text, LONDON, TOP_C)

        assert table.faults == []
        assert [row.words for row in table.rows] == ["first", "second"]
        assert (table.rows[0].reading_c, table.rows[0].set_c) == (890.0, 905.0)
        assert table.rows[1].happened_at == datetime(2026, 10, 25, 1, 30, tzinfo=UTC)

    def test_names_line_and_column_of_what_it_cannot_read(self):
        text = (
            "taken_at;reading_c;set_c\n"
            "2026-10-25 01:30;890;905\n"  # happened twice in London
            "2026-10-24 19:00;warm;80\n"
            "2026-10-24 20:00;;80\n"
            ";300;\n"
            "2026-10-24 21:00;300;12 mm\n"
            "2026-10-24 22:00;400;\n"
        )

        table = read_table(text, LONDON, TOP_C)

        assert [row.line for row in table.rows] == [7]
        assert [(fault.line, fault.column) for fault in table.faults] == [
            (2, "taken_at"),
            (3, "reading_c"),
            (4, "reading_c"),
            (5, "taken_at"),
            (6, "set_c"),
        ]
        assert table.faults[0].code == "time-happened-twice"

    def test_reads_fahrenheit_by_the_name_of_its_column(self):
        table = read_table("taken_at\treading_f\n2026-10-24 19:00\t2232\n", LONDON, TOP_C)

        assert table.rows[0].reading_c == pytest.approx(1222.2, abs=0.05)
        assert table.rows[0].judged.verdict == "taken"
        assert table.rows[0].as_typed == {"reading_c": "2232 °F"}

    def test_asks_about_fahrenheit_under_the_wrong_name(self):
        table = read_table("taken_at,reading_c\n2026-10-24 19:00,2232\n", LONDON, TOP_C)

        assert table.rows[0].judged.verdict == "asked"

    def test_keeps_one_of_a_line_said_twice_and_faults_another_value(self):
        line = "2026-10-24 19:00,300\n"
        table = read_table(f"taken_at,reading_c\n{line}{line}2026-10-24 19:00,310\n", LONDON, TOP_C)

        assert [row.line for row in table.rows] == [2]
        assert [(fault.line, fault.code) for fault in table.faults] == [(4, "second-at-that-time")]

    def test_passes_other_columns_over_and_says_so(self):
        table = read_table("taken_at,reading_c,who\n2026-10-24 19:00,300,PA\n", LONDON, TOP_C)

        assert table.passed_over == ["who"]

    @pytest.mark.parametrize(
        "text",
        [
            "",
            "reading_c\n300\n",
            "taken_at\n2026-10-24 19:00\n",
            "taken_at,reading_c,reading_f\n",
            "taken_at,reading_c,reading_c\n",
            'taken_at,reading_c\n"2026,300\n',
        ],
    )
    def test_refuses_a_table_without_what_it_needs(self, text):
        with pytest.raises(UnreadableTable):
            read_table(text, LONDON, TOP_C)

    def test_refuses_one_that_is_too_long(self):
        text = "taken_at,reading_c\n" + "2026-10-24 19:00,300\n" * 3

        with pytest.raises(TooManyRows):
            read_table(text, LONDON, TOP_C, most_rows=2)
