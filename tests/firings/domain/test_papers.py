from dataclasses import replace
from datetime import date

import pytest

from firings.domain.papers import (
    DISPLAY,
    NOT_DECLARED,
    OrderFacts,
    PieceFacts,
    ReportFacts,
    Signature,
    state_of,
    wanting,
    written,
)
from studio.domain.sheets import Facts, Heading, Table, Text

TODAY = date(2026, 10, 31)
BOAT = PieceFacts(
    mark="S02",
    what="ribbed sauce boat",
    maker="OF",
    made="9 Oct 2026",
    moulds=["body: M03 g1", "handle: M04 g1"],
    clay=["BK-14: cream, umber"],
    fired=["bisqued 24 Oct 2026: F-207, K1 Ox, cone 04"],
    ended="checked 30 Oct 2026",
    is_display=False,
    limits="other fillable ware",
    glaze=["GB-07"],
    coverage="within the limits of the report",
    is_within=True,
)
ORDER = OrderFacts(
    studio="Sallowbeck Yard",
    number="C-102",
    what="sauce boats",
    client="Dr E. Wainfleet",
    taken_on=date(2026, 9, 28),
    promised_on=date(2026, 12, 18),
    pieces=[BOAT],
    are_finished=True,
    reports=[
        ReportFacts(
            date(2026, 10, 30), "Assay Office", "S02 · F-205 · GB-07", "lead < 0.1", "within"
        )
    ],
    materials=[("Clay SL, slate blue", "Blue stain holds cobalt: gloves, and no dust.")],
    cautions=["Clean up wet."],
)
SIGNED = Signature("Odile Farrant", TODAY, is_declared=True)


def texts(paper):
    """Return every text of a paper, sheet by sheet."""
    return {sheet.title: "\n".join(map(_text, sheet.blocks)) for sheet in paper.sheets}


def _text(block):
    match block:
        case Text() | Heading():
            return block.text
        case Facts():
            return "\n".join(f"{name}: {value}" for name, value in block.rows)
        case Table():
            return "\n".join(" | ".join(row) for row in [block.head, *block.rows])


def without(**changed):
    return replace(ORDER, pieces=[replace(BOAT, **changed)])


class TestWritten:
    def test_tells_where_a_piece_came_from(self):
        told = texts(written(ORDER, on=TODAY))["History of C-102"]

        for text in ("Dr E. Wainfleet", "S02", "body: M03 g1", "BK-14", "F-207, K1 Ox, cone 04"):
            assert text in told

    def test_is_a_draft_until_somebody_signs(self):
        draft, signed = written(ORDER, on=TODAY), written(ORDER, on=TODAY, signature=SIGNED)

        assert draft.foot == "Sallowbeck Yard · C-102 · draft of 31 Oct 2026, not signed"
        assert signed.foot == "Sallowbeck Yard · C-102 · signed 31 Oct 2026"

    def test_says_not_declared_until_then_whatever_reports_say(self):
        told = texts(written(ORDER, on=TODAY))["Use with food"]

        assert told.startswith(NOT_DECLARED)
        assert "Assay Office" in told

    def test_declares_by_name_and_by_the_marks_that_were_signed_for(self):
        told = texts(written(ORDER, on=TODAY, signature=SIGNED))["Use with food"]

        assert told.startswith("Declared for food on 31 Oct 2026 by Odile Farrant")
        assert "S02 give off no more lead and cadmium than the limits below" in told
        assert NOT_DECLARED not in told

    def test_signed_without_declaring_stays_not_declared(self):
        signed = replace(SIGNED, is_declared=False)

        assert texts(written(ORDER, on=TODAY, signature=signed))["Use with food"].startswith(
            NOT_DECLARED
        )

    def test_of_ware_for_display_says_so_and_nothing_of_food(self):
        told = texts(written(without(is_display=True), on=TODAY, signature=SIGNED))

        assert told["Use with food"].startswith(DISPLAY)
        assert "Declared" not in told["Use with food"]
        assert "nothing to eat or drink" in told["Care"]

    def test_tells_the_maker_what_is_in_the_colours(self):
        told = texts(written(ORDER, on=TODAY))["What is in the colours"]

        assert "cobalt" in told
        assert "Clean up wet." in told

    def test_adds_what_was_told_after_delivery_and_changes_nothing_else(self):
        later = replace(ORDER, later=[("4 Nov 2026 · OF", "a flake came off")], is_delivered=True)
        told, before = texts(written(later, on=TODAY)), texts(written(ORDER, on=TODAY))

        assert "After delivery" in told["History of C-102"]
        assert "a flake came off" in told["History of C-102"]
        assert told["History of C-102"].startswith(before["History of C-102"])

    @pytest.mark.parametrize("signature", [None, SIGNED])
    def test_never_uses_the_word_that_nobody_can_promise(self, signature):
        told = "\n".join(texts(written(ORDER, on=TODAY, signature=signature)).values())

        assert "safe" not in told.lower()


class TestWanting:
    def test_is_nothing_where_every_piece_for_food_is_within(self):
        assert wanting(ORDER) == []

    def test_names_each_piece_without_a_report_and_why(self):
        order = without(is_within=False, coverage="not covered yet: no glaze load")

        assert wanting(order) == ["S02: not covered yet: no glaze load."]

    def test_passes_over_what_is_for_display(self):
        assert wanting(without(is_display=True, is_within=False)) == []

    def test_wants_something_finished(self):
        assert wanting(replace(ORDER, are_finished=False)) == ["Nothing of it is finished yet."]


class TestState:
    def test_is_display_only_where_all_of_it_is(self):
        assert state_of(without(is_display=True), SIGNED) == "display"
        both = replace(ORDER, pieces=[BOAT, replace(BOAT, mark="S03", is_display=True)])
        assert state_of(both, SIGNED) == "declared"

    def test_is_declared_by_a_signature_that_says_so_only(self):
        assert state_of(ORDER, SIGNED) == "declared"
        assert state_of(ORDER, replace(SIGNED, is_declared=False)) == "not_declared"
        assert state_of(ORDER, None) == "not_declared"
