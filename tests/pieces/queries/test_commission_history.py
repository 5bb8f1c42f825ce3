import csv
import io
from datetime import date, timedelta

from pieces.actions import assigning, clashes, commissions, handing_over, planning, stages
from pieces.actions.shapes import PieceGiven
from pieces.models import StageEvent
from studio.actions import journal
from studio.domain.ids import uuid7
from studio.domain.text import fused
from tests import factories
from tests.factories import NOW
from tests.pictures import sent_photo
from tests.pieces.kit import part_of, press, pressed_boat
from tests.pieces.orders import DAY, SECRET, S, form, jars, lose, piece, put, take

HOUR = timedelta(hours=1)


def told(client, order, **query):
    answer = client.get(f"{S}commissions/{order.pk}/history/", query)
    assert answer.status_code == 200
    return answer.json()["results"]


def words(rows):
    return [
        [*([row["words"]] if row["words"] else []), *(line["words"] for line in row["lines"])]
        for row in rows
    ]


class TestHistory:
    def test_merges_the_orders_acts_with_those_of_its_pieces_newest_first(self, maker):
        order, _ = jars(maker[0], sets=1)
        put(maker[0], "J01", "drying", "bone_dry", at=NOW - 20 * DAY)
        commissions.promise(
            act=factories.act(maker[0], NOW - 10 * DAY, note="frost in the shed"),
            commission=order,
            promised_date=date(2026, 12, 18),
        )
        lose(maker[0], "L01", at=NOW - 5 * DAY, cause="dropped")

        rows = told(maker[1], order)

        assert words(rows) == [
            ["scrapped: dropped"],
            ["promised for 18 Dec 2026 instead of 4 Dec 2026, 14 days later"],
            ["bone dry, told afterwards"],
            ["planned"],
            ["order C-1 taken, for food, promised for 4 Dec 2026"],
        ]
        assert [row["kind"] for row in rows] == ["loss", "promise", "making", "making", "promise"]
        assert rows[3]["lines"][0]["marks"] == ["J01", "L01"]
        assert rows[1]["note"] == "frost in the shed"
        assert rows[0]["member"]["first_name"] == "Maud"

    def test_can_be_read_by_what_one_looks_for(self, maker):
        order, _ = jars(maker[0], sets=1)
        occasion = {"occasion_id": uuid7(), "occasion_name": "F-207"}
        put(maker[0], "J01", "bisque", "in_bisque", at=NOW - 9 * DAY, **occasion)
        put(maker[0], "J01", "bisque", "bisqued", at=NOW - 8 * DAY, **occasion)
        put(maker[0], "J01", "finished", "packed", at=NOW - 3 * DAY)
        lose(maker[0], "L01", at=NOW - 5 * DAY, cause="dropped")
        handing_over.hand_over(act=factories.act(maker[0], NOW - DAY), commission=order)

        def verbs(name):
            return [row["verb"] for row in told(maker[1], order, filter=name)]

        assert verbs("losses") == ["scrapped"]
        assert words(told(maker[1], order, filter="firings"))[0] == [
            "bisqued, F-207, told afterwards"
        ]
        assert verbs("firings") == ["came_to", "came_to"]
        assert verbs("promises") == ["handed_over", "took_commission"]
        assert verbs("clients") == ["handed_over", "took_commission"]
        assert len(verbs("all")) == 7

    def test_tells_late_entries_with_both_times(self, maker):
        order = take(maker[0])
        late = factories.act(maker[0], NOW - 5 * DAY, written_at=NOW - 2 * DAY)
        commissions.promise(act=late, commission=order, promised_date=date(2026, 12, 18))

        row = told(maker[1], order)[0]

        assert row["is_late"]
        assert row["happened_at"] != row["written_at"]

    def test_strikes_through_what_was_taken_back(self, maker):
        order, _ = jars(maker[0], sets=1)
        body = {"stage": "lost", "state": "scrapped", "cause": "cracked"}
        lost = factories.sent(maker[1], f"{S}pieces/{piece('J01').pk}/stage-events/", body)
        back = {"corrects": lost.json()["id"]}
        assert factories.sent(maker[1], f"{S}retractions/", back).status_code == 201

        row = told(maker[1], order, filter="losses")[0]

        assert row["is_taken_back"]
        assert row["taken_back_by"]["first_name"] == "Maud"

    def test_tells_that_a_handle_was_swapped(self, kit, maker):
        order = take(maker[0])
        boat = pressed_boat(kit, maker[0], at=NOW - 9 * DAY)
        body = {"piece_ids": [str(boat.pk)], "line_id": str(order.lines.get().pk)}
        factories.sent(maker[1], f"{S}assignments/", body)
        act = factories.act(maker[0], NOW - DAY)
        given_ = PieceGiven(boat.pk, kit.boat)
        press(act, kit.handle_mould, "handle", given_, replaces=part_of(boat, "handle"))

        (row,) = told(maker[1], order, filter="losses")

        assert row["kind"] == "loss"
        assert (
            row["lines"][0]["words"] == "handle pressed in M04 g1, in the place of the one before"
        )

    def test_says_of_which_piece_a_firing_was_settled_not_to_be(self, maker):
        order, _ = jars(maker[0], sets=1)
        put(maker[0], "J01", "bisque", "in_bisque", at=NOW - DAY, occasion_name="F-207")
        told_by = StageEvent.objects.get(state="in_bisque").entry_id
        act = factories.act(maker[0], NOW)
        jar = piece("J01")
        facts = {"choice": "second", "loads": ["F-207", "F-208"]}
        entry = journal.write(
            act=act, verb="settled_load_clash", subjects=[("piece", jar.pk)], facts=facts
        )
        clashes.leave_out(
            act=act,
            entry=entry,
            piece=jar,
            kind="two_kilns",
            choice="second",
            stands=uuid7(),
            left_out=[told_by],
        )

        settled, fired = words(told(maker[1], order))[:2]

        assert settled == ["two stories settled: in F-208, not in F-207"]
        assert fired[0].endswith(", F-207, told afterwards, which was not so: two stories settled")

    def test_needs_the_same_queries_however_long(self, maker, django_assert_num_queries):
        order, _ = jars(maker[0], sets=1)
        told(maker[1], order)
        for number in range(8):
            put(maker[0], "J01", "drying", "drying", at=NOW - DAY + number * HOUR)

        with django_assert_num_queries(19):
            assert len(told(maker[1], order)) == 10

    def test_goes_on_page_by_page(self, maker):
        order, _ = jars(maker[0], sets=1)
        for number in range(104):
            put(
                maker[0],
                "J01",
                "drying",
                "drying",
                at=NOW - 2 * DAY + number * timedelta(minutes=5),
            )

        first = maker[1].get(f"{S}commissions/{order.pk}/history/").json()
        second = maker[1].get(first["next"]).json()

        assert (len(first["results"]), len(second["results"])) == (100, 6)
        assert second["next"] is None

    def test_tells_nothing_of_contacts_or_names(self, maker, helper):
        order = take(maker[0])
        change = {"client_name": "Somebody Else"}
        maker[1].patch(f"{S}commissions/{order.pk}/", change, format="json")

        answer = helper[1].get(f"{S}commissions/{order.pk}/history/").content.decode()

        assert "the client's name" in answer.replace("\\u0027", "'")
        assert "Somebody" not in answer
        assert SECRET not in answer


