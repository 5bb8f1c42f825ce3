"""The demo's orders against what its paper says of them, and the beaker that nobody knows."""

from datetime import date
from typing import Any

from pieces.models import Commission, FoundPiece, Match, Piece


def order(demo, number: str, username: str = "odile") -> dict[str, Any]:
    found: dict[str, Any] = demo.get(f"commissions/{row_of(demo, number).pk}/", username)
    return found


def row_of(demo, number: str) -> Commission:
    return Commission.objects.of(demo.studio).get(number=number)


def counts(demo, number: str) -> dict[str, int]:
    (line,) = order(demo, number)["lines"]
    found: dict[str, int] = line["counts"]
    return found


class TestOrders:
    def test_are_five_with_their_clients_makers_and_promises(self, demo) -> None:
        rows = Commission.objects.of(demo.studio).order_by("number").select_related("maker")

        assert [
            (r.number, r.client_name, r.maker.first_name, r.promised_date, r.use) for r in rows
        ] == [
            ("C-101", "Larkspur Inn", "Bram", date(2026, 11, 20), "display"),
            ("C-102", "Dr E. Wainfleet", "Odile", date(2026, 12, 18), "food"),
            ("C-103", "Marrowfield Garden Society", "Jun", date(2026, 12, 4), "food"),
            ("C-104", "Miss T. Oakhanger", "Odile", date(2027, 1, 22), "display"),
            ("C-105", "Coldwater Lane Chapel", "Piet", date(2026, 11, 13), "display"),
        ]

    def test_hold_the_pieces_of_the_table(self, demo) -> None:
        held = {
            number: len(order(demo, number)["lines"][0]["pieces"])
            for number in ("C-101", "C-102", "C-103", "C-104", "C-105")
        }

        # Pieces of the order, those that were lost and those only planned among them.
        assert held == {"C-101": 28, "C-102": 5, "C-103": 18, "C-104": 2, "C-105": 4}
        assert not Piece.objects.of(demo.studio).filter(mark__startswith="P", line__isnull=False)

    def test_of_tiles_has_twenty_six_alive_and_one_planned(self, demo) -> None:
        found = counts(demo, "C-101")

        assert (found["wanted"], found["alive"], found["planned"]) == (24, 26, 1)
        assert (found["finished"], found["lost_pieces"]) == (10, 1)

    def test_of_sauce_boats_has_four_alive(self, demo) -> None:
        found = counts(demo, "C-102")

        assert (found["wanted"], found["alive"], found["lost_pieces"]) == (2, 4, 1)
        (line,) = order(demo, "C-102")["lines"]
        assert line["sentence"] == "2 wanted: 1 bisqued, 3 on the way, 1 lost"

    def test_of_jars_has_eight_pairs_alive_and_one_planned(self, demo) -> None:
        found = counts(demo, "C-103")

        assert (found["wanted"], found["alive"], found["planned"]) == (6, 8, 1)

    def test_of_the_inkstand_has_two_alive(self, demo) -> None:
        found = counts(demo, "C-104")

        assert (found["wanted"], found["alive"]) == (1, 2)

    def test_of_brackets_has_three_alive_and_its_pair_is_of_the_later_two(self, demo) -> None:
        found = counts(demo, "C-105")
        (line,) = order(demo, "C-105")["lines"]
        stands = {row["mark"]: [p["mark"] for p in row["partners"]] for row in line["pieces"]}

        assert (found["pieces"], found["alive"], found["finished"]) == (3, 1, 1)
        assert stands == {"B01": [], "B02": ["B03"], "B03": ["B02"], "B04": []}

    def test_say_which_lid_is_for_which_jar(self, demo) -> None:
        (line,) = order(demo, "C-103")["lines"]
        words = {row["mark"]: row["words"] for row in line["pieces"]}

        assert words == {
            **{f"J0{n}": f"jar for L0{n}" for n in range(1, 10)},
            **{f"L0{n}": f"lid for J0{n}" for n in range(1, 10)},
        }

    def test_tell_the_owner_and_the_maker_alone_how_to_reach_the_client(self, demo) -> None:
        assert "client_contact" in order(demo, "C-103", "jun")["commission"]
        assert "client_contact" in order(demo, "C-103", "odile")["commission"]
        assert "client_contact" not in order(demo, "C-103", "bram")["commission"]

    def test_tell_the_story_of_a_swapped_handle_and_of_firings(self, demo) -> None:
        path = f"commissions/{row_of(demo, 'C-102').pk}/history/"

        def lines(chosen: str) -> list[tuple[list[str], str]]:
            rows = demo.get(f"{path}?filter={chosen}")["results"]
            return [(line["marks"], line["words"]) for row in rows for line in row["lines"]]

        assert lines("losses")[:2] == [
            (["S03"], "handle pressed in M04 g1, in the place of the one before"),
            (["S03"], "handle cracked"),
        ]
        assert lines("firings") == [
            (["S02"], "bisqued, F-207"),
            (["S02"], "in the bisque kiln, F-207"),
            (["S02"], "booked on F-207"),
        ]

    def test_say_only_what_people_said_stands_together(self, demo) -> None:
        said = Match.objects.of(demo.studio)

        assert said.count() == 8 + 1 + 2  # jars with lids, one planned pair, brackets twice


class TestFound:
    def test_keeps_the_beaker_for_whoever_claims_it(self, demo) -> None:
        found = FoundPiece.objects.of(demo.studio).get()
        beaker = Piece.objects.of(demo.studio).get(mark="P03")

        assert (found.piece, found.state) == (beaker, "open")
        assert found.notice_date == date(2026, 11, 11)
        assert (beaker.maker, beaker.unclaimed_since) == (None, found.found_at)
        assert found.place is not None
        assert found.place.name == "Rack B2"
        assert beaker.place is not None
        assert beaker.place.name == "Unclaimed shelf"

    def test_is_not_fired_by_accident(self, demo) -> None:
        rows = demo.get("kiln-queue/")["groups"]

        waiting = {row["piece"]["mark"] for group in rows for row in group["rows"]}
        assert "L06" in waiting
        assert "P03" not in waiting
