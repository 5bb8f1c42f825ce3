"""The loaded demo against its own tables, and against what its papers say of it."""

import csv
from collections import Counter
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from firings.demo import tables
from moulds.queries import sets
from pieces.models import Clash, Part, Piece, StageEvent
from pieces.queries.story import stories
from tests.factories import sent

TABLES = Path(tables.__file__).parent
LONDON = ZoneInfo("Europe/London")

# As the demo's paper counts them.
STAGE_COUNTS = {
    "packed": 4,
    "checked": 9,
    "glaze fired": 7,
    "glazed": 3,
    "bisqued": 6,
    "bone dry": 7,
    "drying covered": 6,
    "in mould": 5,
    "scrapped": 3,
    "planned": 3,
    "joined": 1,
    "in glaze kiln": 4,
    "drying open": 1,
    "delivered": 1,
}
PRESSES = {
    "M01": 131,
    "M02": 22,
    "M03": 9,
    "M04": 11,
    "M05": 17,
    "M06": 19,
    "M07": 58,
    "M08": 34,
    "M09": 3,
    "M10": 7,
    "M11": 6,
    "M12": 6,
    "M13": 12,
    "M14": 26,
}
STILL_TO_PRESS = {"S04": {"M04 g1"}, "L08": {"M07 g3"}}  # the handle, and the knop
ALIVE = {"T": 26, "S": 4, "J": 8, "L": 8, "I": 2, "B": 3}


def rows(name: str) -> dict[str, dict[str, str]]:
    with (TABLES / name).open(encoding="utf-8") as lines:
        return {next(iter(row.values())): row for row in csv.DictReader(lines)}


def pieces(demo) -> list[Piece]:
    return list(
        Piece.objects.of(demo.studio)
        .select_related("place", "maker", "design")
        .order_by("mark_key")
    )


def said(piece: Piece) -> str:
    """Return where a piece is in the words of the table."""
    if piece.state == "drying":
        return "drying open" if piece.cover == "open" else "drying covered"
    words = {"to_press": "planned", "in_glaze": "in glaze kiln"}
    return words.get(piece.state, piece.state.replace("_", " "))


def since(piece: Piece) -> str:
    at = piece.cover_since_at if piece.state == "drying" else piece.since_at
    assert at is not None
    return at.astimezone(LONDON).strftime("%Y-%m-%d %H:%M")


def occasions(demo, state: str) -> dict[str, list[str]]:
    """Return, for each piece by its mark, the loads that brought it to `state`, in order."""
    found: dict[str, list[str]] = {piece.mark: [] for piece in pieces(demo)}
    visits = StageEvent.objects.of(demo.studio).agreed().filter(state=state)
    for mark, name in visits.order_by("happened_at").values_list("piece__mark", "occasion_name"):
        found[mark].append(name)
    return found


class TestMoulds:
    def test_show_the_presses_of_the_table(self, demo) -> None:
        found = sets.now_of(sets.all_of(demo.studio), studio=demo.studio, at=demo.now)

        assert {row.mould_set.label: row.presses for row in found} == PRESSES

    def test_are_as_damp_as_their_weights_say(self, demo) -> None:
        # (now - dry) / (0.43 x dry): capacity of plaster at 70:100
        expected = {"M02": 0.13, "M03": 0.16, "M04": 0.32, "M10": 0.058, "M14": 0.172}

        found = sets.now_of(sets.all_of(demo.studio), studio=demo.studio, at=demo.now)

        water = {row.mould_set.label: row.dryness for row in found}
        shown = {label: water[label].free_water_fraction for label in expected}
        assert shown == pytest.approx(expected, abs=0.006)
        words = {label: str(water[label].word) for label in ("M09", "M13", "M10", "M04", "M14")}
        assert words == {
            "M09": "dry",
            "M13": "dry",
            "M10": "usable",
            "M04": "rest",
            "M14": "rest",
        }

    def test_keep_their_generations(self, demo) -> None:
        found = sets.now_of(sets.all_of(demo.studio), studio=demo.studio, at=demo.now)
        generations = {row.mould_set.label: row.casting.generation for row in found if row.casting}

        others = {label: n for label, n in generations.items() if n != 1}
        assert others == {"M02": 2, "M07": 3, "M13": 2}


