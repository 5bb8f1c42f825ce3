"""Stories of any acts in any order: what holds of them all."""

from hypothesis import given
from hypothesis import strategies as st

from pieces.domain import stages
from pieces.domain.story import fold
from tests.pieces.domain.telling import BOAT, Book

SPOTS = st.sampled_from(stages.SPOTS)
HOURS = st.integers(min_value=0, max_value=40).map(lambda quarter: quarter / 4)
DEVICES = st.sampled_from(["one", "two"])
PLACES = st.sampled_from(["A1", "B1"])
PART_KINDS = st.sampled_from(
    ["pressed", "demoulded", "not_yet", "stuck", "joined", "cracked", "scrapped", "replaced"]
)
HANDLES = st.sampled_from(["body", "handle", "handle 2"])
TOLD = st.one_of(
    st.tuples(st.just("stage"), HOURS, SPOTS, st.sampled_from(["", "damp", "catching_up"])),
    st.tuples(st.just("part"), HOURS, HANDLES, PART_KINDS),
    st.tuples(st.just("cover"), HOURS, st.sampled_from(["open", "sealed"])),
    st.tuples(st.just("cover part"), HOURS, st.sampled_from(["open", "loose"]), HANDLES),
    st.tuples(st.just("move"), HOURS, PLACES),
    st.tuples(st.just("check"), HOURS, st.sampled_from(["soft", "bone_dry"])),
)


@st.composite
def books(draw) -> Book:
    book = Book(BOAT)
    for number, telling in enumerate(draw(st.lists(TOLD, min_size=1, max_size=12))):
        kind, hour, *rest = telling
        more = {"act": f"act {number}", "device": draw(DEVICES)}
        if kind == "stage":
            more["reason"] = rest.pop()
        if kind == "cover part":
            kind, more["part"] = "cover", rest.pop()
        getattr(book, kind)(hour, *rest, **more)
    for number in range(draw(st.integers(min_value=0, max_value=2))):
        clashes = book.told().clashes
        if clashes:
            clash = draw(st.sampled_from(clashes))
            choice = draw(st.sampled_from(CHOICES))
            book.answer(50 + number, clash.kind, clash.first, clash.second, choice)
    return book


CHOICES = ("first", "second", "both")


class TestFold:
    @given(books(), st.randoms(use_true_random=False))
    def test_does_not_depend_on_the_order_of_arrival(self, book, random):
        shuffled = list(book.facts)
        random.shuffle(shuffled)

        assert fold(shuffled, BOAT) == book.told()

    @given(books())
    def test_takes_a_repeated_fact_once(self, book):
        assert fold([*book.facts, *book.facts], BOAT) == book.told()

    @given(books())
    def test_always_finds_a_place_in_the_job(self, book):
        story = book.told()

        if story.now is not None:
            assert story.now.spot in stages.SPOTS
            assert story.visits[-1].spot == story.now.spot
            assert story.now.begun_at <= story.now.since_at <= story.now.touched_at

    @given(books())
    def test_keeps_the_piece_out_of_every_clash(self, book):
        story = book.told()
        acts = {fact.act for fact in book.facts}

        assert all({clash.first, clash.second} <= acts for clash in story.clashes)
        assert all(clash.first != clash.second for clash in story.clashes)
