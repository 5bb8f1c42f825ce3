from pieces.domain.history_words import tell
from pieces.domain.order_history import kind_of, tell_assigned, tell_order

HERE, THERE = "here", "there"


class TestTellOrder:
    def test_says_by_how_much_a_promise_moved(self):
        moved = {"was": "2026-12-04", "promised_date": "2026-12-03"}

        assert tell_order("promised", moved) == (
            "promised for 3 Dec 2026 instead of 4 Dec 2026, 1 day earlier"
        )
        assert tell_order("promised", {"was": None, "promised_date": "2026-12-03"}) == (
            "promised for 3 Dec 2026"
        )
        assert tell_order("promised", {"was": "2026-12-03", "promised_date": None}) == (
            "no day promised any more; it was 3 Dec 2026"
        )

    def test_names_what_was_changed_but_not_to_what(self):
        said = tell_order(
            "changed_commission", {"changed": ["client_name", "use"], "use": "display"}
        )

        assert said == "changed: the client's name, its use (for display only)"

    def test_repeats_a_report_and_judges_nothing(self):
        facts = {
            "lead_value": 0.1,
            "lead_is_below": True,
            "cadmium_value": 0.07,
            "cadmium_is_below": False,
            "unit": "mg_per_dm2",
            "reported_on": "2026-10-30",
        }

        said = tell_order("recorded_report", facts)

        assert said == "report of 30 Oct 2026: lead < 0.1 mg/dm², cadmium 0.07 mg/dm²"

    def test_tells_of_lines(self):
        changed = {"was": 6, "wanted_sets": 8}

        assert tell_order("changed_line", changed) == "8 wanted instead of 6"
        assert tell_order("changed_line", {"was": 6, "wanted_sets": 6}) == "a line was reworded"
        assert tell_order("added_line", changed) == "a line was added: 8 wanted"


class TestTellAssigned:
    def test_never_names_the_other_order(self):
        said = [
            tell_assigned({"from_commission": was, "commission": now}, HERE)
            for was, now in (
                (None, HERE),
                (THERE, HERE),
                (HERE, HERE),
                (HERE, THERE),
                (HERE, None),
            )
        ]

        assert said == [
            "promised to this order",
            "came from another order",
            "moved to another line",
            "left for another order",
            "taken out of this order",
        ]


class TestKindOf:
    def test_a_loss_in_a_firing_is_a_loss(self):
        assert kind_of("unloaded_kiln", is_loss=True, is_firing=True) == "loss"
        assert kind_of("unloaded_kiln", is_loss=False, is_firing=True) == "firing"
        assert kind_of("promised", is_loss=False, is_firing=False) == "promise"
        assert kind_of("changed_commission", is_loss=False, is_firing=False) == "client"
        assert kind_of("covered", is_loss=False, is_firing=False) == "making"


class TestTell:
    def test_tells_what_a_firing_did_with_one_piece(self):
        visits = [{"piece": "J02", "stage": "bisque", "state": "bisqued", "occasion_name": "F-207"}]
        facts = {"load": "F-207", "visits": visits}

        def said(verb, piece):
            return tell(verb, facts, piece=piece, name=str)

        assert said("unloaded_kiln", "J02") == "bisqued, F-207"
        assert said("unloaded_kiln", "J03") == "F-207 unloaded"
        assert said("put_on_load", "J02").startswith("bisqued")
        assert tell("put_on_load", {"load": "F-212"}, piece="T15", name=str) == "booked on F-212"

    def test_tells_of_matches_and_use(self):
        assert tell("matched", {"seat_gap_mm": 0.4}, piece="L09", name=str) == (
            "matched, seat gap 0.4 mm"
        )
        assert tell("parted", {"seat_gap_mm": None}, piece="L09", name=str) == "parted"
        assert (
            tell("changed_piece", {"use": "display"}, piece="S02", name=str) == "for display only"
        )
