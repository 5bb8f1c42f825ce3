"""Two people tell of one load what cannot both be so; a person says which stands."""

from typing import Any

import pytest

from firings.models import Load, Placement


def loaded(yard) -> tuple[Any, str]:
    """Return F-212, settled and loaded by Piet, and where is told what happens to it."""
    load = yard.load("F-212")
    path = f"loads/{load['id']}/events/"
    yard.at("2026-11-04 15:30")
    yard.tell("piet", path, kind="settled")
    yard.at("2026-11-04 16:40")
    yard.tell("piet", path, kind="loading")
    return load, path


@pytest.fixture
def doubtful(yard):
    """Return F-212 called off by Piet, lit and fired by Odile, who had not heard of that."""
    load, path = loaded(yard)
    seen = yard.get("loads/" + load["id"] + "/")["journal_seq"]
    yard.at("2026-11-04 16:55")
    yard.tell("piet", path, kind="called_off", reason="vent dead")
    yard.at("2026-11-04 18:00")
    lit = {"happened_at": "2026-11-04T17:30:00Z", "based_on": seen}
    yard.tell("odile", path, kind="started", **lit)
    yard.at("2026-11-05 06:00")
    yard.tell("odile", path, kind="ended", outcome="fired", based_on=seen)
    yard.at("2026-11-06 09:00")
    yard.tell("odile", path, kind="opened", celsius=60, based_on=seen)
    yard.tell("odile", path, kind="unloaded", based_on=seen)
    return load


class TestCalledOffByOneAndFiredByAnother:
    def test_is_one_question_with_what_each_answer_comes_to(self, yard, doubtful) -> None:
        (clash,) = yard.get("load-clashes/?state=open")["results"]

        assert (clash["kind"], clash["subject"]["mark"]) == ("two_load_stories", "F-212")
        assert [act["verb"] for act in clash["acts"]] == ["called_off_load", "lit_kiln"]
        assert [act["member"]["first_name"] for act in clash["acts"]] == ["Piet", "Odile"]
        assert clash["acts"][0]["detail"] == "vent dead"
        assert [row["choice"] for row in clash["choices"]] == ["first", "second"]
        assert clash["stands_meanwhile"]["state"] == "called_off"
        assert yard.piece("T15").state == "glazed"
        whole = yard.get(f"load-clashes/{clash['id']}/", "jun")
        assert (whole["may_answer"], whole["state"]) == (False, "open")

    def test_leaves_it_called_off_where_that_stands(self, yard, doubtful) -> None:
        (clash,) = yard.get("load-clashes/?state=open")["results"]

        answer = yard.tell("piet", f"load-clashes/{clash['id']}/answers/", choice="first")

        assert (answer["load"]["state"], answer["load"]["is_in_doubt"]) == ("called_off", False)
        assert answer["clash"]["state"] == "answered"
        assert yard.get("load-clashes/")["results"] == []
        assert yard.piece("T15").state == "glazed"
        late = yard.refused("odile", f"load-clashes/{clash['id']}/answers/", choice="second")
        assert late["type"] == "/problems/already-settled"

    def test_fires_the_ware_where_that_stands(self, yard, doubtful) -> None:
        (clash,) = yard.get("load-clashes/?state=open")["results"]
        refused = yard.refused("jun", f"load-clashes/{clash['id']}/answers/", choice="second")
        assert refused["type"] == "/problems/not-asked"

        answer = yard.tell("odile", f"load-clashes/{clash['id']}/answers/", choice="second")

        assert (answer["load"]["state"], answer["load"]["is_in_doubt"]) == ("unloaded", False)
        assert yard.piece("T15").state == "glaze_fired"
        assert yard.whole("B01")["firings"] == {"bisque": 1, "glaze": 2}
        log = {row["kind"]: row["is_taken_back"] for row in answer["load"]["events"]}
        assert log["called_off"]
        assert not log["started"]


@pytest.fixture
def fired_elsewhere(yard):
    """Return F-212, loaded and called off, and the load that fired its T15; then it was not off."""
    load, path = loaded(yard)
    yard.at("2026-11-04 16:55")
    off = yard.tell("piet", path, kind="called_off", reason="vent dead")
    kiln, starts_at = load["kiln"]["id"], "2026-11-06T17:30:00Z"
    asked = {"kiln_id": kiln, "kind": "glaze", "cone": "6", "starts_at": starts_at}
    other = yard.tell("piet", "loads/", **asked)["load"]
    ware = {"pieces": [{"piece_id": str(yard.piece("T15").pk)}]}
    yard.tell("jun", f"loads/{other['id']}/placements/", **ware)
    for at, kind, more in FIRED:
        yard.at(at)
        yard.tell("piet", f"loads/{other['id']}/events/", kind=kind, **more)
    row = next(row for row in off["load"]["events"] if row["kind"] == "called_off")
    yard.tell("piet", "retractions/", corrects=row["id"])
    return load, other


