"""The journal over the wire."""

from datetime import timedelta
from uuid import uuid4

import pytest

from tests import factories

JOURNAL = "/api/v1/studios/yard/journal/"


class TestJournalList:
    def test_tells_the_story_of_a_thing_newest_first(self, maker, stranger):
        jar = uuid4()
        for hours in (3, 1, 2):
            at = factories.NOW - timedelta(hours=hours)
            factories.entry(maker[0], at, subjects=[("piece", jar)], note=f"{hours} h ago")
        factories.entry(maker[0])

        story = maker[1].get(JOURNAL, {"subject": str(jar)}).json()["results"]

        assert [entry["notes"][0]["text"] for entry in story] == ["1 h ago", "2 h ago", "3 h ago"]
        assert story[0]["subjects"] == [{"kind": "piece", "id": str(jar)}]
        assert story[0]["member"]["first_name"] == "Maud"
        assert stranger[1].get(JOURNAL, {"subject": str(jar)}).status_code == 404

    def test_marks_what_was_written_late(self, maker):
        jar = uuid4()
        spot, friday = factories.NOW, factories.NOW - timedelta(days=3)
        factories.entry(maker[0], spot, subjects=[("piece", jar)])
        factories.entry(maker[0], friday, subjects=[("piece", jar)], written_at=spot)

        story = maker[1].get(JOURNAL, {"subject": str(jar)}).json()["results"]

        assert [entry["is_late"] for entry in story] == [False, True]
        assert story[1]["happened_at"] < story[1]["written_at"]

    def test_names_the_act_that_took_one_back(self, maker):
        jar = uuid4()
        slip = factories.entry(maker[0], subjects=[("piece", jar)])
        undo = factories.entry(
            maker[0], verb="took_back", corrects=slip.pk, subjects=[("piece", jar)]
        )

        story = maker[1].get(JOURNAL, {"subject": str(jar)}).json()["results"]

        assert {entry["id"]: entry["corrected_by"] for entry in story} == {
            str(slip.pk): str(undo.pk),
            str(undo.pk): None,
        }

    def test_gives_what_was_heard_after_a_number_in_order(self, maker):
        for _ in range(3):
            factories.entry(maker[0])

        heard = maker[1].get(JOURNAL, {"after": 2}).json()["results"]

        assert [entry["seq"] for entry in heard] == [3, 4]

    @pytest.mark.parametrize(
        ("who", "sees"), [("owner", True), ("maker", False), ("helper", False)]
    )
    def test_tells_of_money_to_who_sees_all_prices(self, request, owner, who, sees):
        fees = {"glaze_fee_minor_per_l": 260, "glaze_gap_mm": 5}
        changed = owner[1].patch("/api/v1/studios/yard/settings/", fees, format="json")
        reader = request.getfixturevalue(who)[1]

        heard = reader.get(JOURNAL).json()["results"]

        facts = next(entry["facts"] for entry in heard if entry["id"] == changed.json()["id"])
        assert facts["glaze_gap_mm"] == 5
        assert ("glaze_fee_minor_per_l" in facts) is sees

    def test_refuses_what_is_no_number_and_no_id(self, maker):
        for query in ({"after": "x"}, {"after": "-1"}, {"subject": "T26"}):
            answer = maker[1].get(JOURNAL, query)

            assert answer.status_code == 400
            assert answer.json()["errors"][0]["pointer"] == f"#/{next(iter(query))}"

    def test_lists_with_a_fixed_number_of_queries(self, maker, django_assert_max_num_queries):
        for _ in range(12):
            factories.entry(maker[0], note="said")

        with django_assert_max_num_queries(7):
            maker[1].get(JOURNAL)
