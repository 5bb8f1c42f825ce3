"""Readings in tables. °C = (°F - 32) / 1.8; a percentage is a hundredth."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.climate import judge
from studio.domain.climate_table import TooManyRows, UnreadableTable, read_table

LONDON = ZoneInfo("Europe/London")


def table(*lines):
    return read_table("\n".join(lines), LONDON)


class TestReadTable:
    def test_takes_percent_from_the_header(self):
        found = table("taken_at,place,air_c,rh_percent", "2026-10-17 08:00,Drying room,12.9,104")

        [row] = found.rows
        assert row.place == "Drying room"
        assert row.reading.taken_at == datetime.fromisoformat("2026-10-17T07:00Z")
        assert (row.reading.air_c, row.reading.humidity_fraction) == (12.9, 1.04)
        assert judge(row.reading).use == "left_out"

    def test_takes_a_fraction_from_the_header(self):
        [row] = table("taken_at,air_c,humidity_fraction", "2026-10-31T09:00Z,12.5,0.73").rows

        assert row.reading.humidity_fraction == 0.73
        assert row.as_typed == {}

    def test_keeps_an_unnamed_humidity_to_ask_about(self):
        found = table(
            "taken_at,air_c,humidity",
            *(f"2026-10-31T09:0{i}Z,12,{v}" for i, v in enumerate(["73", "0.73", "73 %"])),
        )

        uses = [judge(row.reading).use for row in found.rows]

        assert uses == ["asked", "used", "used"]
        assert [row.reading.humidity_fraction for row in found.rows] == [73, 0.73, 0.73]

    def test_turns_fahrenheit_and_keeps_what_was_typed(self):
        [row] = table("taken_at,air_f", "2026-10-24T07:00Z,61.2").rows

        assert row.reading.air_c == pytest.approx(16.2222, abs=1e-4)
        assert row.as_typed == {"air_c": "61.2 °F"}

    def test_reads_semicolons_and_decimal_commas(self):
        [row] = table("taken_at;air_c;rh_percent", "2026-10-31T09:00Z;12,5;73,0").rows

        assert (row.reading.air_c, row.reading.humidity_fraction) == (12.5, 0.73)

    def test_passes_over_a_byte_order_mark_capitals_blank_lines_and_other_columns(self):
        found = table("\ufeffTaken_At, Air_C ,note", "", "2026-10-31T09:00Z,12.5,fan on", ",,")

        assert len(found.rows) == 1
        assert found.passed_over == ["note"]

    @pytest.mark.parametrize(
        ("line", "column", "code"),
        [
            ("yesterday,12,70", "taken_at", "not-an-instant"),
            ("2026-10-31,12,70", "taken_at", "not-an-instant"),
            (",12,70", "taken_at", "no-time"),
            ("2026-10-25 01:30,12,70", "taken_at", "time-happened-twice"),
            ("2026-03-29 01:30,12,70", "taken_at", "no-such-time"),
            ("2026-10-31T09:00Z,12 mm,70", "air_c", "wrong-dimension"),
            ("2026-10-31T09:00Z,warm,70", "air_c", "unreadable-quantity"),
            ("2026-10-31T09:00Z,12,nan", "rh_percent", "unreadable-quantity"),
            ('2026-10-31T09:00Z,12,"1,500"', "rh_percent", "ambiguous-number"),
            ("2026-10-31T09:00Z,,", "air_c", "no-value"),
            ("2026-10-31T09:00Z", "air_c", "no-value"),
        ],
    )
    def test_names_line_and_column_of_a_fault_and_goes_on(self, line, column, code):
        found = table(
            "taken_at,air_c,rh_percent", "2026-10-31T08:00Z,12,70", line, "2026-10-31T10:00Z,12,70"
        )

        [fault] = found.faults
        assert (fault.line, fault.column, fault.code) == (3, column, code)
        assert [row.line for row in found.rows] == [2, 4]

    def test_names_every_fault_of_a_line(self):
        found = table("taken_at,air_c,rh_percent", "never,cold,damp")

        assert [fault.column for fault in found.faults] == ["taken_at", "air_c", "rh_percent"]

    @pytest.mark.parametrize(
        "header",
        [
            *[
                "",
                "air_c,rh_percent",
                "taken_at,place",
                "taken_at,air_c,air_f",
                "taken_at,air_c,air_c",
            ],
            *["taken_at,rh_percent,humidity", 'taken_at,"air_c'],
        ],
    )
    def test_refuses_a_header_that_decides_nothing(self, header):
        with pytest.raises(UnreadableTable):
            table(header, "2026-10-31T09:00Z,12,70")

    def test_tells_how_many_rows_it_takes(self):
        with pytest.raises(TooManyRows):
            read_table("taken_at,air_c\n" + "2026-10-31T09:00Z,12\n" * 3, LONDON, most_rows=2)

    @given(st.text(max_size=200))
    def test_reads_refuses_or_finds_fault_with_any_text(self, text):
        found = read_table(f"taken_at,air_c,rh_percent\n{text.replace(chr(34), '')}", LONDON)

        assert all(
            row.reading.air_c is not None or row.reading.humidity_fraction is not None
            for row in found.rows
        )
