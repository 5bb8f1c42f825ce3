from datetime import timedelta

import pytest

from moulds.actions import castings, masters, parts
from moulds.actions.castings import (
    Block,
    CastFromFired,
    GenerationTaken,
    MasterNotReady,
    MasterOfAnother,
    NoBlocks,
)
from moulds.models import Casting, Inspection
from tests import factories
from tests.moulds import yard

BLOCKS = [Block("face"), Block("back")]


@pytest.fixture
def master(tile_set):
    return factories.master(tile_set.makes.design, "MS-1")


def pour(member, tile_set, master, blocks=BLOCKS, **fields):
    act = factories.act(member)
    return castings.pour(act=act, mould_set=tile_set, master=master, blocks=blocks, **fields)


class TestPour:
    def test_counts_generations_by_master(self, maker, tile_set, master):
        other_set = factories.mould_set(tile_set.makes, "M02")

        first, second = pour(maker[0], tile_set, master), pour(maker[0], other_set, master)

        assert [first.casting.generation, second.casting.generation] == [1, 2]

    def test_starts_from_nought_and_says_that_it_may_stick(self, maker, tile_set, master):
        poured = pour(maker[0], tile_set, master)

        assert [part.presses for part in poured.casting.parts.all()] == [0, 0]
        assert [caution.code for caution in poured.cautions] == ["first-press-may-stick"]

    def test_takes_counts_over_on_somebodys_word(self, maker, owner, tile_set, master):
        blocks = [Block("face", 116, said_by=owner[0]), Block("back", 3)]

        poured = pour(maker[0], tile_set, master, blocks=blocks)

        said = list(poured.casting.parts.values_list("presses", "presses_before_by"))
        assert said == [(116, owner[0].pk), (3, maker[0].pk)]
        assert poured.cautions == ()

    def test_lays_the_one_before_aside(self, maker, tile_set, master):
        before = pour(maker[0], tile_set, master).casting

        poured = pour(maker[0], tile_set, master)

        assert poured.laid_aside == before
        assert list(Casting.objects.filter(is_in_use=True)) == [poured.casting]

    def test_lists_six_presses_of_the_one_laid_aside_and_all_since_it_was_good(
        self, maker, tile_set, master
    ):
        old = pour(maker[0], tile_set, master, poured_at=yard.EARLIER).casting
        face = old.parts.get(name="face")
        _, sound = (
            yard.pressed(maker[0], old, at=factories.NOW - timedelta(days=days), count=5).pressing
            for days in (10, 9)
        )
        looked = factories.act(maker[0], factories.NOW - timedelta(days=8))
        parts.inspect(act=looked, mould_part=face, finding=Inspection.Finding.CRISP)
        doubtful = [
            yard.pressed(maker[0], old, at=factories.NOW - timedelta(days=days)).pressing
            for days in (3, 2)
        ]
        parts.tell(act=factories.act(maker[0]), mould_part=face, kind="chipped")

        poured = pour(maker[0], tile_set, master)

        assert list(poured.to_check) == [*doubtful[::-1], sound]

    def test_refuses_a_generation_that_is_there(self, maker, tile_set, master):
        pour(maker[0], tile_set, master, generation=3)

        with pytest.raises(GenerationTaken):
            pour(maker[0], tile_set, master, generation=3)

    def test_refuses_a_master_of_something_else(self, maker, studio, tile_set):
        other = factories.master(factories.design(studio))

        with pytest.raises(MasterOfAnother):
            pour(maker[0], tile_set, other)

    def test_refuses_a_master_of_another_part(self, maker, tile_set):
        design = tile_set.makes.design
        handle = factories.master(design, part=factories.design_part(design, "handle"))

        with pytest.raises(MasterOfAnother):
            pour(maker[0], tile_set, handle)

    def test_refuses_a_lost_master_but_takes_what_was_poured_before(self, maker, tile_set):
        member = maker[0]
        design = tile_set.makes.design
        made = factories.act(member, factories.NOW - timedelta(days=30))
        master = masters.make(act=made, label="MS-2", design=design, is_ready=True)
        lost = factories.act(member, factories.NOW - timedelta(days=5))
        masters.say(act=lost, master=master, is_ready=False, reason="broke")

        with pytest.raises(MasterNotReady):
            pour(member, tile_set, master)
        earlier = pour(member, tile_set, master, poured_at=factories.NOW - timedelta(days=10))

        assert earlier.casting.generation == 1

    @pytest.mark.parametrize("blocks", [[], [Block("face"), Block("face")]])
    def test_refuses_parts_without_names_of_their_own(self, maker, tile_set, master, blocks):
        with pytest.raises(NoBlocks):
            pour(maker[0], tile_set, master, blocks=blocks)


class TestRefuseFired:
    def test_offers_the_enlargement(self, studio, tile_set):
        tile_set.makes.design.body = factories.clay_body(studio, total_shrinkage_fraction=0.116)

        with pytest.raises(CastFromFired, match=r"36\.2 mm model") as refused:
            castings.refuse_fired(tile_set, fired_mm=32.0)

        # Derived by hand: 32.0 x 0.884 and 32.0 / 0.884.
        assert refused.value.facts["would_become_mm"] == 28.3
        assert refused.value.facts["model_mm"] == 36.2

    def test_names_the_loss_where_no_length_is_given(self, studio, tile_set):
        tile_set.makes.design.body = factories.clay_body(studio, total_shrinkage_fraction=0.116)

        with pytest.raises(CastFromFired, match=r"11\.6 % smaller"):
            castings.refuse_fired(tile_set, fired_mm=None)

    def test_refuses_without_knowing_the_clay(self, tile_set):
        with pytest.raises(CastFromFired, match="shrinkage"):
            castings.refuse_fired(tile_set, fired_mm=32.0)
