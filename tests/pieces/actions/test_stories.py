from datetime import timedelta

import pytest

from pieces.actions import covers, moves, parts, stages, weighings
from pieces.actions.order import BeforeItBegan, StageOutOfOrder
from pieces.actions.shapes import Visit
from pieces.models import Clash, StageEvent
from studio.queries.journal import highest_seq
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import again, given, part_of, press, pressed_boat, pressed_tile, spot

HOUR = timedelta(hours=1)
BONE_DRY = Visit("drying", "bone_dry")
IN_BISQUE = Visit("bisque", "in_bisque")


def bone_dry(kit, maker, act):
    piece = pressed_tile(kit, maker, at=NOW - 200 * HOUR)
    part = part_of(piece, "tile")
    parts.record_event(act=act(maker, NOW - 180 * HOUR), part=part, kind="demoulded")
    stages.advance(act=act(maker, NOW - 10 * HOUR), piece=piece, visit=BONE_DRY)
    return piece


class TestAppend:
    def test_writes_columns_that_only_the_fold_writes(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)

        row = again(piece)

        assert (row.stage, row.state, row.since_at) == ("drying", "bone_dry", NOW - 10 * HOUR)
        assert part_of(piece, "tile").out_at == NOW - 180 * HOUR

    def test_refuses_what_the_sender_could_have_known(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)

        with pytest.raises(StageOutOfOrder) as refused:
            stages.advance(act=act(maker[0]), piece=piece, visit=Visit("glaze", "glazed"))

        assert refused.value.facts["state"] == "bone_dry"
        assert refused.value.facts["can_follow"] == [{"stage": "bisque", "state": "in_bisque"}]
        assert not Clash.objects.exists()

    def test_leaves_no_trace_of_what_it_refused(self, kit, maker, act, studio):
        piece = bone_dry(kit, maker[0], act)
        before = highest_seq(studio)

        with pytest.raises(StageOutOfOrder):
            stages.advance(act=act(maker[0]), piece=piece, visit=Visit("glaze", "glazed"))

        assert highest_seq(studio) == before

    def test_accepts_it_when_catching_up(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)
        visit = Visit("glaze", "glazed", reason="catching_up")

        stages.advance(act=act(maker[0]), piece=piece, visit=visit)

        assert spot(piece) == ("glaze", "glazed")

    def test_asks_when_others_acted_meanwhile(self, kit, maker, owner, act, studio):
        piece = bone_dry(kit, maker[0], act)
        seen = highest_seq(studio)
        stages.lose(act=act(owner[0], NOW - 2 * HOUR), pieces=[piece], cause="dropped")

        told = act(maker[0], NOW - HOUR, based_on=seen)
        stages.advance(act=told, piece=piece, visit=IN_BISQUE)

        row = again(piece)
        assert (row.state, row.has_clash) == ("bone_dry", True)
        clash = Clash.objects.get()
        assert (clash.kind, clash.state) == ("ended_or_moved", "open")
        assert clash.stands_meanwhile == {"stage": "drying", "state": "bone_dry"}

    def test_knows_its_own_acts_before_they_are_numbered(self, kit, maker, act, studio):
        piece = bone_dry(kit, maker[0], act)
        seen = highest_seq(studio)
        stages.lose(act=act(maker[0], NOW - 2 * HOUR, based_on=seen), pieces=[piece])

        told = act(maker[0], NOW - HOUR, based_on=seen)
        with pytest.raises(StageOutOfOrder):
            stages.advance(act=told, piece=piece, visit=IN_BISQUE)

    def test_refuses_a_time_before_the_piece(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        early = act(maker[0], NOW - 99 * HOUR)
        with pytest.raises(BeforeItBegan):
            parts.record_event(act=early, part=part_of(piece, "tile"), kind="demoulded")

    def test_costs_the_same_for_one_and_for_many(
        self, kit, maker, act, studio, django_assert_max_num_queries
    ):
        pieces = [pressed_tile(kit, maker[0]) for _ in range(8)]
        shelf = factories.place(studio)
        told = act(maker[0])

        with django_assert_max_num_queries(27):
            moves.move(act=told, pieces=pieces, place=shelf)


class TestLateNews:
    def test_changes_the_past_and_not_the_present(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)

        late = act(maker[0], NOW - 190 * HOUR, written_at=NOW)
        parts.record_event(act=late, part=part_of(piece, "tile"), kind="demoulded")

        assert spot(piece) == ("drying", "bone_dry")
        assert part_of(piece, "tile").out_at == NOW - 190 * HOUR


class TestLose:
    def test_sends_marbled_clay_to_the_mixed_reclaim(self, kit, maker, act, studio):
        block = factories.slab_block(studio)
        block.bodies.set([factories.clay_body(studio), factories.clay_body(studio)])
        piece = press(
            act(maker[0], NOW - HOUR),
            kit.tile_mould,
            "tile",
            given(kit.tile),
            slab_block=block,
        ).pieces[0]

        row = stages.lose(act=act(maker[0]), pieces=[piece])[0]

        assert row.reclaim == "mixed"

    def test_says_that_fired_clay_is_none(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)
        visit = Visit("bisque", "bisqued", reason="catching_up")
        stages.advance(act=act(maker[0], NOW - HOUR), piece=piece, visit=visit)

        with pytest.raises(stages.FiredClay):
            stages.lose(act=act(maker[0]), pieces=[again(piece)], reclaim="plain")

    def test_keeps_cause_and_guess(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)

        row = stages.lose(act=act(maker[0]), pieces=[piece], cause="dropped", cause_is_guess=True)[
            0
        ]

        kept = StageEvent.objects.get(pk=row.pk)
        assert (kept.cause, kept.cause_is_guess, kept.reclaim) == ("dropped", True, "plain")
        assert again(piece).place is None

    def test_finds_a_missing_piece_where_it_was(self, kit, maker, act):
        piece = bone_dry(kit, maker[0], act)
        stages.lose(act=act(maker[0], NOW - HOUR), pieces=[piece], state="missing")

        stages.find(act=act(maker[0]), piece=again(piece))

        assert spot(piece) == ("drying", "bone_dry")


class TestParts:
    def test_joining_the_handle_joins_the_body(self, kit, maker, act):
        boat = pressed_boat(kit, maker[0])
        for role in ("body", "handle"):
            told = act(maker[0], NOW - 5 * HOUR)
            parts.record_event(act=told, part=part_of(boat, role), kind="demoulded")
        assert spot(boat) == ("assembly", "out")

        told = act(maker[0], NOW - 4 * HOUR)
        parts.record_event(act=told, part=part_of(boat, "handle"), kind="joined")

        assert spot(boat) == ("assembly", "joined")
        assert part_of(boat, "body").state == "joined"
        covers.cover(act=act(maker[0], NOW - 3 * HOUR), pieces=[boat], state="loose")
        assert spot(boat) == ("drying", "drying")

    def test_not_yet_sets_when_to_look_again(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        parts.record_event(act=act(maker[0]), part=part_of(piece, "tile"), kind="not_yet")

        again_at = again(piece).look_again_at
        assert NOW + timedelta(minutes=30) <= again_at <= NOW + HOUR
        assert part_of(piece, "tile").look_again_at == again_at

    def test_refuses_to_replace_all_there_is(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        with pytest.raises(parts.OnlyPart):
            parts.record_event(act=act(maker[0]), part=part_of(piece, "tile"), kind="replaced")

    def test_damage_without_a_part_named_falls_to_the_first(self, kit, maker, act):
        boat = pressed_boat(kit, maker[0])

        parts.report_damage(act=act(maker[0]), pieces=[boat], how="in the kiln")

        assert again(boat).is_damaged


class TestWeigh:
    def test_refuses_what_no_clay_weighs(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        with pytest.raises(weighings.MassImpossible) as refused:
            weighings.weigh(act=act(maker[0]), piece=piece, mass_g=0.52)

        assert refused.value.facts["did_you_mean_g"] == 520.0

    def test_warns_when_a_piece_gained(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])
        weighings.weigh(act=act(maker[0], NOW - 2 * HOUR), piece=piece, mass_g=560)
        weighings.weigh(act=act(maker[0], NOW - HOUR), piece=piece, mass_g=520)

        _, warnings = weighings.weigh(act=act(maker[0]), piece=piece, mass_g=530)

        assert [warning.code for warning in warnings] == ["mass-rose"]
