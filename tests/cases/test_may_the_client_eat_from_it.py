"""May the client eat from it: limits, a report, an order's papers, and what is for display.

Limits: the Materials and Articles in Contact with Food (Wales) Regulations 2012, part 4 and
schedule 3 (WSI 2012/2705). The laboratory and its figures are invented.
"""

from io import BytesIO
from typing import Any

import pytest
from pypdf import PdfReader

from firings.models import Load
from moulds.models import Design
from studio.domain.ids import uuid7
from studio.models import GlazeBatch

RESULTS = {
    "laboratory": "Assay Office",
    "reported_on": "2026-10-30",
    "lead_value": 0.1,
    "lead_is_below": True,
    "cadmium_value": 0.01,
    "cadmium_is_below": True,
    "unit": "mg_per_l",
}
# What the inside of the lid gave off, tested apart. [mg]
LID = {
    "lid_lead_mg": 0.06,
    "lid_lead_is_below": True,
    "lid_cadmium_mg": 0.006,
    "lid_cadmium_is_below": True,
}


@pytest.fixture
def ground(yard) -> dict[str, str]:
    """The one glaze batch, and the load in K2 from which J01 and its lid came."""
    studio = yard.demo.studio
    batch = GlazeBatch.objects.of(studio).get()
    load = Load.objects.of(studio).get(number="F-209")
    return {"glaze_batch_id": str(batch.pk), "load_id": str(load.pk)}


def food(yard, mark: str) -> Any:
    return yard.get(f"pieces/{yard.piece(mark).pk}/food-contact/")


def limits(told: Any) -> tuple[float, float, str]:
    return told["limits"]["lead"], told["limits"]["cadmium"], told["limits"]["unit"]


def printed(answer: Any) -> str:
    pages = PdfReader(BytesIO(answer.content)).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


class TestLimits:
    def made(self, yard, **inside: Any) -> Any:
        """Return what is told of a new piece of a new design that is that deep."""
        design = yard.tell(
            "odile",
            "designs/",
            name=f"dish {uuid7()}",
            noun="dish",
            series="D",
            parts=[{"role": "dish", "thickest_mm": 8, "thinnest_mm": 6}],
            **inside,
        )
        planned = yard.tell("odile", "pieces/", design_id=design["id"])
        return yard.get(f"pieces/{planned['pieces'][0]['id']}/food-contact/")

    @pytest.mark.parametrize("mark", ["S02", "J01", "L01"])
    def test_of_sauce_boat_jar_and_its_lid_are_by_the_litre(self, yard, mark) -> None:
        assert limits(food(yard, mark)) == (4.0, 0.3, "mg_per_l")

    def test_of_a_shallow_dish_are_by_area(self, yard) -> None:
        dish = self.made(yard, inside_depth_mm="22 mm", capacity_ml=250)

        assert limits(dish) == (0.8, 0.07, "mg_per_dm2")

    def test_of_a_crock_over_three_litres_are_stricter(self, yard) -> None:
        crock = self.made(yard, inside_depth_mm=210, capacity_ml="3.2 l", contact="storage")

        assert limits(crock) == (1.5, 0.1, "mg_per_l")


class TestAReport:
    def test_of_jar_and_lid_speaks_for_both_and_adds_the_lid_on_the_jars_volume(
        self, yard, ground
    ) -> None:
        jar = str(yard.piece("J01").pk)

        told = yard.tell("odile", "test-reports/", piece_id=jar, **ground, **RESULTS, **LID)

        # < 0.06 mg of the lid on 0.6 litre is < 0.1 mg/l; with < 0.1 mg/l of the jar < 0.2.
        assert told["report"]["verdict"]["code"] == "within"
        assert told["report"]["limits"]["name"] == "fillable"
        for mark in ("J01", "L01"):
            assert food(yard, mark)["coverage"]["words"].startswith("within the limits")

    def test_takes_the_jar_over_by_its_lid_alone(self, yard, ground) -> None:
        # 3.9 mg/l is under 4.0; 0.12 mg of the lid on 0.6 litre is 0.2 mg/l more.
        much = {**RESULTS, **LID, "lead_value": 3.9, "lead_is_below": False}
        much |= {"lid_lead_mg": 0.12, "lid_lead_is_below": False}

        yard.tell("odile", "test-reports/", piece_id=str(yard.piece("J01").pk), **ground, **much)

        assert food(yard, "J01")["coverage"]["code"] == "over"

    def test_without_the_lid_does_not_speak_for_a_lidded_jar(self, yard, ground) -> None:
        yard.tell("odile", "test-reports/", piece_id=str(yard.piece("J01").pk), **ground, **RESULTS)

        assert food(yard, "J01")["coverage"]["code"] == "lid_not_tested"

    def test_does_not_speak_for_a_boat_that_has_no_glaze_load(self, yard, ground) -> None:
        yard.tell("odile", "test-reports/", depth_mm=58, volume_ml=310, **ground, **RESULTS)

        told = food(yard, "S02")

        assert told["coverage"]["words"] == "not covered yet: no glaze load"
        assert (told["fired"], told["glaze_batches"]) == (None, [])

    def test_of_another_cone_says_nothing_of_the_jar(self, yard, ground) -> None:
        bisque = str(Load.objects.of(yard.demo.studio).get(number="F-204").pk)
        jar = str(yard.piece("J01").pk)
        about = {**ground, "load_id": bisque, "piece_id": jar}

        yard.tell("odile", "test-reports/", **about, **RESULTS, **LID)

        assert food(yard, "J01")["coverage"]["code"] == "no_report"


