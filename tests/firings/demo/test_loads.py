"""The demo's kilns and loads against their own tables, and what its paper says of them."""

import re
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from firings.demo.rows import read_cones, read_loads
from firings.models import Kiln, KilnReading, Load, Placement, WitnessCone
from pieces.models import Piece, StageEvent
from studio.models import Reminder
from tests.firings.demo.telling import sweep

LONDON = ZoneInfo("Europe/London")
FIRED = ["F-201", "F-202", "F-204", "F-205", "F-206", "F-207", "F-209"]


def loads(demo) -> dict[str, Load]:
    rows = Load.objects.of(demo.studio).select_related("kiln", "programme")
    return {load.number: load for load in rows}


def inside(load: Load) -> set[str]:
    rows = Placement.objects.filter(load=load, removed_at=None, piece__isnull=False)
    return set(rows.values_list("piece__mark", flat=True))


def named(contents: str) -> set[str]:
    """Return the marks of a table's contents: "T01-T03 B01" names four pieces."""
    found = set()
    for first, last in re.findall(r"([A-Z]\d\d)(?:-[A-Z](\d\d))?", contents):
        until = int(last or first[1:])
        found |= {f"{first[0]}{number:02}" for number in range(int(first[1:]), until + 1)}
    return found


def visited(demo, state: str) -> dict[str, list[str]]:
    """Return the loads by which each piece came to `state`, where the fire brought it there."""
    found: dict[str, list[str]] = {}
    rows = StageEvent.objects.of(demo.studio).agreed().filter(state=state)
    for mark, name in rows.order_by("happened_at").values_list("piece__mark", "occasion_name"):
        found.setdefault(mark, []).append(name)
    return found


class TestKilns:
    def test_are_three_with_their_chambers_and_places(self, demo) -> None:
        rows = {row["number"]: row for row in demo.get("kilns/")["results"]}

        assert list(rows) == ["K1", "K2", "K3"]
        assert {n: (row["name"], row["kind"], row["chamber"]) for n, row in rows.items()} == {
            "K1": ("Ox", "front", "rect"),
            "K2": ("Finch", "top", "round"),
            "K3": ("Ember", "front", "rect"),
        }
        assert [round(row["litres"]) for row in rows.values()] == [288, 95, 27]
        assert [row["top_c"] for row in rows.values()] == [1280.0, 1300.0, 1250.0]
        assert [row["place"]["name"] for row in rows.values()] == ["K1 Ox", "K2 Finch", "K3 Ember"]

    def test_are_as_old_as_the_table_says(self, demo) -> None:
        rows = {row["number"]: row for row in demo.get("kilns/")["results"]}

        ages = {n: (r["firings"], round(r["hot_h"]), r["sensor_firings"]) for n, r in rows.items()}
        assert ages == {"K1": (96, 640, 41), "K2": (71, 520, 71), "K3": (18, 95, 18)}

    def test_say_what_they_do(self, demo) -> None:
        rows = {row["number"]: row["doing"] for row in demo.get("kilns/")["results"]}

        assert rows["K2"]["words"] == "cooling, 642 °C at 08:40"
        assert (rows["K1"]["word"], rows["K1"]["load"]["number"]) == ("open", "F-211")
        assert rows["K3"]["word"] == "empty"

    def test_opens_when_it_is_cool_and_somebody_is_in(self, demo) -> None:
        opening = next(
            row["opening"] for row in demo.get("kilns/")["results"] if row["number"] == "K2"
        )
        early, likely, late, staffed = (
            datetime.fromisoformat(opening[name]).astimezone(LONDON)
            for name in ("early", "likely", "late", "staffed_at")
        )

        # 642 °C at 08:40 with 0.155/h: about 21:35 in air of 15 °C. The meter in the shed read
        # 9.5 °C at eight; at the kiln it is warmer.
        about = datetime(2026, 10, 31, 21, 35, tzinfo=LONDON)
        assert abs(likely - about) < timedelta(minutes=5)
        assert early < about < late
        assert staffed == datetime(2026, 11, 2, 8, 0, tzinfo=LONDON)
        assert "Nobody is in then: Monday 08:00" in opening["words"]
        assert "read the temperature first" in opening["words"]

    def test_tell_that_one_was_out_of_use_for_a_night(self, demo) -> None:
        finch = Kiln.objects.of(demo.studio).get(number="K2")

        kinds = finch.events.order_by("happened_at").values_list("kind", "reason")
        assert list(kinds) == [("out_of_use", "vent fan dead"), ("in_use", "vent fan renewed")]
        assert not finch.is_out_of_use


