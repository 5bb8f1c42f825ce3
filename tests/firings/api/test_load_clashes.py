"""Two stories of a load over the wire; tests/cases tells them whole."""

import uuid

from firings.api import load_clashes
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, tell

S = "/api/v1/studios/yard/"


class TestLoadClash:
    def test_is_open_to_all_and_answered_by_who_settles_loads(
        self, yard, maker, owner, technician, sent
    ):
        load = yards.load(yard)
        tell(load, technician[0], "settled", NOW - 4 * HOUR)
        loading = tell(load, technician[0], "loading", NOW - 3 * HOUR)
        tell(load, technician[0], "called_off", NOW - 2 * HOUR, reason="vent dead")
        seen = {"based_on": loading.entry.seq, "device": factories.device(owner[0])}
        tell(load, owner[0], "started", NOW - HOUR, act=seen)

        (clash,) = maker[1].get(f"{S}load-clashes/").json()["results"]

        path = f"{S}load-clashes/{clash['id']}/answers/"
        assert [row["choice"] for row in clash["choices"]] == list(load_clashes.CHOICES)
        assert sent(maker[1], path, {"choice": "first"}).status_code == 403
        answer = sent(technician[1], path, {"choice": "second"}).json()
        assert (answer["load"]["state"], answer["clash"]["state"]) == ("firing", "answered")
        again = sent(technician[1], path, {"choice": "first"})
        assert again.json()["type"] == "/problems/already-settled"

    def test_is_not_there_under_another_id(self, yard, maker):
        assert maker[1].get(f"{S}load-clashes/{uuid.uuid4()}/").status_code == 404
