"""The book of a kiln over the wire, and what it comes to."""

import pytest

from firings.actions.cones import ConeGiven, record
from firings.models import KilnService
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, tell

S = "/api/v1/studios/yard/"


@pytest.fixture
def book(yard):
    return f"{S}kilns/{yard.finch.pk}/service/"


def fired(yard, days, hand=None):
    """Tell of a glaze firing so many days ago; `hand` is how its cone stood."""
    at = NOW - days * DAY
    load = yards.load(yard, "glaze", starts_at=at, made_at=at - DAY)
    tell(load, yard.keeper, "started", at, is_catching_up=True)
    tell(load, yard.keeper, "ended", at + 10 * HOUR, outcome="fired")
    if hand is not None:
        cones = [ConeGiven("firing", "6", 1, hand)]
        record(act=factories.act(yard.keeper, at + 30 * HOUR), load=load, cones=cones)


class TestWriting:
    def test_tells_the_course_of_the_ohms(self, book, technician, sent):
        sent(technician[1], book, {"kind": "ohms", "over_new_fraction": 0.04})
        answer = sent(technician[1], book, {"kind": "ohms", "over_new_fraction": "11 %"})

        assert answer.status_code == 201, answer.content
        health = answer.json()["health"]
        assert health["ohms_words"] == "+4 %, then +11 % over new"
        assert [note["code"] for note in health["notes"]] == ["ohms-high"]
        assert answer.json()["service"]["title"] == "ohms measured"

    def test_counts_anew_from_new_elements(self, yard, book, technician, maker, sent):
        type(yard.finch).objects.filter(pk=yard.finch.pk).update(
            firings_before=68, hot_hours_before=513.5, sensor_firings_before=12
        )
        fired(yard, 20)
        sent(technician[1], book, {"kind": "ohms", "over_new_fraction": 0.12})
        before = maker[1].get(f"{S}kilns/{yard.finch.pk}/").json()
        changed = {"kind": "elements", "happened_at": (NOW - 9 * DAY).isoformat()}
        sent(technician[1], book, changed)
        fired(yard, 5)

        after = maker[1].get(f"{S}kilns/{yard.finch.pk}/").json()
        assert before["health"]["elements_words"] == "69 firings, 514 h hot"
        assert after["health"]["elements_words"] == "1 firing, 0 h hot"
        assert after["health"]["elements_since"] == "2026-10-22"
        # The sensor is the old one; ohms measured after the change are of the new elements.
        assert after["health"]["sensor_words"] == "14 firings"
        assert after["firings"] == 1

    def test_keeps_the_last_count_of_shelves(self, book, technician, sent):
        sent(technician[1], book, {"kind": "shelves", "shelf_count": 6})
        told = {"kind": "shelves", "shelf_count": 5, "words": "one cracked"}
        answer = sent(technician[1], book, told)

        assert answer.json()["health"]["shelf_count"] == 5

    def test_is_taken_back_by_an_act(self, book, technician, sent):
        told = sent(technician[1], book, {"kind": "ohms", "over_new_fraction": 0.9}).json()

        back = sent(technician[1], f"{S}retractions/", {"corrects": told["id"]})

        assert back.status_code == 201, back.content
        assert technician[1].get(book).json()["results"] == []
        assert KilnService.objects.count() == 1

    @pytest.mark.parametrize(
        ("body", "pointer"),
        [
            ({"kind": "ohms"}, "#/over_new_fraction"),
            ({"kind": "ohms", "over_new_fraction": "much"}, "#/over_new_fraction"),
            ({"kind": "shelves"}, "#/shelf_count"),
            ({"kind": "note"}, "#/words"),
            ({"kind": "painted"}, "#/kind"),
        ],
    )
    def test_names_what_is_missing(self, book, technician, sent, body, pointer):
        answer = sent(technician[1], book, body)

        assert answer.status_code == 400
        assert [error["pointer"] for error in answer.json()["errors"]] == [pointer]

    def test_is_a_technicians(self, book, maker, sent):
        answer = sent(maker[1], book, {"kind": "vent"})

        assert (answer.status_code, answer.json()["needed"]) == (403, "service_kilns")


class TestReading:
    def test_lists_what_was_done_newest_first(self, book, technician, maker, sent):
        for kind in ("vent", "relay"):
            at = NOW - (DAY if kind == "vent" else HOUR)
            told = {"kind": kind, "happened_at": at.isoformat(), "words": "seen to"}
            sent(technician[1], book, told)

        rows = maker[1].get(book).json()["results"]

        assert [row["title"] for row in rows] == ["relay changed", "vent seen to"]
        assert rows[0]["member"]["first_name"] == "Tess"


class TestCones:
    def test_of_two_loads_that_agree_say_that_it_gets_hotter(self, yard, technician):
        fired(yard, 9, hand=7)
        once = technician[1].get(f"{S}kilns/{yard.finch.pk}/").json()["health"]
        fired(yard, 6, hand=7)
        twice = technician[1].get(f"{S}kilns/{yard.finch.pk}/").json()["health"]

        assert (once["trend"], once["notes"]) == ("", [])
        assert twice["trend"] == "hot"
        assert twice["notes"][0]["detail"].startswith("Getting hotter")