class TestPapers:
    def papers(self, yard, who: str, number: str, rest: str = "") -> Any:
        pk = yard.order(number)["commission"]["id"]
        studio = yard.demo.studio.slug
        path = f"/api/v1/studios/{studio}/commissions/{pk}/papers/{rest}"
        return yard.demo.client(who).get(path)

    def test_print_not_declared_and_say_what_is_missing(self, yard) -> None:
        answer = self.papers(yard, "odile", "C-102")

        told = printed(answer)
        assert answer["Content-Type"] == "application/pdf"
        assert "Not declared for food." in told
        assert "S02: not covered yet: no glaze load." in told
        assert "safe" not in told.lower()

    def test_tell_moulds_clay_firings_and_the_cobalt_of_the_blue_stain(self, yard) -> None:
        told = printed(self.papers(yard, "odile", "C-102"))

        for text in ("S02", "M03 g1", "M04 g1", "BK-15", "F-207", "cobalt"):
            assert text in told

    def test_missing_a_report_block_the_declaration_and_nothing_else(self, yard, ground) -> None:
        pk = yard.order("C-103")["commission"]["id"]
        jar, lid = yard.piece("J01"), yard.piece("L01")
        for piece in (jar, lid):
            yard.tell(
                "jun",
                f"pieces/{piece.pk}/stage-events/",
                stage="finished",
                state="checked",
                grade="first",
            )
        refused = yard.refused("odile", f"commissions/{pk}/papers/", declares=True)
        plain = yard.tell("odile", f"commissions/{pk}/papers/", declares=False)
        reported = {**ground, **RESULTS, **LID, "piece_id": str(jar.pk)}
        yard.tell("jun", "test-reports/", **reported)

        signed = yard.tell("odile", f"commissions/{pk}/papers/", declares=True)

        assert refused["type"] == "/problems/report-missing"
        before = self.papers(yard, "jun", "C-103", f"{plain['paper']['id']}/")
        after = self.papers(yard, "jun", "C-103", f"{signed['paper']['id']}/")
        assert "Not declared for food." in printed(before)
        assert "Declared for food on 31 Oct 2026 by Odile Farrant" in printed(after)

    @pytest.mark.parametrize("who", ["jun", "nessa", "piet"])
    def test_are_signed_by_the_owner_alone(self, yard, who) -> None:
        pk = yard.order("C-103")["commission"]["id"]

        assert yard.send(who, f"commissions/{pk}/papers/").status_code == 403


class TestDisplayOnly:
    def test_is_lifted_by_no_apprentice_maker_or_technician(self, yard) -> None:
        tile = yard.piece("T01")
        assert tile.use == "display"

        for who in ("nessa", "bram", "piet"):
            client = yard.demo.client(who)
            path = f"/api/v1/studios/{yard.demo.studio.slug}/pieces/{tile.pk}/"
            answer = client.patch(path, {"use": "food"}, format="json")
            assert answer.status_code == 403

        assert yard.piece("T01").use == "display"

    def test_is_not_undone_by_taking_back_what_said_so(self, yard) -> None:
        boat = yard.piece("S02")
        path = f"/api/v1/studios/{yard.demo.studio.slug}/pieces/{boat.pk}/"
        said = str(uuid7())
        client = yard.demo.client("odile")
        note = {"id": said, "use": "display", "note": "the glaze crawled inside"}
        assert client.patch(path, note, format="json").status_code == 200

        for who in ("nessa", "odile"):
            assert yard.send(who, "retractions/", corrects=said).status_code >= 400

        assert yard.piece("S02").use == "display"
        assert food(yard, "S02")["coverage"]["words"] == "for display only, not for food"

    def test_stays_with_the_piece_when_its_order_is_for_food(self, yard) -> None:
        order = yard.order("C-102")
        tile = yard.piece("T05")

        line = order["lines"][0]["id"]
        yard.send("odile", "assignments/", piece_ids=[str(tile.pk)], line_id=line, reason="spare")

        assert yard.piece("T05").use == "display"

    def test_design_of_the_demo_says_how_deep_the_boat_is(self, yard) -> None:
        design = Design.objects.of(yard.demo.studio).get(name="ribbed sauce boat")

        assert (design.inside_depth_mm, design.capacity_ml) == (58, 310)