class TestPieces:
    def test_are_sixty_and_stand_where_the_table_says(self, demo) -> None:
        table = rows("pieces.csv")
        found = pieces(demo)

        assert len(found) == 60
        assert {piece.mark for piece in found} == set(table)
        wrong = []
        for piece in found:
            row = table[piece.mark]
            place = row["place"] if piece.stage != "lost" else "-"
            maker = piece.maker.first_name if piece.maker else "owner unknown"
            shown = (said(piece), since(piece), maker)
            if shown != (row["stage"], row["since"], row["maker"]):
                wrong.append((piece.mark, shown))
            stands = piece.place.name if piece.place else "-"
            if stands.split(" Finch")[0] != place:
                wrong.append((piece.mark, stands))
        assert wrong == []

    def test_are_as_many_at_each_stage_as_the_paper_counts(self, demo) -> None:
        assert Counter(map(said, pieces(demo))) == STAGE_COUNTS

    def test_are_as_many_alive_of_each_design(self, demo) -> None:
        alive = Counter(
            piece.mark[0]
            for piece in pieces(demo)
            if piece.stage != "lost" and piece.state != "to_press" and piece.mark[0] != "P"
        )

        assert alive == ALIVE

    def test_come_from_the_moulds_and_generations_of_the_table(self, demo) -> None:
        table = rows("pieces.csv")
        found: dict[str, set[str]] = {mark: set() for mark in table}
        parts = Part.objects.of(demo.studio).exclude(pressing=None)
        for mark, label, generation in parts.values_list(
            "piece__mark", "pressing__casting__mould_set__label", "pressing__casting__generation"
        ):
            found[mark].add(f"{label} g{generation}")

        wrong = {}
        for mark, row in table.items():
            moulds = {
                word.split(" x")[0]
                for word in row["moulds_and_generation"].split(" + ")
                if word != "no mould"
            }
            if row["stage"] == "planned":
                moulds = set()
            moulds -= STILL_TO_PRESS.get(mark, set())
            if moulds != found[mark]:
                wrong[mark] = (moulds, found[mark])
        assert wrong == {}

    def test_were_fired_before_they_count_as_fired(self, demo) -> None:
        bisques, glazes = occasions(demo, "bisqued"), occasions(demo, "glaze_fired")
        beyond_bisque = {"bisqued", "glazed", "in_glaze", "glaze_fired", "checked", "packed"}
        beyond_glaze = {"glaze_fired", "checked", "packed", "delivered"}

        for piece in pieces(demo):
            if piece.state in beyond_bisque | {"delivered"}:
                assert len(bisques[piece.mark]) == 1, piece.mark
            if piece.state in beyond_glaze:
                assert glazes[piece.mark], piece.mark

    def test_count_no_firing_that_was_stopped_or_called_off(self, demo) -> None:
        counted = [*occasions(demo, "bisqued").values(), *occasions(demo, "glaze_fired").values()]
        names = {name for names in counted for name in names}

        assert names == {"F-201", "F-202", "F-204", "F-205", "F-207", "F-209"}
        went_in = occasions(demo, "in_bisque")["T11"], occasions(demo, "in_glaze")["T11"]
        assert went_in == (["F-203", "F-204"], ["F-208", "F-209"])

    @pytest.mark.parametrize(
        ("mark", "bisque", "glaze"),
        [("P02", 1, 2), ("T11", 1, 1), ("B03", 1, 1), ("T05", 1, 1), ("J02", 1, 0), ("B04", 1, 0)],
    )
    def test_show_how_often_they_were_fired(self, demo, mark: str, bisque: int, glaze: int) -> None:
        piece = Piece.objects.of(demo.studio).get(mark=mark)

        firings = demo.get(f"pieces/{piece.pk}/")["firings"]

        assert firings == {"bisque": bisque, "glaze": glaze}

    def test_tell_of_the_swapped_handle(self, demo) -> None:
        boat = Piece.objects.of(demo.studio).get(mark="S03")
        handles = Part.objects.filter(piece=boat, role="handle").order_by("pressed_at")
        story = stories([boat])[boat.pk]

        assert [handle.state for handle in handles] == ["replaced", "joined"]
        cracked, fresh = handles
        assert fresh.replaces == cracked
        kinds = cracked.events.order_by("happened_at").values_list("kind", flat=True)
        assert list(kinds) == ["pressed", "demoulded", "joined", "cracked", "replaced"]
        joined_again = datetime(2026, 10, 23, 12, 15, tzinfo=LONDON)
        assert story.now is not None
        assert story.now.last_join_at == joined_again

    @pytest.mark.parametrize(
        ("mark", "cause", "reclaim"),
        [
            ("T27", "corner crack", "none"),
            ("S01", "handle join opened", "mixed"),
            ("B04", "burst in the kiln", "none"),
        ],
    )
    def test_say_why_they_were_lost(self, demo, mark: str, cause: str, reclaim: str) -> None:
        lost = StageEvent.objects.of(demo.studio).get(piece__mark=mark, stage="lost")

        assert (lost.cause, lost.reclaim) == (cause, reclaim)


class TestNumbers:
    def test_are_never_used_again(self, demo) -> None:
        scrapped = Piece.objects.of(demo.studio).get(mark="T27")
        path = f"/api/v1/studios/{demo.studio.slug}"

        answer = sent(demo.client("odile"), f"{path}/number-blocks/", {"series": "T"})
        again = sent(
            demo.client("odile"),
            f"{path}/pieces/",
            {
                "design_id": str(scrapped.design_id),
                "pieces": [{"id": "0199e1c0-0000-7000-8000-000000000027", "mark": "t27"}],
            },
        )

        assert answer.status_code == 201, answer.content
        assert answer.json()["first"] == 29  # T28 is the last of the table
        assert again.status_code == 201, again.content
        assert again.json()["pieces"][0]["mark"] == "t27·b"
        assert Clash.objects.get(studio=demo.studio, state="open").kind == "number_taken"
