"""The demo's first screen: an outcome of the model and of sixty histories, never a constant."""

from datetime import datetime, timedelta
from typing import Any

import pytest
from django.utils import timezone

from pieces.actions import forecasts, reminding
from pieces.models import Forecast, Piece
from studio.models import Reminder


def marks(rows: list[dict[str, Any]]) -> list[str]:
    return [row["piece"]["mark"] for row in rows]


def wall(text: str) -> str:
    """Return the clock on the wall, which on the demo's day shows UTC."""
    return datetime.fromisoformat(text).strftime("%H:%M")


@pytest.fixture
def bench(demo) -> dict[str, Any]:
    return demo.get("bench/")


def drying_of(demo, mark: str) -> dict[str, Any]:
    piece = Piece.objects.of(demo.studio).get(mark=mark)
    return demo.get(f"pieces/{piece.pk}/drying/")


class TestLookNow:
    def test_begins_with_the_tile_that_is_past_its_time(self, bench) -> None:
        first, *others = bench["look_now"]

        assert (first["piece"]["mark"], first["verdict"]) == ("T26", "past")
        assert sorted(marks(others)) == ["J08", "L08"]
        assert {row["verdict"] for row in others} == {"in_window"}

    def test_says_where_to_go_and_why(self, bench) -> None:
        first = bench["look_now"][0]

        assert first["place"]["name"] == "Bench 1"
        assert (first["mould"]["label"], first["mould"]["generation"]) == ("M02", 2)
        assert first["reason"] == "second press since M02 was dry"
        assert (first["maker"]["first_name"], first["part"]["role"]) == ("Nessa", "tile")

    def test_puts_what_used_most_of_its_window_first(self, bench) -> None:
        used = []
        now = datetime.fromisoformat(bench["at"])
        for row in bench["look_now"][1:]:
            opens, closes = (
                datetime.fromisoformat(row["window"][end][level])
                for end, level in (("opens", "p10"), ("closes", "p50"))
            )
            used.append((now - opens) / (closes - opens))

        assert used == sorted(used, reverse=True)
        assert all(0.0 < share < 1.0 for share in used)

    def test_says_whose_things_they_are(self, demo) -> None:
        rows = demo.get("bench/", "jun")["look_now"]

        assert {row["piece"]["mark"]: row["mine"] for row in rows} == {
            "T26": False,
            "J08": True,
            "L08": True,
        }


class TestLaterToday:
    def test_holds_what_was_pressed_this_morning(self, bench) -> None:
        assert [(row["piece"]["mark"], row["part"]["role"]) for row in bench["later_today"]] == [
            ("T25", "tile"),
            ("S04", "body"),
        ]
        assert bench["later"] == []

    def test_says_from_about_when(self, bench) -> None:
        tile, body = (wall(row["window"]["opens"]["p50"]) for row in bench["later_today"])

        assert "09:50" <= tile <= "10:10"
        assert "10:20" <= body <= "10:45"


class TestJoinToday:
    def test_is_empty_while_the_handle_is_still_to_press(self, bench) -> None:
        assert bench["join_today"] == []


class TestPressNext:
    def test_takes_the_dry_then_the_usable_then_what_is_held_back(self, bench) -> None:
        rows = [
            (row["set"]["label"], row["dryness"]["word"], row["may_press"])
            for row in bench["press_next"]
        ]

        assert rows == [
            ("M09", "dry", True),
            ("M13", "dry", True),
            ("M10", "usable", True),
            ("M11", "dry", False),
        ]

    def test_says_why_the_last_is_held_back(self, bench) -> None:
        assert bench["press_next"][-1]["reason"].startswith("its partner M12 is out of use")