FIRED = (
    ("2026-11-06 16:00", "settled", {}),
    ("2026-11-06 16:30", "loading", {}),
    ("2026-11-06 17:30", "started", {}),
    ("2026-11-07 06:00", "ended", {"outcome": "fired"}),
    ("2026-11-08 09:00", "opened", {"celsius": 60}),
    ("2026-11-08 09:30", "unloaded", {}),
)


def told_of(yard, mark: str) -> dict[str, str | None]:
    """Return what a piece's story tells, and who settled that it was not so."""
    story = yard.get(f"pieces/{yard.piece(mark).pk}/history/")["results"]
    return {row["words"]: row["left_out_by"] and row["left_out_by"]["first_name"] for row in story}


class TestInTwoKilns:
    def test_is_asked_once_the_call_off_is_taken_back(self, yard) -> None:
        """T15 went into another load meanwhile; it cannot be in both."""
        load = yard.load("F-212")
        path = f"loads/{load['id']}/events/"
        yard.at("2026-11-04 15:30")
        yard.tell("piet", path, kind="settled")
        off = yard.tell("piet", path, kind="called_off", reason="vent dead")
        other = yard.tell(
            "piet",
            "loads/",
            kiln_id=load["kiln"]["id"],
            kind="glaze",
            cone="6",
            starts_at="2026-11-06T17:30:00Z",
        )["load"]
        tile = yard.piece("T15")
        ware = {"pieces": [{"piece_id": str(tile.pk)}]}
        yard.tell("jun", f"loads/{other['id']}/placements/", **ware)
        called_off = next(row for row in off["load"]["events"] if row["kind"] == "called_off")
        yard.tell("piet", "retractions/", corrects=called_off["id"])

        (clash,) = yard.get("load-clashes/?state=open")["results"]
        assert (clash["kind"], clash["subject"]["mark"]) == ("two_kilns", "T15")
        yard.tell("jun", f"load-clashes/{clash['id']}/answers/", choice="first")

        held = Placement.objects.get(piece=tile, is_live=True, removed_at=None)
        assert held.load == Load.objects.get(pk=load["id"])
        assert yard.get("load-clashes/")["results"] == []
        shown = yard.get(f"load-clashes/{clash['id']}/")
        assert shown["state"] == "answered"

    def test_strikes_out_the_fire_that_it_was_not_in_and_counts_it_nowhere(
        self, yard, fired_elsewhere
    ) -> None:
        load, other = fired_elsewhere
        assert yard.whole("T15")["firings"]["glaze"] == 1
        (clash,) = yard.get("load-clashes/")["results"]

        yard.tell("jun", f"load-clashes/{clash['id']}/answers/", choice="first")

        told = told_of(yard, "T15")
        name = other["number"]
        assert told[f"in the glaze kiln, {name}"] == told[f"glaze fired, {name}"] == "Jun"
        assert told["in the glaze kiln, F-212"] is None
        assert told[f"two stories settled: in F-212, not in {name}"] is None
        settled = yard.get("clashes/?state=answered")["results"]
        assert {(row["kind"], row["subject"]["mark"]) for row in settled} == {("two_kilns", "T15")}
        tile = yard.piece("T15")
        assert (tile.state, yard.whole("T15")["firings"]["glaze"]) == ("in_glaze", 0)
        held = Placement.objects.get(piece=tile, is_live=True)
        assert str(held.load_id) == load["id"]
        assert yard.get("load-clashes/")["results"] == []

    def test_leaves_it_fired_where_the_other_stands(self, yard, fired_elsewhere) -> None:
        load, other = fired_elsewhere
        (clash,) = yard.get("load-clashes/")["results"]

        yard.tell("jun", f"load-clashes/{clash['id']}/answers/", choice="second")

        told = told_of(yard, "T15")
        assert told["in the glaze kiln, F-212"] == "Jun"
        assert told[f"glaze fired, {other['number']}"] is None
        assert (yard.piece("T15").state, yard.whole("T15")["firings"]["glaze"]) == (
            "glaze_fired",
            1,
        )
        assert not Placement.objects.filter(piece=yard.piece("T15"), is_live=True).exists()
        assert "T15" not in str(yard.get(f"loads/{load['id']}/")["load"]["placements"])
