"""Counts of sets, against trying every way of putting small heaps together."""

from itertools import combinations, count
from uuid import UUID

from hypothesis import given, settings
from hypothesis import strategies as st

from pieces.domain.sets import Level, Member, counts, groups_of, level_of, sets_of

MADE, PLANNED, FINISHED, LOST = Level.MADE, Level.PLANNED, Level.FINISHED, Level.LOST
PAIR = {"jar": 1, "lid": 1}


def uid(number):
    return UUID(int=number)


def heap(**levels):
    """Return pieces named by their keyword: J1=MADE is a jar."""
    roles = {"J": "jar", "L": "lid", "B": "bracket", "X": None}
    return {
        name: Member(UUID(bytes=name.encode().ljust(16, b"0")), roles[name[0]], level)
        for name, level in levels.items()
    }


def ids(pieces, *pairs):
    return [(pieces[first].id, pieces[second].id) for first, second in pairs]


class TestPairs:
    def test_a_pair_half_dies_and_a_spare_lid_saves_it(self):
        # Case of the demo: L06 drops; L09 waits for J09, until it is matched to J06.
        def now(l09, j09, *pairs, l06=LOST):
            pieces = heap(J6=MADE, L6=l06, J9=j09, L9=l09)
            return counts(PAIR, pieces.values(), ids(pieces, *pairs))

        before = now(MADE, PLANNED, ("J9", "L9"), ("J6", "L6"), l06=MADE)
        dropped = now(MADE, PLANNED, ("J9", "L9"), ("J6", "L6"))
        saved = now(MADE, PLANNED, ("L9", "J6"), ("J9", "L9"), ("J6", "L6"))

        assert (before.made, before.planned) == (1, 1)
        assert (dropped.made, dropped.planned, dropped.lost_pieces) == (0, 1, 1)
        assert (saved.made, saved.planned) == (1, 0)

    def test_unmatched_pieces_stand_for_each_other(self):
        pieces = heap(J1=MADE, J2=MADE, J3=MADE, L1=MADE, L2=MADE)

        now = counts(PAIR, pieces.values(), [])

        assert (now.made, now.pieces) == (2, 5)

    def test_a_finished_jar_whose_lid_still_dries_makes_no_finished_set(self):
        pieces = heap(J1=FINISHED, L1=MADE, L2=FINISHED, J2=MADE)

        matched = counts(PAIR, pieces.values(), ids(pieces, ("J1", "L1"), ("J2", "L2")))
        free = counts(PAIR, pieces.values(), [])

        assert (matched.finished, matched.made) == (0, 2)
        assert (free.finished, free.made) == (1, 2)

    def test_a_piece_with_two_stories_leaves_its_set_in_doubt(self):
        doubt = level_of("drying", "drying", is_in_doubt=True)
        pieces = heap(J1=MADE, L1=doubt)

        now = counts(PAIR, pieces.values(), [])

        assert (now.made, now.in_doubt, now.planned) == (0, 1, 0)

    def test_three_brackets_are_one_pair(self):
        pieces = heap(B1=MADE, B2=FINISHED, B3=FINISHED, B4=LOST)

        now = counts({"bracket": 2}, pieces.values(), [])

        assert (now.made, now.finished, now.pieces, now.lost_pieces) == (1, 1, 3, 1)

    def test_what_is_in_no_role_is_counted_beside(self):
        pieces = heap(J1=MADE, L1=MADE, X1=MADE)

        assert counts(PAIR, pieces.values(), []).outside_pieces == 1

    def test_without_a_recipe_any_piece_is_a_set(self):
        pieces = heap(X1=MADE, X2=PLANNED, X3=LOST)

        now = counts({}, [Member(p.id, "", p.level) for p in pieces.values()], [])

        assert (now.made, now.planned, now.lost_pieces) == (1, 1, 1)

    def test_two_pairs_that_stand_together_make_one_set_of_four(self):
        pieces = heap(B1=MADE, B2=MADE, B3=MADE, B4=MADE)

        now = counts({"bracket": 4}, pieces.values(), ids(pieces, ("B1", "B2"), ("B3", "B4")))

        assert now.made == 1


def most_by_trying(recipe, members, groups):
    """Return the most sets, by trying every choice of groups for the next set."""
    role = {member.id: member.role for member in members}

    def holds(chosen):
        held = [role[pk] for group in chosen for pk in group]
        return all(held.count(name) == wanted for name, wanted in recipe.items()) and len(
            held
        ) == sum(recipe.values())

    def most(rest):
        best = 0
        for size in range(1, sum(recipe.values()) + 1):
            for chosen in combinations(rest, size):
                if holds(chosen):
                    left = [group for group in rest if group not in chosen]
                    best = max(best, 1 + most(left))
        return best

    return most(list(groups))


RECIPES = st.sampled_from(
    [PAIR, {"jar": 2}, {"jar": 2, "lid": 1}, {"jar": 1, "lid": 1, "tray": 1}, {"jar": 3}]
)


@st.composite
def heaps(draw):
    recipe = draw(RECIPES)
    number = count(1)
    members = [
        Member(uid(next(number)), draw(st.sampled_from(sorted(recipe))), Level.MADE)
        for _ in range(draw(st.integers(0, 7)))
    ]
    pairs = st.tuples(st.integers(1, 7), st.integers(1, 7)).filter(lambda pair: pair[0] != pair[1])
    matches = [(uid(a), uid(b)) for a, b in draw(st.lists(pairs, max_size=4))]
    return recipe, members, matches


class TestSetsOf:
    @given(heaps())
    @settings(max_examples=150, deadline=None)
    def test_makes_as_many_as_trying_every_way(self, heap):
        recipe, members, matches = heap
        groups = groups_of(recipe, members, matches)

        made = sets_of(recipe, members, groups)

        assert len(made) == most_by_trying(recipe, members, groups)

    @given(heaps())
    @settings(max_examples=150, deadline=None)
    def test_uses_each_piece_once_and_keeps_groups_whole(self, heap):
        recipe, members, matches = heap
        groups = groups_of(recipe, members, matches)

        made = sets_of(recipe, members, groups)

        used = [pk for one in made for pk in one]
        assert len(used) == len(set(used))
        assert sorted(pk for group in groups for pk in group) == sorted(m.id for m in members)
        for group in groups:
            assert sum(set(group) <= set(one) for one in made) == (group[0] in used)

    def test_counts_two_hundred_pairs_at_once(self):
        members = [Member(uid(n), ("jar", "lid")[n % 2], Level.MADE) for n in range(1, 401)]

        now = counts(PAIR, members, [(uid(n), uid(n + 1)) for n in range(1, 200, 2)])

        assert now.made == 200