class TestLoads:
    def test_are_the_twelve_of_the_table(self, demo) -> None:
        found, table = loads(demo), read_loads()

        assert set(found) == set(table)
        for number, row in table.items():
            load = found[number]
            start = load.starts_at.astimezone(LONDON).strftime("%Y-%m-%d %H:%M")
            shown = (load.kiln.number, load.kind, load.cone, start)
            assert shown == (row.kiln, row.kind, row.cone, row.start)
        assert not any(load.is_unplanned or load.is_in_doubt for load in found.values())

    def test_stand_where_the_table_says(self, demo) -> None:
        found = {number: (load.state, load.outcome) for number, load in loads(demo).items()}

        assert found == {
            **dict.fromkeys(FIRED, ("unloaded", "fired")),
            "F-203": ("unloaded", "not_fired"),
            "F-208": ("called_off", ""),
            "F-210": ("cooling", ""),
            "F-211": ("open", ""),
            "F-212": ("open", ""),
        }

    @pytest.mark.parametrize("number", [f"F-2{n:02}" for n in range(1, 13)])
    def test_hold_what_the_table_says(self, demo, number: str) -> None:
        row = read_loads()[number]
        things = Placement.objects.filter(load__number=number, load__studio=demo.studio, piece=None)

        assert inside(loads(demo)[number]) == named(row.contents)
        bars = [("colour test bars", 12)] if number == "F-206" else []
        assert list(things.values_list("what", "count")) == bars

    def test_were_put_on_by_their_makers_before_they_were_settled(self, demo) -> None:
        rows = Placement.objects.of(demo.studio).filter(piece__isnull=False)
        for row in rows.select_related("load", "piece__maker", "asked_by"):
            assert row.piece is not None
            assert row.asked_by == row.piece.maker
            assert row.overrides == []
            if row.load.settled_at is not None:
                assert row.placed_at < row.load.settled_at < row.load.loaded_at

    def test_all_fit_their_kilns(self, demo) -> None:
        verdicts = {
            number: demo.get(f"loads/{load.pk}/fit/")["verdict"]
            for number, load in loads(demo).items()
        }

        assert set(verdicts.values()) == {"fits"}


class TestFirings:
    def test_lasted_eleven_real_hours_over_the_change_of_the_clocks(self, demo) -> None:
        load = loads(demo)["F-209"]
        assert load.started_at is not None
        assert load.ended_at is not None

        shown = demo.get(f"loads/{load.pk}/")["load"]

        clocks = [
            at.astimezone(LONDON).replace(tzinfo=None) for at in (load.started_at, load.ended_at)
        ]
        assert load.ended_at - load.started_at == timedelta(hours=11)
        assert clocks[1] - clocks[0] == timedelta(hours=10)
        assert shown["firing_h"] == 11.0
        elapsed = [row["elapsed_h"] for row in shown["readings"]]
        assert sorted(elapsed)[-5:] == [7.5, 9.0, 10.0, 10.75, 11.0]
        assert shown["clock_change"] is not None

    @pytest.mark.parametrize(("number", "readings"), [("F-203", 11), ("F-209", 13), ("F-210", 1)])
    def test_keep_every_reading(self, demo, number: str, readings: int) -> None:
        rows = KilnReading.objects.of(demo.studio).filter(load__number=number)

        assert (rows.count(), rows.filter(use="taken").count()) == (readings, readings)

    def test_tell_of_the_power_that_went(self, demo) -> None:
        load = loads(demo)["F-203"]
        shown = demo.get(f"loads/{load.pk}/")["load"]

        kinds = [event["kind"] for event in sorted(shown["events"], key=lambda e: e["happened_at"])]
        assert kinds == ["settled", "loading", "started", "stopped", "ended", "opened", "unloaded"]
        assert load.is_interrupted
        assert load.opened_c == 94.0
        assert max(row["reading_c"] for row in shown["readings"]) == 868.0

    def test_put_everything_back_when_the_fan_was_dead(self, demo) -> None:
        load = loads(demo)["F-208"]
        back = StageEvent.objects.of(demo.studio).filter(
            occasion_id=load.pk, state="glazed", happened_at=load.called_off_at
        )

        assert set(back.values_list("piece__mark", flat=True)) == inside(load)
        assert load.started_at is None
        assert load.hot_h == 0.0

    def test_keep_how_the_cones_stood(self, demo) -> None:
        for number, row in read_cones().items():
            cones = WitnessCone.objects.of(demo.studio).filter(load__number=number)
            firing = cones.filter(role="firing").order_by("-level")
            hands = tuple(
                "flat" if cone.clock_hand == 7 else str(cone.clock_hand) for cone in firing
            )
            assert (hands, {cone.cone for cone in firing}) == (row.hands, {row.firing})
        upright = WitnessCone.objects.of(demo.studio).filter(load__number="F-203")
        assert [(cone.cone, cone.clock_hand) for cone in upright] == [("05", 12)] * 3


