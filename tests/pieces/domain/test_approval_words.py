from datetime import date

from pieces.domain.approval_words import answered, asked, clock, message, title, to_client


class TestTitle:
    def test_is_what_there_is_to_approve(self):
        assert title("colour") == "Colour to approve"
        assert title("other") == "Something to approve"


class TestAsked:
    def test_says_what_and_by_when(self):
        assert asked("colour", "2026-11-06") == "colour: the client is asked, by 6 Nov 2026"


class TestAnswered:
    def test_says_who_is_the_source(self):
        assert answered("colour", "yes", "link") == "colour: the client said yes"
        assert answered("size", "no", "told") == "size: the client said no, as told to us"
        assert answered("size", "let_go", "told") == "size: no longer asked"


class TestClock:
    def test_runs_for_the_piece_that_stiffens_first(self):
        closes = [("S05", date(2026, 11, 4)), ("S04", date(2026, 11, 3))]

        said = clock("shaping", closes)

        assert said.startswith("S04 is likely too stiff to change from 3 Nov 2026 on, a guess")

    def test_says_so_where_no_clay_is_damp(self):
        assert clock("shaping", []) == "No clay of this order is damp, so no clay decides the day."

    def test_does_not_run_for_fired_ware(self):
        assert clock("glazing", [("S04", date(2026, 11, 3))]).startswith("Bisqued ware keeps")


class TestMessage:
    def test_names_nobody_and_says_by_when(self):
        said = message("C-102", "colour", date(2026, 11, 6))

        assert "C-102" in said
        assert "about the colour by 6 Nov 2026" in said


class TestToClient:
    def test_says_it_to_themselves(self):
        assert to_client("yes", "link") == "You said yes."
        assert to_client("no", "told") == "You said no, as you told us."
        assert to_client("let_go", "told") == "No answer is needed any more."
