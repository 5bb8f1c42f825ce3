import pytest

from studio.models import JournalEntry, StudioSettings

PATH = "/api/v1/studios/yard/settings/"
OPENING = "/api/v1/studios/yard/opening/"


def changed(client, path=PATH, if_match=None, **body):
    headers = {"If-Match": if_match} if if_match else None
    return client.patch(path, body, format="json", headers=headers)


class TestRead:
    def test_works(self, maker):
        answer = maker[1].get(PATH)

        assert answer["ETag"] == '"1"'
        assert answer.json()["wall_limit_mm"] == 12.0
        assert answer.json()["quiet_from"] == "20:00:00"

    @pytest.mark.parametrize(
        ("who", "sees"),
        [("owner", True), ("maker", True), ("helper", False), ("technician", False)],
    )
    def test_shows_the_tariff_to_who_sees_prices(self, request, who, sees):
        client = request.getfixturevalue(who)[1]

        told = client.get(PATH).json()

        assert any("_fee_minor" in name for name in told) is sees
        assert told["wall_limit_mm"] == 12.0


class TestChange:
    def test_works(self, studio, owner):
        answer = changed(
            owner[1], wall_limit_mm="1/2 in", open_kiln_below_c="200 °F", glaze_fee_minor_per_l=260
        )

        assert (answer.status_code, answer["ETag"]) == (200, '"2"')
        told = answer.json()["settings"]
        assert told["wall_limit_mm"] == 12.7  # the inch is 25.4 mm exactly
        assert told["open_kiln_below_c"] == pytest.approx((200 - 32) / 1.8)
        assert told["glaze_fee_minor_per_l"] == 260
        entry = JournalEntry.objects.get(seq=answer.json()["journal_seq"], studio=studio)
        assert entry.facts["wall_limit_mm"] == 12.7
        assert entry.as_typed == {"/wall_limit_mm": "1/2 in", "/open_kiln_below_c": "200 °F"}

    def test_asks_for_the_row_as_it_is(self, owner):
        changed(owner[1], glaze_gap_mm=5)

        stale = changed(owner[1], if_match='"1"', glaze_gap_mm=9)
        fresh = changed(owner[1], if_match='"2"', glaze_gap_mm=9)

        assert stale.status_code == 412
        assert stale.json()["current"]["glaze_gap_mm"] == 5.0
        assert fresh.json()["settings"]["revision"] == 3

    @pytest.mark.parametrize(
        ("name", "value", "code"),
        [
            ("wall_limit_mm", 0, "min-value"),
            ("wall_limit_mm", "12 °C", "wrong-dimension"),
            ("open_kiln_below_c", 900, "max-value"),
            ("assumed_humidity_fraction", "150 %", "max-value"),
            ("quiet_from", "late", "invalid"),
            ("currency", "quid", "invalid"),
            ("bisque_may_touch", "maybe", "invalid"),
            ("bisque_fee_minor_per_l", -1, "min-value"),
        ],
    )
    def test_names_the_field_and_the_limit(self, owner, name, value, code):
        answer = changed(owner[1], **{name: value})

        assert answer.status_code == 400
        (error,) = answer.json()["errors"]
        assert (error["pointer"], error["code"]) == (f"#/{name}", code)

    def test_keeps_dry_drier_than_usable(self, studio, owner):
        answer = changed(owner[1], mould_dry_below_fraction=0.2)

        assert answer.status_code == 422
        assert answer.json()["type"] == "/problems/limits-cross"
        assert StudioSettings.objects.get(studio=studio).mould_dry_below_fraction == 0.05

    def test_is_for_owners(self, technician):
        assert changed(technician[1], wall_limit_mm=9).status_code == 403


class TestOpening:
    WEEK = (
        {"weekday": 0, "opens": "08:30:00", "closes": "18:00:00"},
        {"weekday": 5, "opens": "09:00:00", "closes": "13:00:00"},
    )

    def test_works(self, owner, maker):
        days = [{"date": "2026-12-25", "why": "Christmas"}]

        answer = changed(owner[1], OPENING, weekly=list(self.WEEK), closed_days=days)

        assert answer.status_code == 200
        told = maker[1].get(OPENING)
        assert told.json()["weekly"] == list(self.WEEK)
        assert told.json()["closed_days"] == days
        assert told["ETag"] == answer["ETag"] == '"2"'

    def test_leaves_what_is_left_out(self, owner):
        changed(owner[1], OPENING, weekly=list(self.WEEK))

        changed(owner[1], OPENING, closed_days=[])

        assert owner[1].get(OPENING).json()["weekly"] == list(self.WEEK)

    def test_asks_for_the_row_as_it_is(self, owner):
        changed(owner[1], OPENING, weekly=list(self.WEEK))

        stale = changed(owner[1], OPENING, if_match='"1"', weekly=[])

        assert stale.status_code == 412
        assert stale.json()["current"]["weekly"] == list(self.WEEK)

    @pytest.mark.parametrize(
        ("weekly", "pointer"),
        [
            ([{"weekday": 7, "opens": "08:00", "closes": "09:00"}], "#/weekly/0/weekday"),
            ([{"weekday": 1, "opens": "09:00", "closes": "08:00"}], "#/weekly/0/closes"),
            ([{"weekday": 1, "opens": "08:00", "closes": "09:00"}] * 2, "#/weekly"),
            ("always", "#/weekly"),
        ],
    )
    def test_names_the_field_it_cannot_take(self, owner, weekly, pointer):
        answer = changed(owner[1], OPENING, weekly=weekly)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer
