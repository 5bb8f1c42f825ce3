import pytest

from pieces.domain.history_words import tell

PIECE = "11111111-1111-1111-1111-111111111111"
OTHER = "22222222-2222-2222-2222-222222222222"
NAMES = {"p": "Rack B2", "h": "handle", "b": "body", "m": "M03"}


class TestTell:
    @pytest.mark.parametrize(
        ("verb", "facts", "words"),
        [
            ("planned", {}, "planned"),
            ("moved", {"place": "p"}, "put on Rack B2"),
            ("weighed", {"mass_g": 412.5}, "weighed 412.5 g"),
            ("covered", {"state": "tucked"}, "tucked in"),
            ("covered", {"state": "loose", "parts": ["h"]}, "handle loosely covered"),
            ("checked", {"feel": "leather_hard", "part": "h"}, "handle feels leather-hard"),
            ("stuck", {"parts": ["b"], "how": "undercut"}, "body stuck in its mould (undercut)"),
            ("joined", {"parts": ["h", "h"]}, "handle joined"),
            (
                "scrapped",
                {"cause": "dropped", "cause_is_guess": True},
                "scrapped: dropped, a guess",
            ),
            ("went_missing", {}, "missing"),
            ("took_back", {"verb": "came_to"}, "taken back: came to"),
            ("settled_clash", {"choice": "both"}, "two stories settled: both stand"),
            (
                "settled_load_clash",
                {"choice": "second", "loads": ["F-212", "F-215"]},
                "two stories settled: in F-215, not in F-212",
            ),
            ("made_part", {"role": "bowl", "method": "thrown"}, "bowl thrown"),
            ("swept_floor", {}, "swept floor"),
        ],
    )
    def test_says_it_in_a_few_words(self, verb, facts, words):
        assert tell(verb, facts, piece=PIECE, name=NAMES.__getitem__) == words

    def test_picks_the_piece_out_of_an_act_about_many(self):
        visits = [
            {"piece": OTHER, "state": "bisqued"},
            {"piece": PIECE, "state": "glaze_fired", "occasion_name": "F-205"},
        ]

        assert tell("came_to", {"visits": visits}, piece=PIECE, name=str) == "glaze fired, F-205"

    def test_says_what_was_pressed_for_the_piece(self):
        parts = [{"role": "body", "piece": PIECE}, {"role": "knop", "piece": OTHER}]
        facts = {"parts": parts, "mould_set": "m", "generation": 2}

        assert tell("pressed", facts, piece=PIECE, name=NAMES.__getitem__) == (
            "body pressed in M03 g2"
        )

    def test_gives_the_reason_for_going_back(self):
        visits = [{"piece": PIECE, "state": "drying", "reason": "damp on the shelf"}]

        assert tell("came_to", {"visits": visits}, piece=PIECE, name=str) == (
            "drying (damp on the shelf)"
        )

    def test_says_what_became_possible(self):
        facts = {"pieces": [{"id": PIECE, "state": "to_press"}]}

        assert tell("became_possible", facts, piece=PIECE, name=str) == "to press"
