"""Loads that go another way: called off after loading, and fired a second time."""

from datetime import datetime
from typing import Any

import pytest

from firings.models import Kiln, Load
from firings.queries.fitting import problem_of
from firings.queries.loads import placements_of
from firings.queries.sizes import Sizes
from firings.tasks import tell_makers_of_loads
from pieces.models import Part, Piece
from studio.models import Reminder

from .conftest import LONDON, Yard


class TestCalledOffAfterLoading:
    def test_puts_all_back_counts_nothing_and_tells_each_maker_once(self, yard) -> None:
        finch = Kiln.objects.of(yard.demo.studio).get(number="K2")
        cooling, load = yard.load("F-210"), yard.load("F-212")
        bisqued, waited = yard.piece("T18"), yard.piece("T15").since_at
        yard.tell("bram", f"loads/{load['id']}/placements/", pieces=[{"piece_id": str(bisqued.pk)}])
        stood = {
            mark: (yard.piece(mark).stage, yard.piece(mark).state, yard.piece(mark).place_id)
            for mark in ("T15", "T16", "T17", "T18", "B01")
        }
        yard.at("2026-11-02 09:00")
        for event in ({"kind": "opened", "celsius": 40}, {"kind": "unloaded", "outcome": "fired"}):
            yard.tell("piet", f"loads/{cooling['id']}/events/", **event)
        ages = yard.get("kilns/")["results"][1]
        yard.at("2026-11-04 15:30")
        yard.tell("piet", f"loads/{load['id']}/events/", kind="settled")
        yard.at("2026-11-04 16:40")
        yard.tell("piet", f"loads/{load['id']}/events/", kind="loading")
        assert yard.piece("T15").state == "in_glaze"

        yard.at("2026-11-04 16:55")
        yard.tell("piet", f"loads/{load['id']}/events/", kind="called_off", reason="vent dead")
        out = yard.tell("piet", f"kilns/{finch.pk}/events/", kind="out_of_use", reason="vent dead")
        chipped = Part.objects.get(piece__mark="T15")
        yard.tell("nessa", f"parts/{chipped.pk}/events/", kind="cracked", cause="chipped edge")

        now = {
            mark: (yard.piece(mark).stage, yard.piece(mark).state, yard.piece(mark).place_id)
            for mark in stood
        }
        # Glazed ware is glazed again, and what was put in straight from a shelf is back there.
        assert now == stood
        assert yard.whole("B01")["firings"] == {"bisque": 1, "glaze": 1}
        # Its ticket was not spent, so that it waits on to be fired again.
        (group,) = yard.get("kiln-queue/?kind=glaze")["groups"]
        waits = {row["piece"]["mark"]: row["dry_evidence"]["ok"] for row in group["rows"]}
        assert waits.items() >= {"B01": True, "T15": True}.items()
        # A dead vent costs nobody the days that they waited.
        tile = next(row for row in group["rows"] if row["piece"]["mark"] == "T15")
        assert datetime.fromisoformat(tile["waiting_since"]) == waited
        days = (yard.clock.now.astimezone(LONDON).date() - waited.astimezone(LONDON).date()).days
        assert tile["waits_days"] == days > 0
        assert "damaged" in {said["code"] for said in yard.whole("T15")["warnings"]}
        after = yard.get("kilns/")["results"][1]
        for age in ("firings", "hot_h", "sensor_firings"):
            assert after[age] == ages[age]
        # Bisque is in K1 till Wednesday; what was meant for K2 finds a day there.
        assert yard.load("F-212")["next_slot"]["words"] == (
            "No load is open for it yet; K1 is free on Thu 5 Nov."
        )
        tell_makers_of_loads()
        tell_makers_of_loads()
        told = Reminder.objects.filter(cause="load_called_off", object_mark="F-212")
        assert sorted(row.person.first_name for row in told) == ["Bram", "Jun", "Piet"]
        assert all("K1 is free on Thu 5 Nov." in row.body for row in told)
        assert out["kiln"]["is_out_of_use"]
        fresh = yard.refused(
            "piet",
            "loads/",
            kiln_id=str(finch.pk),
            kind="glaze",
            cone="6",
            starts_at="2026-11-06T17:30:00Z",
        )
        assert fresh["type"] == "/problems/kiln-out-of-use"
        reading = yard.send("piet", f"loads/{cooling['id']}/readings/", reading_c=35)
        assert reading.status_code == 201
        again = yard.tell(
            "piet",
            "loads/",
            kiln_id=str(Kiln.objects.of(yard.demo.studio).get(number="K1").pk),
            kind="glaze",
            cone="6",
            starts_at="2026-11-06T17:30:00Z",
        )["load"]["number"]
        assert yard.load("F-212")["next_slot"]["words"] == f"Next: {again}, Fri 6 Nov, 17:30."


