"""Quantities as people type them.

Conversions are exact by definition: inch 25.4 mm, pound 453.59237 g (yard and pound agreement of
1959); pints and quarts from NIST Handbook 44, appendix C; °C = (°F - 32) / 1.8.
"""

import math
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.refusals import Unworkable
from studio.domain.tokens import (
    LONGEST_TEXT,
    UNIT_WORDS,
    AmbiguousNumber,
    AmbiguousUnit,
    UnknownUnit,
    UnreadableQuantity,
)
from studio.domain.units import (
    TARGETS,
    NotANumber,
    OutOfRange,
    Typed,
    WrongDimension,
    convert,
    read,
)


class TestRead:
    @pytest.mark.parametrize(
        ("text", "into", "value"),
        [
            ("5 3/8 in", "in", 5.375),
            ("5 3/8", "in", 5.375),
            ("5\u215c in", "mm", 136.525),
            ("5 ⅜″", "mm", 136.525),
            ("3/8 in", "mm", 9.525),
            ("½ in", "mm", 12.7),
            ("1¼ in", "mm", 31.75),
            ("3\u20448 in", "mm", 9.525),
            ("6,5 mm", "mm", 6.5),
            ("6.5mm", "mm", 6.5),
            (",5 cm", "mm", 5.0),
            ("1,5", "mm", 1.5),
            ("1,5000", "mm", 1.5),
            ("１２ mm", "mm", 12.0),
            ("12 ㎜", "mm", 12.0),
            ("1 lb 4 oz", "g", 566.9904625),
            ("1lb4oz", "oz", 20.0),
            ("1 lb ½ oz", "oz", 16.5),
            ("2 ft 3 3/8 in", "in", 27.375),
            ("5' 3\"", "in", 63.0),
            ("5’3”", "in", 63.0),
            ("-1 ft 2 in", "in", -14.0),
            ("−3 mm", "mm", -3.0),
            ("61.2 °F", "c", 146 / 9),
            ("61 ℉", "c", 145 / 9),
            ("61 ºF", "c", 145 / 9),
            ("16,2 C", "c", 16.2),
            ("-40 f", "c", -40.0),
            ("12 %", "fraction", 0.12),
            ("0.12", "fraction", 0.12),
            ("73", "percent", 73.0),
            ("0.73 fraction", "percent", 73.0),
            ("1 imp qt", "ml", 1136.5225),
            ("1 imp. pint", "ml", 568.26125),
            ("1 US qt", "ml", 946.352946),
            ("1 U.S. pint", "ml", 473.176473),
            ("90 min", "h", 1.5),
            ("2 d", "h", 48.0),
            ("0.5 kPa", "pa", 500.0),
            ("1.5 kg", "g", 1500.0),
        ],
    )
    def test_reads_what_makers_write(self, text, into, value):
        assert read(text, into=into).value == pytest.approx(value, rel=1e-12)

    @pytest.mark.parametrize(
        "text", ["1,500", "1,500 g", "1,500.5 g", "1.500,5 g", "1,2,3", "0,125"]
    )
    def test_refuses_a_comma_that_may_part_thousands(self, text):
        with pytest.raises(AmbiguousNumber) as refused:
            read(text, into="g")

        assert refused.value.code == "ambiguous-number"

    @pytest.mark.parametrize("word", ["qt", "quart", "pt", "pints"])
    def test_refuses_a_bare_quart_or_pint_and_names_both(self, word):
        with pytest.raises(AmbiguousUnit) as refused:
            read(f"2 {word}", into="ml")

        assert [choice.split()[0] for choice in refused.value.facts["choices"]] == ["imp", "us"]
        assert "imp" in refused.value.detail
        assert "us" in refused.value.detail

    @pytest.mark.parametrize(
        "text",
        [
            *[
                "",
                "   ",
                "mm",
                "five mm",
                "--5",
                "5 mm 3",
                "5 3",
                "1.2.3 mm",
                "3/0 in",
                "5 9/8 in",
                "5.5 3/8 in",
            ],
            *[
                "1 lb -4 oz",
                "4 oz 1 lb",
                "1 lb 16 oz",
                "1.5 lb 4 oz",
                "1 ft 2 in 3 mm",
                "1 h 30 min",
                "1 kg 5 g",
            ],
            *["3/8.5 in", "/8 in", "1/2/3 in", ".", "x" * (LONGEST_TEXT + 1)],
        ],
    )
    def test_refuses_what_is_not_one_quantity(self, text):
        with pytest.raises(UnreadableQuantity):
            read(text, into="in")

    @pytest.mark.parametrize(
        "text", ["5 furlong", "5² mm", "5 mm²", "1e9", "1e400", "5①", "12 k", "5 in x 3 in"]
    )
    def test_refuses_units_outside_the_list(self, text):
        with pytest.raises(UnknownUnit):
            read(text, into="mm")

    @pytest.mark.parametrize("text", ["nan", "NaN g", "inf", "-inf mm", "Infinity"])
    def test_refuses_words_for_what_is_no_number(self, text):
        with pytest.raises(UnreadableQuantity):
            read(text, into="g")

    @pytest.mark.parametrize("given_", [math.nan, math.inf, -math.inf, None, True, [], {}])
    def test_refuses_values_that_are_no_number(self, given_):
        with pytest.raises(NotANumber):
            read(given_, into="g")

    @pytest.mark.parametrize("given_", [1e9, "1000000000", 10**400, "9" * 60, -3, "-3 g", "−3 g"])
    def test_refuses_masses_beyond_belief(self, given_):
        with pytest.raises(OutOfRange):
            read(given_, into="g")

    def test_refuses_a_temperature_below_absolute_nought(self):
        with pytest.raises(OutOfRange):
            read("-500 F", into="c")

    def test_keeps_to_the_limits_of_its_field(self):
        with pytest.raises(OutOfRange) as refused:
            read("100 mm", into="mm", least=0.5, most=90)

        assert refused.value.facts == {"value": 100.0, "least": 0.5, "most": 90, "unit": "mm"}

    def test_names_both_dimensions_when_they_differ(self):
        with pytest.raises(WrongDimension) as refused:
            read("12 mm", into="c")

        assert refused.value.facts["given"] == "a length"
        assert refused.value.facts["wanted"] == "a temperature"
        assert "a length" in refused.value.detail
        assert "a temperature" in refused.value.detail

    @pytest.mark.parametrize("given_", [12, 12.5, "12", " 12.5 ", "-3", "+3"])
    def test_keeps_no_text_of_a_plain_number(self, given_):
        assert read(given_, into="mm").as_typed is None

    @pytest.mark.parametrize("given_", ["3/8 in", "6,5", "12 mm", "½", "5 3/8"])
    def test_keeps_any_other_text_as_typed(self, given_):
        assert read(f" {given_} ", into="mm").as_typed == given_

    def test_takes_a_bug_of_the_caller_for_a_bug(self):
        with pytest.raises(ValueError, match="furlong"):
            read(5, into="furlong")

    def test_leaves_pint_alone_while_numbers_come_in_the_named_unit(self):
        script = (
            "import sys; from studio.domain.units import read;"
            "read(5.0); read('5 mm'); read('12', into='c'); print('pint' in sys.modules)"
        )

        ran = subprocess.check_output([sys.executable, "-c", script], text=True)

        assert ran.strip() == "False"

    @given(st.floats(allow_nan=True, allow_infinity=True) | st.integers() | st.text(max_size=80))
    def test_gives_a_finite_number_or_refuses(self, given_):
        try:
            typed = read(given_, into="mm")
        except Unworkable:
            return

        assert math.isfinite(typed.value)

    @given(
        st.integers(0, 300),
        st.sampled_from([2, 4, 8, 16, 32, 64]).flatmap(
            lambda under: st.tuples(st.integers(1, under - 1), st.just(under))
        ),
    )
    def test_a_ruler_reading_comes_back_exactly(self, whole, part):
        over, under = part

        assert read(f"{whole} {over}/{under} in", into="in").value == whole + over / under

    @given(st.decimals(-9_000, 9_000, places=3), st.sampled_from([".", ","]))
    def test_a_decimal_reads_as_itself(self, number, point):
        text = f"{number}0".replace(".", point)

        assert read(text, into="mm").value == float(number)

    @given(st.sampled_from(sorted(TARGETS)), st.floats(1, 300), st.data())
    def test_a_conversion_there_and_back_is_the_same(self, unit, value, data):
        alike = [
            name for name, other in TARGETS.items() if other.measures == TARGETS[unit].measures
        ]
        other = data.draw(st.sampled_from(alike))

        assert convert(convert(value, unit, other), other, unit) == pytest.approx(value, rel=1e-9)

    @pytest.mark.parametrize("word", sorted(UNIT_WORDS))
    def test_every_word_of_the_list_is_read(self, word):
        shown = UNIT_WORDS[word]
        target = next(name for name, unit in TARGETS.items() if unit.shown == shown)

        assert read(f"3 {word}", into=target) == Typed(3.0, f"3 {word}")