class TestDrying:
    def test_holds_what_is_drying_and_what_a_person_called_dry(self, bench) -> None:
        assert sorted(marks(bench["drying"])) == [
            "I01", "J06", "J07", "L07", "S03", "S05", "T23", "T24",
        ]  # fmt: skip
        assert sorted(marks(bench["ready_for_bisque"])) == [
            "I02", "J05", "L05", "L06", "T21", "T22",
        ]  # fmt: skip
        assert {row["verdict"] for row in bench["ready_for_bisque"]} == {"ready"}

    def test_sends_nobodys_beaker_to_no_kiln(self, bench) -> None:
        shown = [row for block in bench.values() if isinstance(block, list) for row in block]

        assert "P03" not in marks([row for row in shown if "piece" in row])

    def test_never_calls_a_piece_dry_by_itself(self, bench) -> None:
        assert {row["verdict"] for row in bench["drying"]} == {"drying", "worth_a_touch"}

    def test_takes_the_air_of_the_bench_room_from_the_drying_room_and_says_so(self, demo) -> None:
        shown = drying_of(demo, "T25")

        assert shown["inputs"]["air"] == [
            "Bench 1 has no readings: its air is taken from Drying room."
        ]
        assert shown["inputs"]["last_reading_at"] == "2026-10-31T08:00:00+00:00"
        assert shown["assumed"] == ["air_gap"]  # two readings a day: the nights are joined up

    def test_says_that_a_cupboard_is_closed(self, demo) -> None:
        airs = drying_of(demo, "S05")["inputs"]["air"]

        assert airs[-1] == "Readings of Drying room, around Damp cupboard 1 behind a closed door."

    def test_shows_what_it_rests_on(self, demo) -> None:
        shown = drying_of(demo, "S03")

        assert shown["confidence"] == {"basis": "guess", "checks": 0}
        assert shown["inputs"]["model"] == "drying-2"
        assert shown["inputs"]["body"] == "smooth_stoneware"
        assert any("from memory" in figure["mark"] for figure in shown["inputs"]["body_figures"])
        assert shown["sources"]
        assert {seen["kind"] for seen in shown["evidence"]} == {"cover", "move"}

    def test_draws_the_past_and_the_forecast_as_one_falling_line(self, demo) -> None:
        curve = drying_of(demo, "J06")["curve"]
        times = [datetime.fromisoformat(text) for text in curve["t_at"]]

        assert times == sorted(times)
        assert times[curve["known_points"] - 1] <= demo.now
        assert curve["p50"][0] > 0.95
        assert curve["p50"][-1] < 0.1
        for low, middle, high in zip(curve["p10"], curve["p50"], curve["p90"], strict=True):
            assert low <= middle <= high


class TestBench:
    def test_reads_windows_that_were_stored_and_says_how_old_they_are(
        self, demo, monkeypatch
    ) -> None:
        later = demo.now + timedelta(minutes=50)
        monkeypatch.setattr(timezone, "now", lambda: later)
        kept = Forecast.objects.of(demo.studio).get(piece__mark="S04")
        kept.windows["demould"]["opens"]["p10_s"] = demo.now.timestamp()
        kept.save(update_fields=["windows"])

        bench = demo.get("bench/")

        assert bench["forecast_at"] == "2026-10-31T09:00:00Z"
        assert bench["at"] == "2026-10-31T09:50:00Z"
        assert {"T25", "S04"} < set(marks(bench["look_now"]))

    def test_asks_the_database_a_fixed_number_of_times(
        self, demo, django_assert_max_num_queries
    ) -> None:
        client = demo.client("odile")
        with django_assert_max_num_queries(28):
            answer = client.get(f"/api/v1/studios/{demo.studio.slug}/bench/")

        assert len(answer.json()["drying"]) == 8


class TestTellMakers:
    def test_tells_each_maker_once_when_a_window_opens(self, demo) -> None:
        reminding.tell_makers(studio=demo.studio, at=demo.now)
        assert not Reminder.objects.of(demo.studio).exists()

        for minutes in (30, 31, 45):
            later = demo.now + timedelta(minutes=minutes)
            forecasts.refresh(studio=demo.studio, at=later)
            reminding.tell_makers(studio=demo.studio, at=later)

        marks = list(Reminder.objects.of(demo.studio).values_list("object_mark", flat=True))
        assert sorted(set(marks)) == sorted(marks)
        told = Reminder.objects.of(demo.studio).get(object_mark="T25")
        assert told.cause == "demould_window_opens"
        assert told.person == demo.member("nessa")
        assert told.title == "T25, tile, is worth a look in M01, Bench 1."
        assert demo.now < told.due_at <= demo.now + timedelta(minutes=30)
