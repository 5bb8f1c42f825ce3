"""Ware on loads over the wire."""

from firings.models import Placement
from pieces.domain.stages import DRYING
from studio.domain.ids import uuid7
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, put, tell, tile

S = "/api/v1/studios/yard/"


def ware(*pieces, **more):
    return {"pieces": [{"piece_id": str(piece.pk)} for piece in pieces], **more}


class TestPlacing:
    def test_lets_any_member_put_ware_on(self, yard, maker, helper, sent):
        load, mine = yards.load(yard), tile(yard, maker[0], mark="T1")

        answer = sent(helper[1], f"{S}loads/{load.pk}/placements/", ware(mine))

        assert answer.status_code == 201
        (row,) = answer.json()["load"]["placements"]
        assert (row["maker"]["first_name"], row["asked_by"]["first_name"]) == ("Maud", "Hal")
        assert row["mine"]
        assert row["size"]["measured"] == "dry"
        assert answer.json()["placement_ids"] == [row["id"]]

    def test_leaves_out_what_was_ticked_off(self, yard, maker, sent):
        load = yards.load(yard)
        wanted, ticked = tile(yard, maker[0]), tile(yard, maker[0])

        answer = sent(
            maker[1],
            f"{S}loads/{load.pk}/placements/",
            ware(wanted, ticked, except_ids=[str(ticked.pk)]),
        )

        assert answer.status_code == 201
        assert list(Placement.objects.values_list("piece", flat=True)) == [wanted.pk]

    def test_names_every_exception_and_puts_none(self, yard, maker, sent):
        load, good = yards.load(yard), tile(yard, maker[0])
        damp = tile(yard, maker[0], DRYING, mark="T9")
        following = yards.load(yard, starts_at=NOW + 9 * DAY)

        answer = sent(maker[1], f"{S}loads/{load.pk}/placements/", ware(good, damp))

        problem = answer.json()
        assert (answer.status_code, problem["type"]) == (409, "/problems/not-placed")
        (row,) = problem["refused"]
        assert (row["mark"], row["code"]) == ("T9", "damp-evidence-missing")
        assert problem["next_load"]["number"] == following.number
        assert problem["cautions"][0]["code"] == "damp-ware-bursts"
        assert Placement.objects.count() == 0

    def test_takes_a_technicians_reason_and_no_makers(self, yard, maker, technician, sent):
        load, damp = yards.load(yard), tile(yard, maker[0], DRYING)
        body = ware(damp, override_reason="warm hold of 12 h")

        refused = sent(maker[1], f"{S}loads/{load.pk}/placements/", body)
        taken = sent(technician[1], f"{S}loads/{load.pk}/placements/", body)

        assert refused.status_code == 409
        assert taken.status_code == 201
        assert taken.json()["warnings"][0]["code"] == "damp-ware-bursts"
        (row,) = maker[1].get(f"{S}loads/{load.pk}/").json()["load"]["placements"]
        assert row["override_reason"] == "warm hold of 12 h"

    def test_keeps_a_place_on_a_shelf_and_an_id_of_the_phones_own(self, yard, maker, sent):
        load, placement_id = yards.load(yard), str(uuid7())
        piece = tile(yard, maker[0])
        row = {"piece_id": str(piece.pk), "id": placement_id, "level": 2, "x_mm": "2 in"}

        answer = sent(maker[1], f"{S}loads/{load.pk}/placements/", {"pieces": [row]})
        again = sent(
            maker[1],
            f"{S}loads/{yards.load(yard).pk}/placements/",
            {"pieces": [{**row, "piece_id": str(tile(yard, maker[0]).pk)}]},
        )

        (shown,) = answer.json()["load"]["placements"]
        assert (shown["id"], shown["level"], shown["x_mm"]) == (placement_id, 2, 50.8)
        assert again.json()["type"] == "/problems/placement-id-taken"

    def test_takes_test_bars(self, yard, technician, sent):
        load = yards.load(yard, "test", cone="6")
        bars = {"what": "colour test bars", "count": 12, "width_mm": 120, "height_mm": 10}

        answer = sent(technician[1], f"{S}loads/{load.pk}/placements/", {"things": [bars]})

        shown = answer.json()["load"]
        assert (shown["pieces"], shown["things"]) == (0, 12)

    def test_takes_more_than_can_be_tried_and_says_so(self, yard, technician, sent):
        path = f"{S}loads/{yards.load(yard, 'test', cone='6').pk}/"
        bars = {"what": "bars", "count": 999, "width_mm": 5, "depth_mm": 5, "height_mm": 5}

        answer = sent(technician[1], f"{path}placements/", {"things": [bars]})
        fit = technician[1].get(f"{path}fit/").json()
        more = sent(technician[1], f"{path}placements/", {"things": [bars, bars]})

        assert answer.json()["warnings"][0]["code"] == "fit-doubtful"
        assert (fit["verdict"], fit["reasons"][0]["code"]) == ("doubtful", "too_many_to_try")
        assert (more.status_code, more.json()["errors"][0]["code"]) == (400, "too-many")

    def test_refuses_the_same_piece_twice_and_nothing_at_all(self, yard, maker, sent):
        path = f"{S}loads/{yards.load(yard).pk}/placements/"
        piece = tile(yard, maker[0])

        assert sent(maker[1], path, ware(piece, piece)).status_code == 400
        assert sent(maker[1], path, {}).status_code == 400
        ticked = sent(maker[1], path, ware(piece, except_ids=[str(piece.pk)]))
        assert ticked.json()["type"] == "/problems/none-left"

    def test_does_not_know_pieces_of_another_studio(self, yard, maker, other_studio, sent):
        foreign = factories.piece(factories.design(other_studio))

        answer = sent(maker[1], f"{S}loads/{yards.load(yard).pk}/placements/", ware(foreign))

        assert answer.status_code == 404

    def test_asks_as_many_questions_for_one_piece_as_for_many(
        self, yard, maker, sent, django_assert_max_num_queries
    ):
        load = yards.load(yard)
        pieces = [tile(yard, maker[0]) for _ in range(9)]

        with django_assert_max_num_queries(95):
            answer = sent(maker[1], f"{S}loads/{load.pk}/placements/", ware(*pieces))

        assert answer.status_code == 201