class TestFiredTwice:
    def test_tells_two_visits_and_warned_of_it_before(self, yard) -> None:
        load, bracket = yard.load("F-212"), yard.piece("B01")
        placed = next(row for row in load["placements"] if row["piece"]["mark"] == "B01")
        ticket = yard.get(f"pieces/{bracket.pk}/firing-tickets/")["results"][0]
        history = yard.get(f"pieces/{bracket.pk}/history/")["results"]

        said = {one["code"]: one["detail"] for one in placed["warnings"]}["glaze-fired-again"]
        assert "blister or craze more" in said
        assert said.endswith("Its ticket asks for cone 6.")
        assert (ticket["cone"], ticket["fault"]) == ("6", "crawled")
        assert ticket["why"] == "crawled; ground back, glazed again thickly"
        assert any("crawled; ground back" in told["words"] for told in history)
        assert gap_over(bracket, load) >= 3.0

        outlook = f"commissions/{yard.order('C-102')['commission']['id']}/outlook/"
        before = yard.get(outlook)["first_time"]
        rack = yard.demo.get("places/")["results"]
        shelf = next(row["id"] for row in rack if row["name"] == "Rack D3")
        for wall, event in (
            ("2026-11-04 15:30", {"kind": "settled"}),
            ("2026-11-04 17:00", {"kind": "loading"}),
            ("2026-11-04 17:30", {"kind": "started"}),
            ("2026-11-05 04:30", {"kind": "ended", "outcome": "fired"}),
            ("2026-11-06 08:30", {"kind": "opened", "celsius": 60}),
            ("2026-11-06 09:00", {"kind": "unloaded", "place_id": shelf}),
        ):
            yard.at(wall)
            yard.tell("piet", f"loads/{load['id']}/events/", **event)

        whole = yard.whole("B01")
        fired = [visit for visit in whole["visits"] if visit["state"] == "glaze_fired"]
        assert whole["firings"] == {"bisque": 1, "glaze": 2}
        assert [visit["occasion_name"] for visit in fired] == ["F-205", "F-212"]
        assert whole["piece"]["place"]["name"] == "Rack D3"
        assert charged_as(yard, load, "B01") == "second glaze firing"
        tried = yard.get(outlook)["first_time"]
        assert (tried["good"], tried["of"]) == (before["good"], before["of"] + 1)

    def test_is_not_said_of_what_was_fired_once_after_its_load_was_called_off(self, yard) -> None:
        """F-208 was called off, and its ware fired in F-209; the tray had been fired before."""
        rows = yard.load("F-208")["placements"]

        said = {row["piece"]["mark"]: {one["code"] for one in row["warnings"]} for row in rows}

        again = {mark for mark, codes in said.items() if "glaze-fired-again" in codes}
        assert again == {"P02"}

    def test_is_seen_though_it_was_called_glazed_since(self, yard) -> None:
        """Ground and glazed anew it stands with what is fired the first time."""
        load, bracket = yard.load("F-212"), yard.piece("B01")
        row = next(row for row in load["placements"] if row["piece"]["mark"] == "B01")
        yard.tell("piet", f"placements/{row['id']}/removals/", reason="dip it once more")
        yard.tell(
            "odile",
            f"pieces/{bracket.pk}/stage-events/",
            stage="glaze",
            state="glazed",
            reason="glazed anew",
        )
        yard.tell("bram", f"loads/{load['id']}/placements/", pieces=[{"piece_id": str(bracket.pk)}])

        load = yard.load("F-212")
        row = next(row for row in load["placements"] if row["piece"]["mark"] == "B01")
        assert "glaze-fired-again" in {said["code"] for said in row["warnings"]}
        assert gap_over(bracket, load) >= 3.0


def gap_over(piece: Piece, load: Any) -> float:
    """Return how much room the studio's rules keep over a piece beside others'. [mm]"""
    row = Load.objects.get(pk=load["id"])
    problem = problem_of(row, placements_of([row])[row.pk], sizes=Sizes([piece]))
    assert problem is not None
    ware = next(each for each in problem.ware if each.name == piece.mark)
    return problem.rules.refire_above_mm if ware.is_refire else 0.0


def charged_as(yard: Yard, load: Any, mark: str) -> str:
    shares = yard.get(f"loads/{load['id']}/fees/")["shares"]
    return next(one["which"] for row in shares for one in row["lines"] if one["mark"] == mark)