class TestOtherOrders:
    def test_a_piece_brings_its_past_along_and_no_client(self, maker):
        first, _ = jars(maker[0], sets=1, client="Larkspur Inn")
        dry = stages.Visit("drying", "bone_dry", reason="catching_up")
        note = factories.act(maker[0], NOW - 20 * DAY, note="Larkspur want it tall")
        stages.advance(act=note, piece=piece("J01"), visit=dry)
        second = take(maker[0], client="Coldwater Lane Chapel")
        line = second.lines.get()
        act = factories.act(maker[0], NOW - 3 * DAY, note="Larkspur Inn has enough")
        assigning.assign(act=act, pieces=[piece("J01")], line=line)
        put(maker[0], "J01", "bisque", "bisqued", at=NOW - DAY)

        came, left = told(maker[1], second), told(maker[1], first)

        assert words(came) == [
            ["bisqued, told afterwards"],
            ["came from another order"],
            ["bone dry, told afterwards"],
            ["planned"],
            ["order C-2 taken, for food, promised for 4 Dec 2026"],
        ]
        assert [row["came_from_other_order"] for row in came] == [False, False, True, True, False]
        assert [row["has_hidden_note"] for row in came] == [False, True, True, False, False]
        assert "Larkspur" not in str(came)
        assert came[3]["lines"][0]["marks"] == ["J01"]
        assert words(left)[0] == ["left for another order"]
        assert ["bisqued, told afterwards"] not in words(left)
        assert "Coldwater" not in str(left)

    def test_an_act_about_several_orders_tells_each_its_own(self, maker):
        order, _ = jars(maker[0], sets=1)
        tray = form(maker[0].studio, "tray", "Y")
        other = take(maker[0], client="Larkspur Inn")
        given = PieceGiven(uuid7(), tray, line=other.lines.get())
        planning.plan(act=factories.act(maker[0], NOW - 9 * DAY), pieces=[given])
        both = [piece("J01"), piece("Y01")]
        act = factories.act(maker[0], NOW - DAY, note="the Inn's tray too")
        stages.lose(act=act, pieces=both, cause="fell")

        row = told(maker[1], order)[0]

        assert row["lines"] == [
            {
                "words": "scrapped: fell",
                "marks": ["J01"],
                "piece_ids": [str(piece("J01").pk)],
            }
        ]
        assert (row["note"], row["has_hidden_note"]) == (None, True)


