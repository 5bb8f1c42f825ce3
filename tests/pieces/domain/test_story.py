from uuid import UUID

import pytest

from pieces.domain import stages
from pieces.domain.stages import Spot
from pieces.domain.story import Recipe, Story, Wanted
from tests.pieces.domain.telling import (
    BOAT,
    TILE,
    Book,
    at,
    bone_dry_tile,
    joined_boat,
    named,
    pressed_tile,
)


def spot(story: Story) -> Spot:
    assert story.now is not None
    return story.now.spot


def pairs(story: Story) -> list[tuple[str, UUID, UUID]]:
    return [(clash.kind, clash.first, clash.second) for clash in story.clashes]


class TestParts:
    def test_a_body_in_its_mould_without_a_handle_is_in_mould(self):
        assert spot(Book(BOAT).part(0, "body", "pressed").told()) == stages.IN_MOULD

    def test_the_least_advanced_part_leads_until_all_are_joined(self):
        book = Book(BOAT).part(0, "body", "pressed").part(1, "handle", "pressed")
        assert spot(book.part(16, "body", "demoulded").told()) == stages.IN_MOULD
        assert spot(book.part(17, "handle", "demoulded").told()) == stages.OUT
        story = book.part(18, "handle", "joined").told()
        assert spot(story) == stages.JOINED
        assert {part.state for part in story.parts.values()} == {"joined", "to_press"}

    def test_a_single_part_goes_from_its_mould_to_dry(self):
        story = pressed_tile().part(16, "tile", "demoulded").told()

        assert spot(story) == stages.DRYING
        assert story.now.since_at == at(16)

    def test_not_yet_says_when_to_look_again(self):
        story = pressed_tile().part(20, "tile", "not_yet").told()

        assert at(20.5) <= story.now.look_again_at <= at(21)
        assert spot(story) == stages.IN_MOULD

    def test_not_yet_after_demoulded_was_also_said(self):
        book = pressed_tile().part(21.0, "tile", "demoulded").part(21.1, "tile", "not_yet")
        story = book.told()

        assert story.now.since_at == at(21)
        assert [said.act for said in story.also_said] == [named("not_yet tile")]
        assert story.now.look_again_at is None

    def test_the_earliest_of_two_demouldings_stands(self):
        book = pressed_tile().part(18, "tile", "demoulded", "late")
        story = book.part(16, "tile", "demoulded", "early").told()

        assert story.now.since_at == at(16)
        assert [said.act for said in story.also_said] == [named("late")]

    def test_a_part_scrapped_and_joined_by_two_people_is_a_clash(self):
        book = joined_boat().part(18.5, "handle", "scrapped")
        story = book.told()

        expected = ("two_stages", named("joined handle"), named("scrapped handle"))
        assert pairs(story) == [expected]
        assert spot(story) == stages.OUT

    def test_tapping_the_part_the_others_were_joined_to_is_no_second_story(self):
        story = joined_boat().part(18.1, "body", "joined").told()

        assert spot(story) == stages.JOINED
        assert story.now.since_at == at(18)
        assert not story.also_said

    def test_a_crack_is_damage_until_the_part_is_replaced(self):
        book = joined_boat().part(28, "handle", "cracked")
        assert book.told().now.is_damaged
        assert not book.part(29, "handle", "replaced").told().now.is_damaged


class TestReplacing:
    def test_sends_the_piece_back_until_the_new_part_is_joined(self):
        book = joined_boat().cover(19, "loose").part(28, "handle", "replaced")
        assert spot(book.told()) == stages.OUT

        book.part(29, "handle 2", "pressed").part(45, "handle 2", "demoulded")
        assert spot(book.told()) == stages.OUT

        story = book.part(48.25, "handle 2", "joined").told()
        assert spot(story) == stages.JOINED
        assert story.now.last_join_at == at(48.25)
        assert story.parts[named("body")].out_at == at(16)
        assert story.parts[named("handle")].state == "replaced"

    def test_clashes_once_the_piece_is_fired(self):
        book = joined_boat().cover(19, "loose").stage(200, stages.BONE_DRY)
        book.stage(210, stages.IN_BISQUE).stage(240, stages.BISQUED)

        story = book.part(250, "handle", "replaced").told()

        assert pairs(story) == [("two_stages", named("bisqued"), named("replaced handle"))]


