import pytest

from pieces.models import TestReport
from studio.models import JournalEntry
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.glazed import fire, send_report, told_of
from tests.firings.yard import DAY
from tests.pieces.orders import S, jars, piece, put, take


@pytest.fixture
def jar(maker, yard):
    """J01 with its lid L01: 600 ml, 110 mm deep."""
    order, _ = jars(maker[0], sets=1)
    yards.size(piece("J01").design, 125, 125, 137, inside_depth_mm=110, capacity_ml=600)
    yards.size(piece("L01").design, 118, 118, 45, contact="lid")
    return order


@pytest.fixture
def batch(studio):
    return factories.glaze_batch(studio, "GB-07")


@pytest.fixture
def fired(jar, batch, maker, yard):
    """The load from which J01 and L01 came, dipped in one batch."""
    load = yards.load(yard, "glaze", number="F-205")
    fire(maker[0], ["J01", "L01"], batch, load)
    return load


def about(batch, load, **more):
    names = {"glaze_batch_id": str(batch.pk), "load_id": str(load.pk)}
    return {**names, "piece_id": str(piece("J01").pk), **more}


LID = {
    "lid_lead_mg": 0.06,
    "lid_lead_is_below": True,
    "lid_cadmium_mg": 0.006,
    "lid_cadmium_is_below": True,
}


class TestTestReports:
    def test_are_kept_as_they_were_written_and_declare_nothing(self, fired, batch, maker):
        answer = send_report(maker[1], **about(batch, fired))

        assert answer.status_code == 201
        kept = maker[1].get(f"{S}test-reports/").json()["results"][0]
        assert kept["lead_is_below"]
        assert (kept["lead_value"], kept["occasion_name"]) == (0.1, "F-205")
        assert (kept["depth_mm"], kept["volume_ml"]) == (110, 600)
        assert kept["limits"]["name"] == "fillable"
        assert kept["verdict"]["code"] == "within"
        assert "nothing is declared" in answer.json()["cautions"][0]
        assert "safe" not in answer.content.decode().lower()

    def test_of_an_order_stand_in_its_page_and_its_history(self, jar, maker):
        answer = send_report(maker[1], commission_id=str(jar.pk), depth_mm="58 mm", volume_ml=310)

        assert answer.status_code == 201
        page = maker[1].get(f"{S}commissions/{jar.pk}/").json()
        assert page["reports"][0]["depth_mm"] == 58
        assert [row["code"] for row in page["cautions"]] == ["food-use-report-kept"]
        told = maker[1].get(f"{S}commissions/{jar.pk}/history/").json()["results"]
        assert told[0]["words"] == "report of 30 Oct 2026: lead < 0.1 mg/l, cadmium < 0.01 mg/l"

    def test_are_put_right_by_another_and_both_are_kept(self, fired, batch, maker):
        first = send_report(maker[1], **about(batch, fired, lead_value=4.5, lead_is_below=False))

        right = send_report(maker[1], **about(batch, fired, corrects=first.json()["id"]))

        shown = maker[1].get(f"{S}test-reports/").json()["results"]
        assert [row["id"] for row in shown] == [right.json()["id"]]
        assert TestReport.objects.count() == 2
        assert JournalEntry.objects.filter(verb="recorded_report").count() == 2

    @pytest.mark.parametrize(
        ("field", "value"),
        [
            ("lead_value", "NaN"),
            ("lead_value", -1),
            ("cadmium_value", "Infinity"),
            ("unit", "ppm"),
            ("laboratory", ""),
            ("reported_on", "0026-10-30"),
            ("lid_lead_mg", 0.1),
        ],
    )
    def test_name_what_cannot_be(self, maker, field, value):
        answer = send_report(maker[1], **{field: value})

        pointer = "lid_cadmium_mg" if field == "lid_lead_mg" else field
        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == f"#/{pointer}"

    def test_of_a_lid_say_how_much_the_vessel_holds(self, maker):
        answer = send_report(maker[1], **LID)

        assert answer.json()["errors"][0]["pointer"] == "#/volume_ml"

    def test_are_not_a_helpers_or_another_makers_to_write(self, maker, helper, studio, join):
        order = take(maker[0])
        _, other = join(studio, ["maker"], "Mo")
        helper[1].raise_request_exception = False

        assert send_report(other, commission_id=str(order.pk)).status_code == 403
        assert send_report(helper[1]).status_code == 403


class TestOnePiece:
    def test_is_covered_by_the_report_of_its_batch_fired_alike_with_its_lid(
        self, fired, batch, maker
    ):
        send_report(maker[1], **about(batch, fired))
        without_lid = told_of(maker[1], piece("J01"))

        send_report(maker[1], **about(batch, fired, **LID))

        assert without_lid["coverage"]["code"] == "lid_not_tested"
        for mark in ("J01", "L01"):
            told = told_of(maker[1], piece(mark))
            assert told["coverage"]["code"] == "within"
            assert told["limits"]["words"] == "other fillable ware"
            assert told["fired"] == {"load": "F-205", "kiln": "K2 Finch", "cone": "6"}
            assert told["glaze_batches"] == [{"id": str(batch.pk), "label": "GB-07"}]
        assert told["how_tested"].startswith("4 % acetic acid")

    def test_is_over_with_what_its_lid_adds(self, fired, batch, maker):
        # 3.9 mg/l of the jar and 0.12 mg of the lid on 0.6 litre, which is 0.2 mg/l: 4.1 in all.
        results = {**LID, "lead_value": 3.9, "lead_is_below": False, "lid_lead_mg": 0.12}

        send_report(maker[1], **about(batch, fired, **{**results, "lid_lead_is_below": False}))

        assert told_of(maker[1], piece("J01"))["coverage"]["code"] == "over"

    def test_is_not_covered_by_another_batch(self, fired, maker, studio):
        other = factories.glaze_batch(studio, "GB-08")
        send_report(maker[1], **about(other, fired, **LID))

        told = told_of(maker[1], piece("J01"))["coverage"]

        assert told["words"].startswith("not tested: no report for GB-07, cone 6 in K2 Finch")

    def test_waits_for_its_glaze_load(self, jar, maker):
        told = told_of(maker[1], piece("J01"))

        assert told["coverage"]["words"] == "not covered yet: no glaze load"
        assert told["fired"] is None

    def test_comes_out_of_a_kiln_that_was_called_off_as_it_was_dipped(
        self, jar, batch, maker, yard
    ):
        put(maker[0], "J01", "glaze", "glazed", NOW - 4 * DAY, glaze_batch=batch)
        put(maker[0], "J01", "glaze", "in_glaze", NOW - 3 * DAY)
        put(maker[0], "J01", "glaze", "glazed", NOW - 2 * DAY)
        load = yards.load(yard, "glaze", number="F-210")
        put(maker[0], "J01", "glaze", "glaze_fired", NOW - DAY, occasion_id=load.pk)

        told = told_of(maker[1], piece("J01"))

        assert [row["label"] for row in told["glaze_batches"]] == ["GB-07"]
        assert told["coverage"]["code"] == "no_report"

    def test_of_another_studio_is_unknown(self, jar, stranger):
        path = f"/api/v1/studios/quay/pieces/{piece('J01').pk}/food-contact/"

        assert stranger[1].get(path).status_code == 404
