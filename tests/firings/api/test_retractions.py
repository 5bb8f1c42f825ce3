"""Taking back what was told of loads: everything is folded anew."""

from firings.models import Kiln, KilnReading, Placement
from pieces.domain.stages import GLAZED
from studio.models import JournalEntry
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, again, place_of, put, spot, tell, tile

S = "/api/v1/studios/yard/"


def take_back(sent, client, act_id):
    return sent(client, f"{S}retractions/", {"corrects": str(act_id)})


class TestLoadEvents:
    def test_take_their_ware_along(self, yard, maker, technician, sent):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW - 3 * HOUR)
        event = tell(load, technician[0], "loading", NOW - 2 * HOUR)
        assert spot(piece) == ("bisque", "in_bisque")

        answer = take_back(sent, technician[1], event.pk)

        assert answer.status_code == 201
        shown = answer.json()
        assert [row["state"] for row in shown["loads"]] == ["settled"]
        assert [row["state"] for row in shown["pieces"]] == ["bone_dry"]
        assert place_of(piece) == "Rack C"
        assert Placement.objects.get(piece=piece).came_from is None

    def test_bring_a_load_called_off_by_mistake_back(self, yard, maker, technician, sent):
        piece, load = tile(yard, maker[0], GLAZED), yards.load(yard, "glaze")
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW - 3 * HOUR)
        tell(load, technician[0], "loading", NOW - 2 * HOUR)
        event = tell(load, technician[0], "called_off", NOW - HOUR, reason="wrong load")
        assert spot(piece) == ("glaze", "glazed")

        take_back(sent, technician[1], event.pk)

        assert again(load).state == "loading"
        assert spot(piece) == ("glaze", "in_glaze")
        assert Placement.objects.get(piece=piece).is_live

    def test_leave_ware_that_went_into_another_load_there(self, yard, maker, technician, sent):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        event = tell(load, technician[0], "called_off", NOW - HOUR, reason="wrong load")
        other = yards.load(yard)
        put(other, maker[0], piece, at=NOW)

        answer = take_back(sent, technician[1], event.pk)

        assert answer.status_code == 201
        assert again(load).state == "open"
        live = Placement.objects.get(piece=piece, is_live=True)
        assert live.load == other

    def test_settle_two_stories_of_a_load(self, yard, technician, owner, sent):
        load = yards.load(yard)
        tell(load, technician[0], "settled", NOW - 4 * HOUR)
        heard = JournalEntry.objects.order_by("-seq").first().seq
        off = tell(load, technician[0], "called_off", NOW - 3 * HOUR, reason="vent")
        tell(load, owner[0], "loading", NOW - 2 * HOUR, act={"based_on": heard})
        assert again(load).is_in_doubt

        take_back(sent, technician[1], off.pk)

        assert (again(load).state, again(load).is_in_doubt) == ("loading", False)

    def test_are_taken_back_by_who_told_them_or_the_owner(
        self, yard, technician, maker, owner, sent
    ):
        load = yards.load(yard)
        event = tell(load, technician[0], "settled", NOW - HOUR)

        refused = take_back(sent, maker[1], event.pk)
        taken = take_back(sent, owner[1], event.pk)

        assert refused.json()["type"] == "/problems/somebody-elses-act"
        assert taken.status_code == 201
        assert again(load).state == "open"


class TestPlacements:
    def test_are_taken_off_an_open_load(self, yard, maker, sent):
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]), tile(yard, maker[0]))[0]

        answer = take_back(sent, maker[1], row.act_id)

        assert answer.json()["loads"][0]["pieces"] == 0
        assert Placement.objects.filter(is_live=True).count() == 0
        assert Placement.objects.count() == 2

    def test_stay_on_a_settled_one(self, yard, maker, technician, sent):
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]))[0]
        tell(load, technician[0], "settled", NOW - HOUR)

        answer = take_back(sent, maker[1], row.act_id)

        assert (answer.status_code, answer.json()["type"]) == (409, "/problems/load-settled")
        assert not JournalEntry.objects.filter(verb="took_back").exists()

    def test_added_while_the_kiln_was_loaded_come_out_again(self, yard, maker, technician, sent):
        load, late = yards.load(yard), tile(yard, maker[0])
        tell(load, technician[0], "settled", NOW - 3 * HOUR)
        tell(load, technician[0], "loading", NOW - 2 * HOUR)
        row = put(load, technician[0], late, at=NOW - HOUR, may_build=True)[0]
        assert spot(late) == ("bisque", "in_bisque")

        take_back(sent, technician[1], row.act_id)

        assert spot(late) == ("drying", "bone_dry")
        assert not Placement.objects.filter(is_live=True).exists()
        assert again(load).state == "loading"


class TestReadings:
    def test_are_left_out_of_every_sum(self, yard, technician, sent):
        load = yards.load(yard, starts_at=NOW - 9 * HOUR)
        tell(load, technician[0], "started", NOW - 9 * HOUR, is_catching_up=True)
        ids = []
        for hours, celsius in ((4, 700), (2, 900)):
            at = (NOW - hours * HOUR).isoformat()
            body = {"reading_c": celsius, "happened_at": at}
            ids.append(sent(technician[1], f"{S}loads/{load.pk}/readings/", body).json()["id"])
        assert again(load).hot_h == 2.0

        take_back(sent, technician[1], ids[1])

        assert again(load).hot_h == 0.0
        assert KilnReading.objects.count() == 2


class TestKilnEvents:
    def test_bring_the_kiln_back_into_use(self, yard, technician, sent):
        path = f"{S}kilns/{yard.ox.pk}/events/"
        act_id = sent(technician[1], path, {"kind": "out_of_use", "reason": "vent"}).json()["id"]

        take_back(sent, technician[1], act_id)

        assert not Kiln.objects.get(pk=yard.ox.pk).is_out_of_use


class TestWhatIsUndoneOtherwise:
    def test_is_opening_a_load_or_setting_up_a_kiln(self, yard, technician, sent):
        load = yards.load(yard)

        for act_id in (load.pk, yard.ox.pk):
            answer = take_back(sent, technician[1], act_id)

            assert (answer.status_code, answer.json()["type"]) == (
                422,
                "/problems/undone-otherwise",
            )

    def test_is_what_nobody_told(self, yard, technician, sent):
        answer = take_back(sent, technician[1], yard.rack.pk)

        assert answer.json()["type"] == "/problems/corrects-nothing"
