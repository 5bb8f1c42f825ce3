from io import BytesIO

import pytest
from pypdf import PdfReader

from pieces.actions import commissions
from studio.models import FrozenCopy, JournalEntry
from studio.queries.frozen import digest_of
from tests import factories
from tests.firings import yard as yards
from tests.firings.glazed import fire, send_report
from tests.pieces.orders import S, jars, piece, put

LID = {"lid_lead_mg": 0.06, "lid_cadmium_mg": 0.006}


@pytest.fixture
def order(maker, yard):
    """J01 with its lid, of one batch, out of one glaze load, checked."""
    order, _ = jars(maker[0], sets=1)
    yards.size(piece("J01").design, 125, 125, 137, inside_depth_mm=110, capacity_ml=600)
    yards.size(piece("L01").design, 118, 118, 45, contact="lid")
    batch = factories.glaze_batch(maker[0].studio, "GB-07", caution="Holds manganese.")
    fire(maker[0], ["J01", "L01"], batch, yards.load(yard, "glaze", number="F-205"))
    for mark in ("J01", "L01"):
        put(maker[0], mark, "finished", "checked")
    return order


@pytest.fixture
def reported(order, maker):
    """A report for that batch, firing and depth, its lid tested too."""
    batch = {"glaze_batch_id": str(_of("GlazeBatch")), "load_id": str(_of("Load"))}
    answer = send_report(maker[1], **batch, piece_id=str(piece("J01").pk), **LID)
    assert answer.status_code == 201
    return order


def _of(name):
    from firings.models import Load
    from studio.models import GlazeBatch

    return {"Load": Load, "GlazeBatch": GlazeBatch}[name].objects.get().pk


def at(order, rest=""):
    return f"{S}commissions/{order.pk}/papers/{rest}"


def sign(client, order, **more):
    return factories.sent(client, at(order), more)


def words(body):
    return "\n".join(page.extract_text() for page in PdfReader(BytesIO(body)).pages)


def one_line(body):
    return " ".join(words(body).split())


class TestDraft:
    def test_is_one_pdf_with_every_part_and_declares_nothing(self, reported, maker):
        answer = maker[1].get(at(reported))

        assert answer.status_code == 200
        assert answer["Content-Type"] == "application/pdf"
        told = one_line(answer.content)
        for text in ("History of C-", "J01", "L01", "GB-07", "F-205", "Care", "Holds manganese."):
            assert text in told
        assert "Not declared for food." in told
        assert "Declared for food" not in told
        assert "safe" not in told.lower()

    @pytest.mark.parametrize(
        "name",
        ["<img src=x onerror=alert(1)>", "Łucja Čapková-Öztürk", "Ivan Шевченко", "a & b </para>"],
    )
    def test_prints_a_name_as_it_is(self, order, maker, act, name):
        commissions.change(act=act(maker[0]), commission=order, changes={"client_name": name})

        assert name in one_line(maker[1].get(at(order)).content)

    def test_prints_names_of_all_letters_and_pictures(self, order, maker, act):
        name = "שרה \u202e🏺"
        commissions.change(act=act(maker[0]), commission=order, changes={"client_name": name})

        told = words(maker[1].get(at(order)).content)

        assert "[U+1F3FA]" in told
        # The reader turns right-to-left letters round again: the paper has them as the eye reads.
        assert "שרה" in told

    @pytest.mark.parametrize(
        ("people", "named"), [("initials", 1), ("first_name", 1), ("nobody", 0)]
    )
    def test_names_makers_as_agreed(self, order, maker, people, named):
        told = words(maker[1].get(f"{at(order)}?people={people}").content)

        member = maker[0]
        name = member.first_name if people == "first_name" else member.initials
        assert (f"\n{name}\n" in told) == bool(named)

    def test_is_not_for_helpers_others_or_strangers(self, order, helper, stranger, studio, join):
        _, other = join(studio, ["maker"], "Mo")

        assert helper[1].get(at(order)).status_code == 403
        assert other.get(at(order)).status_code == 403
        assert stranger[1].get(at(order).replace("yard", "quay")).status_code == 404


class TestFacts:
    def test_say_what_is_missing(self, order, maker):
        told = maker[1].get(at(order, "facts/")).json()

        assert told["state"] == "not_declared"
        assert told["missing"][0].startswith("J01: not tested: no report for GB-07")
        assert told["materials"] == [{"what": "Glaze GB-07, clear", "caution": "Holds manganese."}]
        assert told["may"] == {"sign": False, "print": True}

    def test_miss_nothing_once_there_is_a_report(self, reported, owner):
        told = owner[1].get(at(reported, "facts/")).json()

        assert told["missing"] == []
        assert [row["coverage"]["code"] for row in told["pieces"]] == ["within", "within"]
        assert told["may"]["sign"]
        assert told["kept"] == []

    def test_cost_the_same_however_many(self, reported, maker, django_assert_max_num_queries):
        with django_assert_max_num_queries(45):
            maker[1].get(at(reported, "facts/"))


class TestSigning:
    def test_is_the_owners(self, reported, maker, helper, technician):
        for member in (maker, helper, technician):
            answer = sign(member[1], reported)
            assert answer.status_code == 403
            assert answer.json()["needed"] == "sign_papers"
        assert FrozenCopy.objects.filter(kind="papers").count() == 0

    def test_keeps_the_papers_to_the_letter(self, reported, owner, maker):
        answer = sign(owner[1], reported, declares=True)

        assert answer.status_code == 201
        paper = answer.json()["paper"]
        kept = maker[1].get(at(reported, f"{paper['id']}/"))
        assert digest_of(kept.content) == paper["sha256"]
        entry = JournalEntry.objects.get(pk=answer.json()["id"])
        assert entry.facts["sha256"] == paper["sha256"]
        assert f"Declared for food on 31 Oct 2026 by {owner[0].full_name}" in one_line(kept.content)
        assert maker[1].get(at(reported, "facts/")).json()["state"] == "declared"

    def test_without_a_report_is_blocked_for_food_and_for_nothing_else(self, order, owner, maker):
        refused = sign(owner[1], order, declares=True)
        signed = sign(owner[1], order, declares=False)

        assert refused.status_code == 409
        assert refused.json()["type"] == "/problems/report-missing"
        assert refused.json()["missing"][0].startswith("J01: not tested")
        assert signed.status_code == 201
        kept = maker[1].get(at(order, f"{signed.json()['paper']['id']}/"))
        assert "Not declared for food." in one_line(kept.content)

    def test_of_ware_for_display_declares_nothing(self, owner, maker, yard):
        order, _ = jars(maker[0], sets=1, use="display")
        put(maker[0], "J01", "finished", "checked")

        assert sign(owner[1], order, declares=True).json()["type"] == "/problems/nothing-for-food"

    def test_leaves_what_is_told_later_beside_it(self, reported, owner, maker):
        paper = sign(owner[1], reported, declares=True).json()["paper"]
        kept = maker[1].get(at(reported, f"{paper['id']}/")).content
        factories.sent(maker[1], f"{S}commissions/{reported.pk}/deliveries/", {})

        draft = one_line(maker[1].get(at(reported)).content)

        assert "After delivery" in draft
        assert maker[1].get(at(reported, f"{paper['id']}/")).content == kept
        assert maker[1].get(at(reported, "facts/")).json()["told_since"] >= 1

    def test_stands_in_the_history_of_the_order(self, reported, owner, maker):
        sign(owner[1], reported, declares=True)

        told = maker[1].get(f"{S}commissions/{reported.pk}/history/").json()["results"]
        assert told[0]["words"] == "papers signed, declared for food"
