"""Readings over the wire: odd ones are kept, and asked about."""

from datetime import timedelta

import pytest
from rest_framework.test import APIClient

from studio.domain.ids import uuid7
from studio.models import ClimateReading, JournalEntry
from tests import factories
from tests.factories import sent

NOW = factories.NOW
S = "/api/v1/studios/yard/"


@pytest.fixture
def room(studio):
    return factories.place(studio, "Drying room")


@pytest.fixture
def path(room):
    return f"{S}places/{room.pk}/readings/"


def table(client, path, text, **headers):
    return client.post(path, text, content_type="text/csv", headers=headers)


class TestPost:
    def test_works(self, helper, path, stranger):
        answer = sent(helper[1], path, {"air_c": 13.4, "humidity_fraction": "71 %"})

        assert answer.status_code == 201
        assert answer.json()["reading"]["use"] == "used"
        assert answer.json()["reading"]["humidity_fraction"] == pytest.approx(0.71)
        assert answer.json()["warnings"] == []
        assert sent(stranger[1], path, {"air_c": 13.4}).status_code == 404

    def test_keeps_104_percent_and_leaves_it_out(self, maker, path):
        answer = sent(maker[1], path, {"air_c": 12.9, "humidity_fraction": 1.04})

        assert answer.status_code == 201
        assert answer.json()["reading"]["use"] == "left_out"
        assert answer.json()["warnings"][0]["code"] == "humidity-above-all"
        assert ClimateReading.objects.get().humidity_fraction == 1.04

    def test_asks_whether_61_degrees_were_fahrenheit(self, maker, path):
        answer = sent(maker[1], path, {"air_c": 61.2, "humidity_fraction": 0.65})

        warning = answer.json()["warnings"][0]
        assert warning["did_you_mean_c"] == pytest.approx(16.2)
        assert answer.json()["reading"]["use"] != "used"

    def test_asks_about_a_percentage_where_a_fraction_belongs(self, maker, path):
        answer = sent(maker[1], path, {"air_c": 14, "humidity_fraction": 71})

        assert answer.json()["reading"]["use"] == "asked"
        assert answer.json()["warnings"][0]["did_you_mean_fraction"] == pytest.approx(0.71)

    def test_reads_fahrenheit_that_says_so(self, maker, path):
        answer = sent(maker[1], path, {"air_c": "61.2 °F", "humidity_fraction": 0.65})

        assert answer.json()["reading"]["air_c"] == pytest.approx(16.22, abs=0.01)
        entry = JournalEntry.objects.get(verb="read_climate")
        assert entry.as_typed == {"/air_c": "61.2 °F"}

    @pytest.mark.parametrize(
        ("body", "pointer"),
        [
            ({"air_c": "12 mm"}, "#/air_c"),
            ({"air_c": "NaN"}, "#/air_c"),
            ({"air_c": 1e9}, "#/air_c"),
            ({"air_c": 14, "humidity_fraction": "damp"}, "#/humidity_fraction"),
            ({}, "#/air_c"),
            ({"readings": []}, "#/readings"),
            (
                {"readings": [{"taken_at": "2026-10-31T08:00:00Z", "air_c": 14}, {"air_c": 15}]},
                "#/readings/1/taken_at",
            ),
            (
                {"readings": [{"taken_at": "2027-10-31T08:00:00Z", "air_c": 14}]},
                "#/readings/0/taken_at",
            ),
        ],
    )
    def test_refuses_what_is_no_reading_and_names_it(self, maker, path, body, pointer):
        answer = sent(maker[1], path, body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer
        assert not ClimateReading.objects.exists()

    def test_counts_the_same_reading_once_however_often_it_comes(self, maker, path):
        body = {"air_c": 13.4, "humidity_fraction": 0.71}
        first = sent(maker[1], path, {**body, "id": str(uuid7())})
        other = sent(maker[1], path, {**body, "id": str(uuid7())})

        assert (first.json()["stored"], other.json()["stored"]) == (1, 0)
        assert other.json()["repeated"] == 1
        assert ClimateReading.objects.count() == 1

    def test_takes_several_at_once(self, maker, path):
        rows = [
            {
                "taken_at": (NOW - timedelta(hours=n)).isoformat(),
                "air_c": 14 + n / 10,
                "humidity_fraction": 0.6,
            }
            for n in range(5)
        ]

        answer = sent(maker[1], path, {"readings": [*rows, rows[0]]})

        assert (answer.json()["stored"], answer.json()["repeated"]) == (5, 1)
        assert JournalEntry.objects.filter(verb="read_climate").count() == 1

    def test_leaves_the_second_reading_of_one_minute_out(self, maker, path):
        sent(maker[1], path, {"air_c": 13.4, "humidity_fraction": 0.71})

        answer = sent(maker[1], path, {"air_c": 13.9, "humidity_fraction": 0.70})

        assert answer.json()["warnings"][0]["code"] == "second-at-that-time"


class TestTable:
    CSV = "taken_at,air_c,rh_percent\n2026-10-17 08:00,12.9,104\n2026-10-18 08:00,13.0,55\n"

    def test_works_in_the_studios_own_time(self, maker, path):
        answer = table(maker[1], path, self.CSV)

        assert answer.status_code == 201
        assert answer.json()["stored"] == 2
        assert [w["code"] for w in answer.json()["warnings"]] == ["humidity-above-all"]
        first = ClimateReading.objects.order_by("taken_at").first()
        assert first.taken_at.isoformat() == "2026-10-17T07:00:00+00:00"
        assert first.use == "left_out"

    def test_sent_again_is_the_same_act(self, maker, path):
        first = table(maker[1], path, self.CSV)
        again = table(maker[1], path, self.CSV)

        assert again.headers["Idempotent-Replay"] == "true"
        assert again.json() == first.json()

    def test_names_line_and_column_of_every_fault_and_keeps_nothing(self, maker, path):
        text = (
            "taken_at,air_c,rh_percent,place\n2026-10-17 08:00,cold,60,\n"
            "2026-10-18 08:00,13,55,\n2026-10-25 01:30,13,55,\n2026-10-26 08:00,13,55,Shed\n"
        )
        answer = table(maker[1], path, text)

        assert answer.status_code == 400
        pointers = [error["pointer"] for error in answer.json()["errors"]]
        assert pointers == ["#/line 2/air_c", "#/line 4/taken_at", "#/line 5/place"]
        assert not ClimateReading.objects.exists()

    @pytest.mark.parametrize(
        "text", ["\n", "when,how\n1,2\n", "taken_at,air_c\n", 'taken_at,air_c\n"']
    )
    def test_refuses_what_is_no_table(self, maker, path, text):
        answer = table(maker[1], path, text)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/table"

    def test_refuses_text_that_is_not_utf_8(self, maker, path):
        answer = table(maker[1], path, b"taken_at,air_c\n\xff\xfe")

        assert answer.status_code == 400

    def test_takes_a_month_of_a_sensor(self, maker, path, django_assert_max_num_queries):
        lines = [
            f"{(NOW - timedelta(minutes=15 * n)).isoformat()},{14 + n % 7 / 10},{60 + n % 5}"
            for n in range(2880)
        ]

        with django_assert_max_num_queries(50):
            answer = table(maker[1], path, "taken_at,air_c,rh_percent\n" + "\n".join(lines))

        assert answer.json()["stored"] == 2880


class TestGet:
    def test_lists_what_was_given_between_two_times(self, maker, path):
        for hours in range(5):
            at = NOW - timedelta(hours=hours)
            body = {"air_c": 14 + hours, "humidity_fraction": 0.6, "happened_at": at.isoformat()}
            sent(maker[1], path, body)

        listed = maker[1].get(path, {"from": "2026-10-31T06:00:00Z", "to": "2026-10-31T08:30:00Z"})

        assert [row["air_c"] for row in listed.json()["results"]] == [15.0, 16.0, 17.0]

    def test_gives_hourly_means_of_vapour(self, maker, path):
        for hours, air_c, share in ((2, 10.0, 0.9), (1, 20.0, 0.4), (0, 20.0, 0.4)):
            at = NOW - timedelta(hours=hours)
            body = {"air_c": air_c, "humidity_fraction": share, "happened_at": at.isoformat()}
            sent(maker[1], path, body)

        answer = maker[1].get(path, {"every": 3600, "from": "2026-10-31T07:00:00Z"}).json()

        assert answer["every_s"] == 3600
        assert [step["at"] for step in answer["results"]] == [
            "2026-10-31T07:00:00Z",
            "2026-10-31T08:00:00Z",
        ]
        assert answer["results"][0]["air_c"] == pytest.approx(15.0)
        # psychrolib 2.5.0: 8.458 and 6.915 g/m³ of vapour on average over 12.825 g/m³ when full.
        assert answer["results"][0]["humidity_fraction"] == pytest.approx(0.5993, abs=1e-3)

    @pytest.mark.parametrize(
        ("query", "pointer"),
        [
            ({"from": "yesterday"}, "#/from"),
            ({"from": "2026-10-31T07:00:00"}, "#/from"),
            ({"every": "3600"}, "#/from"),
            ({"every": "1", "from": "2026-10-31T07:00:00Z"}, "#/every"),
            ({"every": "60", "from": "2020-10-31T07:00:00Z"}, "#/to"),
        ],
    )
    def test_refuses_a_span_it_cannot_give(self, maker, path, query, pointer):
        answer = maker[1].get(path, query)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer

    def test_lists_with_a_fixed_number_of_queries(self, maker, path, django_assert_max_num_queries):
        rows = [
            {"taken_at": (NOW - timedelta(hours=n)).isoformat(), "air_c": 14} for n in range(30)
        ]
        sent(maker[1], path, {"readings": rows})

        with django_assert_max_num_queries(6):
            maker[1].get(path)


class TestAnswers:
    def test_fahrenheit_makes_a_reading_beside_the_one_given(self, maker, path):
        odd = sent(maker[1], path, {"air_c": 61.2, "humidity_fraction": 0.65}).json()["reading"]

        answer = sent(maker[1], f"{S}readings/{odd['id']}/answers/", {"answer": "fahrenheit"})

        assert answer.status_code == 201
        assert answer.json()["reading"]["air_c"] == pytest.approx(16.22, abs=0.01)
        given = ClimateReading.objects.get(pk=odd["id"])
        assert (given.air_c, given.use) == (61.2, "left_out")

    def test_the_last_answer_stands(self, maker, path):
        odd = sent(maker[1], path, {"air_c": 14, "humidity_fraction": 71}).json()["reading"]
        answers = f"{S}readings/{odd['id']}/answers/"

        sent(maker[1], answers, {"answer": "percent"})
        sent(maker[1], answers, {"answer": "leave_out"})
        assert not ClimateReading.objects.filter(use="used").exists()
        sent(maker[1], answers, {"answer": "percent"})

        used = ClimateReading.objects.get(use="used")
        assert used.humidity_fraction == pytest.approx(0.71)

    def test_as_given_takes_what_can_be(self, maker, path):
        sent(maker[1], path, {"air_c": 13.4, "humidity_fraction": 0.71})
        second = sent(maker[1], path, {"air_c": 13.9, "humidity_fraction": 0.70}).json()["reading"]

        answer = sent(maker[1], f"{S}readings/{second['id']}/answers/", {"answer": "as_given"})

        assert answer.json()["reading"]["use"] == "used"

    @pytest.mark.parametrize(
        ("reading", "answer", "code"),
        [
            ({"air_c": 14, "humidity_fraction": 1.04}, "as_given", "still-impossible"),
            ({"air_c": 14, "humidity_fraction": 1.04}, "percent", "still-impossible"),
            ({"air_c": 300}, "fahrenheit", "still-impossible"),
            ({"humidity_fraction": 1.04}, "fahrenheit", "nothing-to-convert"),
        ],
    )
    def test_refuses_what_would_not_help(self, maker, path, reading, answer, code):
        odd = sent(maker[1], path, reading).json()["reading"]

        refused = sent(maker[1], f"{S}readings/{odd['id']}/answers/", {"answer": answer})

        assert refused.status_code == 422
        assert refused.json()["type"] == f"/problems/{code}"
        assert JournalEntry.objects.filter(verb="answered_reading").count() == 0

    def test_is_for_people_of_the_studio(self, maker, path, stranger):
        odd = sent(maker[1], path, {"air_c": 14, "humidity_fraction": 71}).json()["reading"]
        answers = f"{S}readings/{odd['id']}/answers/"

        assert sent(stranger[1], answers, {"answer": "percent"}).status_code == 404
        assert sent(APIClient(), answers, {"answer": "percent"}).status_code == 401