class TestPhotos:
    def photographed(self, client, *marks):
        photo = sent_photo(client).json()["id"]
        for mark in marks:
            path = f"{S}pieces/{piece(mark).pk}/photos/"
            assert factories.sent(client, path, {"photo_ids": [photo]}).status_code == 201
        return photo

    def test_are_told_with_the_act_and_found_by_themselves(self, maker):
        order, _ = jars(maker[0], sets=1)
        photo = self.photographed(maker[1], "J01")
        lose(maker[0], "L01", at=NOW - 5 * DAY, cause="dropped")

        everything, photos = told(maker[1], order), told(maker[1], order, filter="photos")

        assert [row["photo_ids"] for row in everything[:2]] == [[photo], []]
        assert words(photos) == [["photographed"]]
        assert photos[0]["lines"][0]["marks"] == ["J01"]

    def test_of_several_orders_are_kept_back(self, maker):
        order, _ = jars(maker[0], sets=1)
        tray = form(maker[0].studio, "tray", "Y")
        other = take(maker[0], client="Larkspur Inn")
        given = PieceGiven(uuid7(), tray, line=other.lines.get())
        planning.plan(act=factories.act(maker[0], NOW - 9 * DAY), pieces=[given])
        photo = sent_photo(maker[1]).json()["id"]
        both = {"kind": "lose", "ids": [str(piece(mark).pk) for mark in ("J01", "Y01")]}
        fell = {**both, "state": "scrapped", "cause": "fell", "photo_ids": [photo]}
        assert factories.sent(maker[1], f"{S}bulk/", fell).status_code == 201

        row = told(maker[1], order)[0]

        assert words([row]) == [["scrapped: fell"]]
        assert (row["photo_ids"], row["has_hidden_photos"]) == ([], True)

    def test_stand_in_the_table(self, maker):
        order, _ = jars(maker[0], sets=1)
        photo = self.photographed(maker[1], "J01")

        answer = maker[1].get(f"{S}commissions/{order.pk}/history.csv")

        rows = list(csv.DictReader(io.StringIO(answer.content.decode(), newline="")))
        assert rows[0]["photo_ids"] == photo


class TestTable:
    def test_defuses_what_a_table_program_takes_for_a_sum(self, maker):
        order = take(maker[0])
        sums = ['=HYPERLINK("http://x","tile")', "+44 blue", "\ttab"]
        for number, note in enumerate(sums):
            act = factories.act(maker[0], NOW - (9 - number) * DAY, note=note)
            commissions.promise(act=act, commission=order, promised_date=date(2026, 12, 18))

        answer = maker[1].get(f"{S}commissions/{order.pk}/history.csv")

        assert answer["Content-Type"] == "text/csv; charset=utf-8"
        rows = list(csv.DictReader(io.StringIO(answer.content.decode(), newline="")))
        cells = [row["note"] for row in rows if row["note"]]
        assert all(cell.startswith("'") for cell in cells)
        assert [fused(cell) for cell in cells] == sums[::-1]
        assert rows[-1]["what_happened"].startswith("order C-1 taken")

    def test_is_not_for_strangers(self, maker, stranger):
        order = take(maker[0])

        assert stranger[1].get(f"{S}commissions/{order.pk}/history.csv").status_code == 404
