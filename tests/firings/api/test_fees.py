"""What a load costs each maker, over the wire: who sees it, and what is kept."""

import pytest

from firings.models import LoadFees
from pieces.domain.stages import GLAZE_FIRED, GLAZED
from studio.models import StudioSettings
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, put, tell, tile

S = "/api/v1/studios/yard/"
# 169.7 × 169.7 × 12 mm wet, 6 % smaller dry: 0.287 l. Arithmetic.
TILE_L = 0.29


@pytest.fixture
def tariff(yard):
    StudioSettings.objects.filter(studio=yard.studio).update(
        bisque_fee_minor_per_l=180, glaze_fee_minor_per_l=260
    )


@pytest.fixture
def load(yard, tariff, maker, owner):
    load = yards.load(yard)
    put(load, maker[0], tile(yard, maker[0], mark="T1"), tile(yard, maker[0], mark="T2"))
    put(load, owner[0], tile(yard, owner[0], mark="T3"))
    return load


class TestReading:
    def test_shows_an_owner_every_share_by_the_tariff(self, load, owner):
        shown = owner[1].get(f"{S}loads/{load.pk}/fees/").json()

        assert (shown["stage"], shown["currency"], shown["measured"]) == ("estimate", "GBP", "dry")
        assert shown["per_litre_minor"] == 180
        mauds, orlas = shown["shares"]
        assert (mauds["person"]["first_name"], mauds["litres"], mauds["minor"]) == (
            "Maud",
            2 * TILE_L,
            104,
        )
        assert [line["mark"] for line in mauds["lines"]] == ["T1", "T2"]
        assert mauds["lines"][0]["box"] == {"x_mm": 159.5, "y_mm": 159.5, "height_mm": 11.3}
        assert sum(line["minor"] for line in mauds["lines"]) == mauds["minor"]
        assert (orlas["mine"], shown["total_minor"]) == (True, 104 + orlas["minor"])

    def test_shows_a_maker_only_their_own(self, load, maker):
        shown = maker[1].get(f"{S}loads/{load.pk}/fees/").json()

        assert [share["person"]["first_name"] for share in shown["shares"]] == ["Maud"]
        assert shown["total_minor"] is None
        assert not shown["may_record"]

    def test_shares_a_cost_to_the_penny(self, load, owner):
        shown = owner[1].get(f"{S}loads/{load.pk}/fees/?cost_minor=1000").json()

        assert [share["minor"] for share in shown["shares"]] == [667, 333]
        assert shown["total_minor"] == 1000

    def test_is_for_nobody_without_prices(self, load, helper, technician):
        for client in (helper[1], technician[1]):
            answer = client.get(f"{S}loads/{load.pk}/fees/")

            assert (answer.status_code, answer.json()["needed"]) == (403, "see_own_prices")

    def test_measures_as_the_studio_says(self, yard, load, owner):
        StudioSettings.objects.filter(studio=yard.studio).update(fee_measured="fired")

        line = owner[1].get(f"{S}loads/{load.pk}/fees/").json()["shares"][0]["lines"][0]

        # 169.7 mm less 11.6 %; arithmetic.
        assert line["box"]["x_mm"] == 150.0

    def test_counts_a_second_glaze_firing_as_such_at_the_price_of_glaze(
        self, yard, tariff, maker, owner
    ):
        again = tile(yard, maker[0], GLAZE_FIRED, mark="T8")
        fresh = tile(yard, maker[0], GLAZED, mark="T9")
        load = yards.load(yard, "glaze")
        put(load, maker[0], again, fresh)

        shown = owner[1].get(f"{S}loads/{load.pk}/fees/").json()

        which = {line["mark"]: line["which"] for line in shown["shares"][0]["lines"]}
        assert which == {"T8": "second glaze firing", "T9": "first glaze firing"}
        assert shown["per_litre_minor"] == 260

    def test_says_that_a_load_called_off_costs_nothing(self, load, technician, owner):
        tell(load, technician[0], "called_off", reason="vent dead")

        shown = owner[1].get(f"{S}loads/{load.pk}/fees/").json()

        assert (shown["stage"], shown["shares"], shown["total_minor"]) == ("nothing", [], 0)

    def test_charges_nothing_for_what_did_not_fire(self, yard, tariff, technician, maker, owner):
        load = yards.load(yard)
        rows = put(load, maker[0], tile(yard, maker[0]), tile(yard, maker[0]))
        for kind, hours, more in (
            ("settled", 12, {}),
            ("loading", 11, {}),
            ("started", 10, {}),
            ("ended", 2, {}),
            ("opened", 1, {"celsius": 40.0}),
        ):
            tell(load, technician[0], kind, NOW - hours * HOUR, **more)
        results = [(rows[0].pk, "fired"), (rows[1].pk, "damp")]
        tell(load, technician[0], "unloaded", NOW, outcome="fired", results=results)

        shown = owner[1].get(f"{S}loads/{load.pk}/fees/").json()

        assert shown["stage"] == "due"
        assert [line["is_charged"] for line in shown["shares"][0]["lines"]] == [True, False]
        assert shown["shares"][0]["litres"] == TILE_L


