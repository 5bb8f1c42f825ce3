from studio.models import JournalEntry
from tests.factories import sent

PATH = "/api/v1/studios/yard/away/"
WEEK = {"from_date": "2026-11-02", "until_date": "2026-11-08"}


class TestSay:
    def test_works(self, maker, helper):
        answer = sent(maker[1], PATH, {**WEEK, "buddy_id": str(helper[0].pk)})

        assert answer.status_code == 201
        (row,) = helper[1].get(PATH).json()["results"]
        assert row == answer.json()["away"]
        assert (row["member_id"], row["buddy_id"]) == (str(maker[0].pk), str(helper[0].pk))

    def test_is_said_for_others_by_owners_only(self, owner, maker, technician):
        body = {**WEEK, "member_id": str(maker[0].pk)}

        assert sent(technician[1], PATH, body).status_code == 403
        assert sent(owner[1], PATH, body).json()["away"]["member_id"] == str(maker[0].pk)

    def test_refuses_the_same_days_twice(self, maker, technician):
        first = sent(maker[1], PATH, WEEK).json()["id"]

        again = sent(maker[1], PATH, {"from_date": "2026-11-08", "until_date": "2026-11-09"})

        assert again.status_code == 409
        assert again.json()["away"] == first
        assert sent(technician[1], PATH, WEEK).status_code == 201

    def test_refuses_days_that_run_backwards(self, maker):
        answer = sent(maker[1], PATH, {"from_date": "2026-11-08", "until_date": "2026-11-02"})

        assert answer.json()["errors"][0]["pointer"] == "#/until_date"

    def test_refuses_to_mind_ones_own_things(self, maker):
        assert sent(maker[1], PATH, {**WEEK, "buddy_id": str(maker[0].pk)}).status_code == 422

    def test_knows_nobody_of_another_studio(self, maker, stranger):
        answer = sent(maker[1], PATH, {**WEEK, "buddy_id": str(stranger[0].pk)})

        assert answer.json()["errors"][0]["pointer"] == "#/buddy_id"


class TestList:
    def test_takes_as_many_queries_for_many(self, owner, maker, django_assert_max_num_queries):
        for day in range(10, 16):
            days = {"from_date": f"2026-12-{day}", "until_date": f"2026-12-{day}"}
            sent(maker[1], PATH, {**days, "buddy_id": str(owner[0].pk)})

        with django_assert_max_num_queries(4):
            rows = owner[1].get(PATH).json()["results"]

        assert [row["from_date"] for row in rows] == [f"2026-12-{day}" for day in range(15, 9, -1)]


class TestCallOff:
    def test_works(self, maker):
        away = sent(maker[1], PATH, WEEK).json()["id"]

        assert [maker[1].delete(f"{PATH}{away}/").status_code for _ in range(2)] == [204, 204]

        assert maker[1].get(PATH).json()["results"] == []
        assert JournalEntry.objects.filter(verb="stays_here").count() == 1
        assert sent(maker[1], PATH, WEEK).status_code == 201

    def test_is_not_for_others(self, maker, technician):
        away = sent(maker[1], PATH, WEEK).json()["id"]

        assert technician[1].delete(f"{PATH}{away}/").status_code == 403