class TestStages:
    def test_the_first_cover_after_joining_sets_the_piece_to_dry(self):
        story = joined_boat().cover(17.5, "sealed", "early").cover(19, "loose").told()

        assert spot(story) == stages.DRYING
        assert (story.now.cover, story.now.since_at) == ("loose", at(19))

    def test_a_hand_that_feels_bone_dry_says_so(self):
        story = pressed_tile().part(16, "tile", "demoulded").check(200, "bone_dry").told()

        assert spot(story) == stages.BONE_DRY

    def test_one_reachable_from_the_other_is_a_sequence(self):
        story = bone_dry_tile().stage(207, stages.IN_BISQUE, device="other").told()

        assert spot(story) == stages.IN_BISQUE
        assert not story.clashes

    def test_two_visits_to_the_glaze_kiln_are_two(self):
        book = bone_dry_tile().stage(210, stages.IN_BISQUE).stage(240, stages.BISQUED)
        book.stage(250, stages.GLAZED).stage(260, stages.IN_GLAZE, occasion_id=named("F-205"))
        book.stage(290, stages.GLAZE_FIRED, occasion_id=named("F-205"))
        book.stage(300, stages.GLAZED, "again", reason="ground, glazed thick")
        book.stage(310, stages.IN_GLAZE, "kiln again", occasion_id=named("F-212"))
        story = book.stage(340, stages.GLAZE_FIRED, "again out", occasion_id=named("F-212")).told()

        fired = [visit for visit in story.visits if visit.spot == stages.GLAZE_FIRED]
        assert [visit.occasion_id for visit in fired] == [named("F-205"), named("F-212")]
        assert sum(visit.spot == stages.BISQUED for visit in story.visits) == 1

    def test_going_back_wants_a_reason(self):
        with_reason = bone_dry_tile().stage(210, stages.DRYING, reason="damp inside")
        without = bone_dry_tile().stage(210, stages.DRYING)

        assert spot(with_reason.told()) == stages.DRYING
        assert [clash.kind for clash in without.told().clashes] == ["two_stages"]

    def test_catching_up_lets_a_skip_stand(self):
        story = bone_dry_tile().stage(250, stages.BISQUED, reason="catching_up").told()

        assert spot(story) == stages.BISQUED

    def test_a_missing_piece_is_found_where_it_was(self):
        book = pressed_tile().stage(3, stages.MISSING)
        assert spot(book.told()) == stages.MISSING

        story = book.stage(5, stages.IN_MOULD, "found").part(16, "tile", "demoulded").told()
        assert spot(story) == stages.DRYING

    def test_work_without_a_mould_begins_at_assembly(self):
        thrown = Recipe((Wanted("bowl", is_moulded=False),))

        story = Book(thrown).stage(0, stages.OUT).cover(2, "loose").told()

        assert spot(story) == stages.DRYING

    def test_only_waiting_moves_on_by_itself(self):
        book = Book(TILE).stage(0, stages.WANTS_MOULD).stage(5, stages.TO_PRESS)
        assert spot(book.told()) == stages.TO_PRESS
        book.part(3, "tile", "pressed")
        assert spot(book.told()) == stages.IN_MOULD