class TestPowerCutInABisque:
    """K1 stops at 868 °C and stands for 95 minutes; a person says what becomes of it."""

    @pytest.mark.parametrize(
        ("choice", "result"),
        [("resume", "bisqued"), ("refire", "bone_dry"), ("accept_by_cone", "bisqued")],
    )
    def test_moves_nothing_on_until_somebody_chooses(self, yard, choice, result) -> None:
        load = yard.load("F-211")
        marks = [row["piece"]["mark"] for row in load["placements"] if row["piece"]]
        kiln = yard.get("kilns/")["results"][0]
        path = f"loads/{load['id']}/events/"
        for wall, kind in (
            ("2026-11-02 16:00", "settled"),
            ("2026-11-02 17:30", "loading"),
            ("2026-11-02 18:00", "started"),
        ):
            yard.at(wall)
            yard.tell("piet", path, kind=kind)
        for wall, reading_c in (("2026-11-02 22:10", 600.0), ("2026-11-03 00:10", 868.0)):
            yard.at(wall)
            yard.tell("piet", f"loads/{load['id']}/readings/", reading_c=reading_c)
        yard.tell("piet", path, kind="stopped", reason="power lost")
        yard.at("2026-11-03 01:45")
        yard.tell("piet", f"loads/{load['id']}/readings/", reading_c=702.0)
        upright = {"level": 1, "role": "guide", "cone": "05", "clock_hand": 12}
        yard.tell("piet", f"loads/{load['id']}/cones/", cones=[upright])

        shown = yard.load("F-211")
        stopped = shown["stopped"]
        assert {yard.piece(mark).state for mark in marks} == {"in_bisque"}
        assert stopped["facts"]["highest_c"] == 868.0
        assert round(stopped["facts"]["above_600_h"], 2) == 3.58  # 2 h up, 95 min standing
        assert round(stopped["facts"]["gap_h"], 2) == 1.58
        assert [one["cone"] for one in shown["cones"]] == ["05"]
        assert "crawled glaze" in stopped["caution"]
        assert [one["code"] for one in stopped["choices"]] == ["resume", "refire", "accept_by_cone"]
        assert not any(one["is_backed"] for one in stopped["choices"][::2])

        chosen = next(one for one in stopped["choices"] if one["code"] == choice)
        yard.tell("piet", path, kind=chosen["kind"], outcome=chosen["outcome"])
        if choice == "resume":
            yard.at("2026-11-03 05:00")
            yard.tell("piet", path, kind="ended", outcome="fired")
        yard.at("2026-11-04 09:00")
        yard.tell("piet", path, kind="opened", celsius=60)
        yard.tell("piet", path, kind="unloaded")

        assert {yard.piece(mark).state for mark in marks} == {result}
        after = yard.get("kilns/")["results"][0]
        assert after["firings"] - kiln["firings"] == (choice != "refire")
        assert after["hot_h"] > kiln["hot_h"]
        worn = [mark for mark in marks if yard.piece(mark).has_interrupted_bisque]
        assert worn == (marks if choice != "refire" else [])

    def test_follows_its_ware_through_the_bisque_after_to_glazing(self, yard) -> None:
        """F-203 went out and did not fire; F-204 fired the same ware the day after."""
        first, second = yard.load("F-203"), yard.load("F-204")
        inside = {row["piece"]["mark"] for row in second["placements"]}

        assert (first["outcome"], second["outcome"]) == ("not_fired", "fired")
        assert inside == {row["piece"]["mark"] for row in first["placements"]}
        for mark in ("T15", "T16", "T17"):
            whole = yard.whole(mark)
            assert whole["firings"]["bisque"] == 1
            assert "interrupted-bisque" in {said["code"] for said in whole["warnings"]}
        waits = {row["piece"]["mark"]: row for row in yard.load("F-212")["placements"]}
        assert "interrupted-bisque" in {said["code"] for said in waits["T15"]["warnings"]}


class TestThickWareInABisque:
    def test_asks_for_a_warm_hold_and_names_whom_it_makes_wait(self, yard) -> None:
        """The feet of the inkstand and the knop of the lid are thicker than the studio's limit."""
        said = {one["code"]: one["detail"] for one in yard.load("F-211")["warnings"]}

        assert said["warm-hold-for-all"] == (
            "Thick: L05, I02. Add about 6 h below 100 °C for the whole load? "
            "Ask the others in it. Jun: J05; Nessa: T21, T22."
        )