class TestRecording:
    def test_keeps_both_measures_where_they_do_not_agree(self, load, owner, maker, sent):
        said = {"member_id": str(maker[0].pk), "litres": 0.5, "why": "two stood in one another"}

        answer = sent(owner[1], f"{S}loads/{load.pk}/fees/", {"litres": [said], "words": "agreed"})

        assert answer.status_code == 201, answer.content
        kept = answer.json()["fees"]["recorded"]
        mauds = kept["shares"][0]
        assert (kept["basis"], kept["words"]) == ("tariff", "agreed")
        assert (mauds["litres"], mauds["said_l"], mauds["minor"]) == (0.58, 0.5, 90)
        assert mauds["why"] == "two stood in one another"

    def test_keeps_what_was_recorded_before(self, load, owner, sent):
        sent(owner[1], f"{S}loads/{load.pk}/fees/", {})
        sent(owner[1], f"{S}loads/{load.pk}/fees/", {"cost_minor": 1000})

        shown = owner[1].get(f"{S}loads/{load.pk}/fees/").json()
        assert (shown["recorded"]["basis"], shown["recorded"]["cost_minor"]) == ("cost", 1000)
        assert [share["minor"] for share in shown["recorded"]["shares"]] == [667, 333]
        assert LoadFees.objects.count() == 2

    def test_shows_a_maker_their_own_part_of_it(self, load, owner, maker, sent):
        sent(owner[1], f"{S}loads/{load.pk}/fees/", {"cost_minor": 1000})

        kept = maker[1].get(f"{S}loads/{load.pk}/fees/").json()["recorded"]

        assert [share["minor"] for share in kept["shares"]] == [667]
        assert kept["cost_minor"] is None

    def test_is_an_owners_word(self, load, maker, technician, sent):
        for client in (maker[1], technician[1]):
            answer = sent(client, f"{S}loads/{load.pk}/fees/", {})

            assert (answer.status_code, answer.json()["needed"]) == (403, "set_fees")

    @pytest.mark.parametrize(
        ("body", "status", "code"),
        [
            ({"cost_minor": -1}, 400, "invalid-request"),
            ({"cost_minor": "12 pounds"}, 400, "invalid-request"),
            ({"litres": [{"member_id": "me", "litres": 1}]}, 400, "invalid-request"),
        ],
    )
    def test_refuses_what_is_no_sum(self, load, owner, sent, body, status, code):
        answer = sent(owner[1], f"{S}loads/{load.pk}/fees/", body)

        assert (answer.status_code, answer.json()["type"]) == (status, f"/problems/{code}")
        assert LoadFees.objects.count() == 0

    def test_refuses_litres_of_somebody_with_nothing_in_it(self, load, owner, technician, sent):
        said = {"member_id": str(technician[0].pk), "litres": 4.0}

        answer = sent(owner[1], f"{S}loads/{load.pk}/fees/", {"litres": [said]})

        assert answer.json()["type"] == "/problems/not-among-payers"
        assert answer.json()["errors"][0]["pointer"] == "#/litres/0/litres"

    def test_refuses_where_nothing_was_fired(self, load, owner, technician, sent):
        tell(load, technician[0], "called_off", reason="vent dead")

        answer = sent(owner[1], f"{S}loads/{load.pk}/fees/", {"cost_minor": 100})

        assert (answer.status_code, answer.json()["type"]) == (409, "/problems/nothing-to-pay")

    def test_asks_for_a_cost_where_there_is_no_tariff(self, yard, owner, sent):
        load = yards.load(yard)
        put(load, owner[0], tile(yard, owner[0]))

        answer = sent(owner[1], f"{S}loads/{load.pk}/fees/", {})

        assert answer.json()["type"] == "/problems/no-tariff"