class TestSettledLoad:
    def test_names_when_by_whom_the_next_one_and_whom_to_ask(self, yard, maker, technician, sent):
        load, following = yards.load(yard), yards.load(yard, starts_at=NOW + 9 * DAY)
        tell(load, technician[0], "settled", NOW - HOUR)

        answer = sent(maker[1], f"{S}loads/{load.pk}/placements/", ware(tile(yard, maker[0])))

        problem = answer.json()
        assert (answer.status_code, problem["type"]) == (409, "/problems/load-settled")
        assert problem["settled_at"].startswith("2026-10-31T08:00:20")
        assert problem["settled_by"] == technician[0].full_name
        assert problem["next_load"]["id"] == str(following.pk)
        assert problem["ask"] == "technician"


class TestChanging:
    def test_shifts_own_ware_and_a_technician_any(self, yard, maker, technician, join):
        row = put(yards.load(yard), maker[0], tile(yard, maker[0]))[0]
        _, other = join(yard.studio, ["maker"], "Mo")
        path = f"{S}placements/{row.pk}/"

        assert maker[1].patch(path, {"level": 2}, format="json").status_code == 200
        assert technician[1].patch(path, {"level": 3}, format="json").status_code == 200
        refused = other.patch(path, {"level": 1}, format="json")
        assert (refused.status_code, refused.json()["needed"]) == (403, "build_loads")
        assert Placement.objects.get(pk=row.pk).level == 3


class TestRemoval:
    def test_takes_own_ware_off_and_keeps_the_row(self, yard, maker, join, sent):
        row = put(yards.load(yard), maker[0], tile(yard, maker[0]))[0]
        _, other = join(yard.studio, ["maker"], "Mo")
        path = f"{S}placements/{row.pk}/removals/"

        refused = sent(other, path)
        answer = sent(maker[1], path, {"reason": "cracked"})
        again = sent(maker[1], path)

        assert refused.status_code == 403
        assert answer.json()["load"]["placements"] == []
        assert again.json()["type"] == "/problems/taken-off"
        kept = Placement.objects.get(pk=row.pk)
        assert (kept.removed_because, kept.removed_at) == ("cracked", NOW)
