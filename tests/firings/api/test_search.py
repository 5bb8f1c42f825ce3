"""Search: whatever a studio keeps, by a few letters, over the wire."""

import pytest

from firings.queries import finding
from pieces.models import Commission, FoundPiece, Piece
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import kit as made_kit
from tests.pieces.kit import pressed_tile

S = "/api/v1/studios/yard/"


@pytest.fixture
def ask(maker):
    """Return a function that searches and returns what was found as (kind, name)."""

    def asked(q, client=maker[1]):
        answer = client.get(f"{S}search/", {"q": q})
        assert answer.status_code == 200, answer.content
        return [(row["kind"], row["name"]) for row in answer.json()["results"]]

    return asked


@pytest.fixture
def yard(studio, maker):
    its = made_kit(studio)
    pressed_tile(its, maker[0], mark="É01")
    Commission.objects.create(
        studio=studio,
        number="C-7",
        client_name="Café Wyvern",
        client_contact="wyvern@example.org",
        maker=maker[0],
        what="hearth tiles",
        taken_at=NOW,
    )
    factories.place(studio, "Rack Öst", kind="rack")
    factories.member(studio, ["maker"], "Zoë", full_name="Zoë Arkwright")
    factories.load(factories.kiln(studio, "K9"), "F-9")
    FoundPiece.objects.create(
        studio=studio,
        what="a crème beaker",
        found_at=NOW,
        found_by=maker[0],
        notice_date=NOW.date(),
    )
    return its


class TestSearch:
    @pytest.mark.parametrize(
        ("asked", "found"),
        [
            ("e01", ("piece", "É01")),
            ("E\u030101", ("piece", "É01")),
            ("e\u200b01", ("piece", "É01")),
            ("barley e01", ("piece", "É01")),
            ("cafe", ("order", "C-7")),
            ("CAFÉ", ("order", "C-7")),
            ("m01", ("mould", "M01")),
            ("rack ost", ("place", "Rack Öst")),
            ("zoe", ("person", "Zoë")),
            ("f-9", ("load", "F-9")),
            ("creme", ("found", "a crème beaker")),
        ],
    )
    def test_finds_each_kind_whatever_the_accents_and_hidden_characters(
        self, yard, ask, asked, found
    ):
        assert found in ask(asked)

    def test_puts_the_very_mark_before_those_it_begins(self, yard, maker, ask):
        for mark in ("T10", "T100", "T1"):
            pressed_tile(yard, maker[0], mark=mark)

        assert ask("t1")[:3] == [("piece", "T1"), ("piece", "T10"), ("piece", "T100")]

    def test_does_not_look_in_how_to_reach_a_client(self, yard, ask, owner):
        assert ask("wyvern@example.org", owner[1]) == []

    def test_tells_two_of_one_first_name_apart(self, yard, studio, maker):
        twins = [factories.member(studio, ["maker"], "Bram") for _ in range(2)]

        rows = maker[1].get(f"{S}search/", {"q": "bram"}).json()["results"]

        assert {row["name"] for row in rows} == {"Bram"}
        assert {row["words"].partition(" ")[0] for row in rows} == {t.initials for t in twins}

    def test_finds_pieces_by_whoever_made_them(self, yard, studio, maker, ask):
        pressed_tile(yard, factories.member(studio, ["maker"], "Noël"), mark="T44")

        assert ("piece", "T44") in ask("noel")

    def test_finds_nothing_of_another_studio(self, yard, ask, stranger):
        there = factories.place(stranger[0].studio, "Rack Öst")

        assert ask("ost") == [("place", "Rack Öst")]
        assert there.studio.slug == "quay"

    @pytest.mark.parametrize("asked", ["", " ", "\u200b", "%", "_", "nowhere to be found"])
    def test_finds_nothing_for_nothing(self, yard, ask, asked):
        assert ask(asked) == []

    def test_names_the_field_where_it_is_too_long_or_left_out(self, yard, maker):
        for query in ({}, {"q": "a" * 61}):
            answer = maker[1].get(f"{S}search/", query)

            assert answer.status_code == 400
            assert answer.json()["errors"][0]["pointer"] == "#/q"

    def test_is_bounded_and_says_so(self, studio, maker):
        design = factories.design(studio)
        for number in range(finding.MOST + 5):
            factories.piece(design, maker[0], mark=f"Q{number}")

        told = maker[1].get(f"{S}search/", {"q": "q"}).json()

        assert (len(told["results"]), told["is_cut"]) == (finding.MOST, True)

    def test_costs_the_same_however_much_there_is(
        self, yard, studio, maker, django_assert_max_num_queries
    ):
        def asked():
            with django_assert_max_num_queries(20) as counted:
                maker[1].get(f"{S}search/", {"q": "t"})
            return len(counted)

        before = asked()
        for number in range(20):
            factories.piece(yard.tile, maker[0], mark=f"T5{number:02}")
            factories.place(studio, f"Shelf T{number}")

        assert asked() == before


class TestPieceList:
    def test_is_asked_with_the_same_folding(self, yard, maker):
        found = maker[1].get(f"{S}pieces/", {"q": "e\u200b01"}).json()["results"]

        assert [row["mark"] for row in found] == ["É01"]


class TestPieceMark:
    def test_is_folded_when_it_is_planned(self, yard):
        assert Piece.objects.get(mark="É01").find_key == "e01"