class TestPiecesInLoads:
    def test_beyond_bone_dry_stand_in_a_finished_bisque_load(self, demo) -> None:
        bisqued = visited(demo, "bisqued")
        fired = {number for number, load in loads(demo).items() if load.outcome == "fired"}

        beyond = Piece.objects.of(demo.studio).filter(
            stage__in=["bisque", "glaze", "finished", "delivered"]
        )
        assert beyond.count() == 34
        for piece in beyond:
            assert set(bisqued[piece.mark]) & fired, piece.mark

    def test_beyond_glaze_fired_stand_in_a_finished_glaze_load_too(self, demo) -> None:
        glazed = visited(demo, "glaze_fired")
        fired = {number for number, load in loads(demo).items() if load.outcome == "fired"}

        for piece in Piece.objects.of(demo.studio).filter(stage__in=["finished", "delivered"]):
            assert set(glazed[piece.mark]) & fired, piece.mark

    def test_count_two_glaze_firings_for_the_tray(self, demo) -> None:
        assert visited(demo, "glaze_fired")["P02"] == ["F-202", "F-209"]

    def test_count_none_for_the_load_that_was_stopped_or_called_off(self, demo) -> None:
        by_fire = [*visited(demo, "bisqued").values(), *visited(demo, "glaze_fired").values()]
        names = {name for found in by_fire for name in found}

        assert names == {"F-201", "F-202", "F-204", "F-205", "F-207", "F-209"}

    def test_carry_that_their_bisque_was_interrupted(self, demo) -> None:
        worn = Piece.objects.of(demo.studio).filter(has_interrupted_bisque=True)

        assert set(worn.values_list("mark", flat=True)) == inside(loads(demo)["F-203"])

    def test_lie_on_the_put_right_shelf_with_a_ticket_for_another_firing(self, demo) -> None:
        bracket = Piece.objects.of(demo.studio).get(mark="B01")

        ticket = bracket.firing_tickets.get()
        assert (ticket.kind, ticket.cone, ticket.fault) == ("glaze", "6", "crawled")
        assert bracket.mark in inside(loads(demo)["F-212"])


class TestRemindersOfLoads:
    def test_come_when_a_list_closes_and_when_a_kiln_may_be_opened(self, demo) -> None:
        monday = datetime(2026, 11, 2, 12, 30, tzinfo=LONDON)

        sweep(demo, monday)

        told: set[tuple[Any, ...]] = set(
            Reminder.objects.of(demo.studio).values_list(
                "cause", "object_mark", "person__first_name"
            )
        )
        assert ("kiln_may_open", "F-210", "Piet") in told
        assert ("load_closing", "F-211", "Jun") in told  # L06 is dry and not on it