class TestClashes:
    def test_lost_before_a_later_act(self):
        book = bone_dry_tile().stage(205, stages.SCRAPPED)
        story = book.stage(207, stages.IN_BISQUE, device="shed").told()

        assert pairs(story) == [("ended_or_moved", named("scrapped"), named("in_bisque"))]
        assert spot(story) == stages.BONE_DRY

    def test_what_follows_waits(self):
        book = bone_dry_tile().stage(205, stages.SCRAPPED).stage(207, stages.IN_BISQUE)
        story = book.stage(240, stages.BISQUED).told()

        assert story.held == (named("bisqued"),)

    @pytest.mark.parametrize(
        ("choice", "expected"),
        [
            ("first", stages.SCRAPPED),
            ("second", stages.IN_BISQUE),
            ("both", stages.SCRAPPED),
        ],
    )
    def test_an_answer_settles_it(self, choice, expected):
        book = bone_dry_tile().stage(205, stages.SCRAPPED).stage(207, stages.IN_BISQUE)

        story = book.answer(220, "ended_or_moved", "scrapped", "in_bisque", choice).told()

        assert spot(story) == expected
        assert not story.clashes

    def test_the_first_answer_stands(self):
        book = bone_dry_tile().stage(205, stages.SCRAPPED).stage(207, stages.IN_BISQUE)
        book.answer(221, "ended_or_moved", "scrapped", "in_bisque", "second")

        story = book.answer(220, "ended_or_moved", "scrapped", "in_bisque", "first").told()

        assert spot(story) == stages.SCRAPPED

    def test_an_act_to_which_both_stories_lead_settles_it(self):
        book = bone_dry_tile().stage(207, stages.BISQUED)
        assert book.told().clashes

        story = book.stage(250, stages.SCRAPPED).told()

        assert spot(story) == stages.SCRAPPED
        assert not story.clashes

    def test_weighings_and_checks_clash_with_nothing(self):
        book = bone_dry_tile().stage(205, stages.SCRAPPED)

        story = book.weigh(206, 410.0).check(206, "soft").told()

        assert not story.clashes
        assert spot(story) == stages.SCRAPPED

    def test_two_places_in_one_minute(self):
        book = bone_dry_tile().move(201, "A2")
        book.move(203, "B1", device="one").move(203, "C1", device="two")

        story = book.told()

        assert [clash.kind for clash in story.clashes] == ["two_places"]
        assert story.now.place == named("A2")

    def test_a_later_look_settles_where_it_is(self):
        book = bone_dry_tile().move(203, "B1", device="one").move(203, "C1", device="two")

        story = book.move(204, "D1").told()

        assert story.now.place == named("D1")
        assert not story.clashes

    def test_in_two_kilns(self):
        book = bone_dry_tile().stage(207, stages.IN_BISQUE, "one", occasion_id=named("F-1"))

        story = book.stage(208, stages.IN_BISQUE, "two", occasion_id=named("F-2")).told()

        assert pairs(story) == [("two_places", named("one"), named("two"))]

    def test_told_of_a_time_before_the_making(self):
        book = pressed_tile().part(-2, "tile", "demoulded")
        story = book.told()

        assert [clash.kind for clash in story.clashes] == ["before_it_began"]
        assert spot(story) == stages.IN_MOULD

        first, second = story.clashes[0].first, story.clashes[0].second
        assert (first, second) == (named("demoulded tile"), named("pressed tile"))
        settled = book.answer(9, "before_it_began", "demoulded tile", "pressed tile", "both")
        assert spot(settled.told()) == stages.DRYING


class TestCovers:
    def test_the_later_stands(self):
        story = joined_boat().cover(22, "sealed").cover(20, "loose").told()

        assert story.now.cover == "sealed"
        assert not story.clashes

    def test_of_a_part_stands_until_the_piece_is_covered_as_a_whole(self):
        book = joined_boat().cover(19, "open").cover(20, "loose", part="handle")

        handle, body = (book.told().parts[named(role)].cover for role in ("handle", "body"))

        assert (handle, body, book.told().now.cover) == ("loose", "", "open")
        whole = book.cover(22, "tucked").told()
        assert whole.parts[named("handle")].cover == ""
        earlier = book.cover(19.5, "sealed", part="body").told()
        assert earlier.parts[named("body")].cover == ""

    def test_of_a_part_sets_a_joined_piece_to_dry_and_leaves_its_own_cover_unsaid(self):
        story = joined_boat().cover(19, "loose", part="handle").told()

        assert spot(story) == stages.DRYING
        assert story.now.cover == ""


class TestTakingBack:
    def test_equals_never_having_happened(self):
        book = joined_boat().cover(19, "loose").stage(30, stages.BONE_DRY)

        assert book.without("bone_dry") == joined_boat().cover(19, "loose").told()

    def test_leaves_nothing_of_a_piece_whose_making_is_taken_back(self):
        assert pressed_tile().without("pressed tile").now is None
