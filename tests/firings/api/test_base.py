"""Whose word a load is, over the wire."""

import pytest

from firings.models import LoadEvent
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY

S = "/api/v1/studios/yard/"


class TestPermission:
    """The server says no to an apprentice, by app or by a request made by hand."""

    @pytest.mark.parametrize(
        "body",
        [
            {"kind": "started"},
            {"kind": "ended", "happened_at": (NOW - 5 * DAY).isoformat(), "outcome": "fired"},
            {"kind": "unloaded", "is_catching_up": True, "outcome": "fired"},
            {"kind": "settled"},
        ],
    )
    def test_is_refused_to_apprentices_and_makers(self, yard, helper, maker, sent, body):
        load = yards.load(yard)

        for client in (helper[1], maker[1]):
            answer = sent(client, f"{S}loads/{load.pk}/events/", body)

            assert (answer.status_code, answer.json()["needed"]) == (403, "record_firings")
        assert LoadEvent.objects.count() == 0

    def test_refused_is_written_in_the_log(self, yard, helper, sent, caplog):
        load = yards.load(yard)

        with caplog.at_level("INFO", logger="natch.problems"):
            sent(helper[1], f"{S}loads/{load.pk}/events/", {"kind": "started"})

        (line,) = [r for r in caplog.records if r.name == "natch.problems"]
        assert line.levelname == "INFO"
        assert "record_firings" in line.getMessage()
        assert str(helper[0].pk) in line.getMessage()

    def test_settling_is_asked_beyond_logging(self, yard, join, sent):
        load = yards.load(yard)
        _, client = join(yard.studio, ["maker"], "Mo")

        answer = sent(client, f"{S}loads/{load.pk}/events/", {"kind": "settled"})

        assert answer.status_code == 403

    def test_loads_of_another_studio_are_not_there(self, yard, stranger, sent):
        load = yards.load(yard)

        answer = sent(stranger[1], f"/api/v1/studios/quay/loads/{load.pk}/events/", {"kind": "x"})

        assert answer.status_code == 404
