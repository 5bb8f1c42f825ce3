from datetime import timedelta

from django.db import connection
from django.test.utils import CaptureQueriesContext

from moulds.actions import castings, parts
from moulds.actions.castings import Block
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import pressed_tile

S = "/api/v1/studios/yard/"


class TestCrumbCheck:
    def asked(self, kit, maker):
        path = f"{S}mould-sets/{kit.tile_mould.casting.mould_set_id}/crumb-check/"
        return maker[1].get(path).json()

    def pressed(self, kit, maker, marks):
        return [
            pressed_tile(kit, maker[0], mark=mark, at=NOW - timedelta(hours=50 - place))
            for place, mark in enumerate(marks)
        ]

    def test_is_empty_before_the_first_press(self, kit, maker):
        assert self.asked(kit, maker) == {"generation": None, "rows": []}

    def test_names_the_pieces_of_the_last_six_presses(self, kit, maker):
        pieces = self.pressed(kit, maker, [f"T{number}" for number in range(1, 9)])

        told = self.asked(kit, maker)

        marks = [[piece["mark"] for piece in row["pieces"]] for row in told["rows"]]
        assert (told["generation"], marks) == (1, [[f"T{n}"] for n in (8, 7, 6, 5, 4, 3)])
        assert told["rows"][0]["pieces"][0]["id"] == str(pieces[-1].pk)
        assert told["rows"][0]["count"] == 1

    def test_goes_back_to_the_last_good_look_where_a_part_is_chipped(self, kit, maker):
        self.pressed(kit, maker, [f"T{number}" for number in range(1, 9)])
        part = kit.tile_mould.parts[0]

        parts.tell(act=factories.act(maker[0]), mould_part=part, kind="chipped", reason="corner")

        assert len(self.asked(kit, maker)["rows"]) == 8

    def test_tells_of_the_casting_before_till_the_new_one_is_pressed(self, kit, maker):
        self.pressed(kit, maker, ["T1"])
        old = kit.tile_mould.casting
        castings.pour(
            act=factories.act(maker[0]),
            mould_set=old.mould_set,
            master=old.master,
            blocks=[Block("face")],
        )

        assert self.asked(kit, maker)["generation"] == old.generation

    def test_asks_as_many_questions_for_one_press_as_for_many(self, kit, maker):
        asked = []
        for marks in (["T1"], ["T2", "T3", "T4"]):
            self.pressed(kit, maker, marks)
            with CaptureQueriesContext(connection) as queries:
                self.asked(kit, maker)
            asked.append(len(queries))

        assert asked[0] == asked[1]
