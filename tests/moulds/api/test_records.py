from datetime import timedelta

import pytest

from moulds.actions import sets
from moulds.models import Booking, MouldWeighing
from studio.models import ClimateReading
from tests import factories
from tests.moulds import yard
from tests.pictures import sent_photo


@pytest.fixture
def path(tile_set):
    return f"/api/v1/studios/yard/mould-sets/{tile_set.pk}/"


@pytest.fixture
def dry(maker, casting):
    yard.weighed(maker[0], casting, 2310, at=factories.NOW - timedelta(days=9), is_dry=True)
    return casting


class TestMouldWeighingList:
    def test_works(self, maker, dry, path, sent):
        weighed = sent(maker[1], f"{path}weighings/", {"mass_g": "5 lb 4 1/2 oz"})
        listed = maker[1].get(f"{path}weighings/")

        assert weighed.status_code == 201, weighed.data
        # 5 x 453.59237 + 4.5 x 28.349523 = 2395.53 g; 85.53 g of 43 % of 2310 g.
        assert weighed.data["weighing"]["mass_g"] == pytest.approx(2395.53, abs=0.01)
        assert weighed.data["dryness"]["word"] == "usable"
        assert weighed.data["dryness"]["free_water_fraction"] == pytest.approx(0.0861, abs=1e-4)
        assert [row["is_dry"] for row in listed.data["results"]] == [False, True]

    @pytest.mark.parametrize(
        ("mass", "status", "words"),
        [
            (239.5, 422, "Did you mean 2395 g?"),
            (23950, 422, "Did you mean 2395 g?"),
            (1200, 422, "less than its dry weight"),
            (-3, 400, "-3 g"),
            (1e9, 400, "1e+09 g"),
            ("NaN", 400, ""),
            ("", 400, ""),
            ("12 mm", 400, ""),
        ],
    )
    def test_refuses_what_cannot_be_and_names_the_field(
        self, maker, dry, path, sent, mass, status, words
    ):
        refused = sent(maker[1], f"{path}weighings/", {"mass_g": mass})

        assert refused.status_code == status
        assert refused.data["errors"][0]["pointer"] == "#/mass_g"
        assert words in refused.data["detail"]
        assert MouldWeighing.objects.count() == 1

    def test_wants_a_casting(self, maker, path, sent):
        refused = sent(maker[1], f"{path}weighings/", {"mass_g": 2310})

        assert refused.status_code == 409
        assert refused.data["type"] == "/problems/nothing-poured"

    def test_is_not_for_whoever_only_fires(self, technician, dry, path, sent):
        assert sent(technician[1], f"{path}weighings/", {"mass_g": 2310}).status_code == 403

    def test_is_closed_to_strangers(self, stranger, dry, tile_set, sent):
        theirs = f"/api/v1/studios/quay/mould-sets/{tile_set.pk}/weighings/"

        assert sent(stranger[1], theirs, {"mass_g": 2310}).status_code == 404
        assert stranger[1].get(theirs).status_code == 404


class TestInspectionList:
    def test_works(self, maker, casting, path, sent):
        part = casting.parts.first()

        looked = sent(
            maker[1], f"{path}inspections/", {"part_id": str(part.pk), "finding": "softening"}
        )
        listed = maker[1].get(f"{path}inspections/")

        assert looked.status_code == 201, looked.data
        assert [row["finding"] for row in listed.data["results"]] == ["softening"]

    def test_keeps_the_photo_of_the_detail(self, maker, casting, tile_set, path, sent):
        photo = sent_photo(maker[1]).json()["id"]
        part = {"part_id": str(casting.parts.first().pk)}

        looked = sent(
            maker[1], f"{path}inspections/", {**part, "finding": "crisp", "photo_ids": [photo]}
        )

        assert looked.data["photo_ids"] == [photo]
        listed = maker[1].get(f"{path}inspections/").json()["results"]
        assert listed[0]["photo_ids"] == [photo]
        of_set = maker[1].get(f"/api/v1/studios/yard/photos/?subject={tile_set.pk}").json()
        assert [row["id"] for row in of_set["results"]] == [photo]

    def test_marks_a_part_found_chipped(self, maker, casting, path, sent):
        part = casting.parts.first()

        sent(maker[1], f"{path}inspections/", {"part_id": str(part.pk), "finding": "chipped"})

        part.refresh_from_db()
        assert part.state == "chipped"

    def test_knows_no_part_of_another_set(self, maker, casting, tile_set, path, sent):
        other = yard.poured(maker[0], factories.mould_set(tile_set.makes), generation=2)
        body = {"part_id": str(other.parts.first().pk), "finding": "crisp"}

        assert sent(maker[1], f"{path}inspections/", body).status_code == 404


class TestBookingList:
    AFTERNOON = {"from_at": "2026-10-31T14:00:00Z", "until_at": "2026-10-31T17:00:00Z"}

    def test_works(self, maker, path, sent):
        booked = sent(maker[1], f"{path}bookings/", self.AFTERNOON)
        listed = maker[1].get(f"{path}bookings/")
        shown = maker[1].get(path)

        assert booked.status_code == 201, booked.data
        assert [row["member"]["first_name"] for row in listed.data["results"]] == ["Maud"]
        assert shown.data["next_booking"]["from_at"] == "2026-10-31T14:00:00Z"

    def test_says_who_has_it(self, maker, owner, path, sent):
        sent(maker[1], f"{path}bookings/", self.AFTERNOON)

        refused = sent(
            owner[1],
            f"{path}bookings/",
            {"from_at": "2026-10-31T16:59:00Z", "until_at": "2026-10-31T18:00:00Z"},
        )

        assert refused.status_code == 409
        assert refused.data["type"] == "/problems/mould-taken"
        assert refused.data["first_name"] == "Maud"
        assert refused.data["until_at"] == "2026-10-31T17:00:00+00:00"

    def test_refuses_a_time_without_an_offset(self, maker, path, sent):
        body = {**self.AFTERNOON, "from_at": "2026-10-31T14:00:00"}

        assert sent(maker[1], f"{path}bookings/", body).status_code == 400

    @pytest.mark.parametrize("role", ["helper", "technician"])
    def test_is_for_makers(self, request, path, sent, role):
        client = request.getfixturevalue(role)[1]

        assert sent(client, f"{path}bookings/", self.AFTERNOON).status_code == 403

    def test_is_closed_to_strangers(self, stranger, tile_set, sent):
        theirs = f"/api/v1/studios/quay/mould-sets/{tile_set.pk}/bookings/"

        assert sent(stranger[1], theirs, self.AFTERNOON).status_code == 404


class TestBookingEndList:
    def test_works(self, maker, path, sent):
        booked = sent(maker[1], f"{path}bookings/", TestBookingList.AFTERNOON).data

        ended = sent(maker[1], f"{path}bookings/{booked['id']}/endings/")

        assert ended.status_code == 201, ended.data
        assert maker[1].get(f"{path}bookings/").data["results"] == []

    def test_is_not_somebody_elses_to_end(self, maker, studio, join, path, sent):
        booked = sent(maker[1], f"{path}bookings/", TestBookingList.AFTERNOON).data
        _, other = join(studio, ["maker"], "Bea")

        assert sent(other, f"{path}bookings/{booked['id']}/endings/").status_code == 403
        assert Booking.objects.get().given_up_at is None


class TestReadinessOne:
    def test_works(self, maker, dry, path, now):
        yard.weighed(maker[0], dry, 2340, at=now - timedelta(hours=1))

        answer = maker[1].get(f"{path}readiness/")

        assert answer.status_code == 200, answer.data
        assert answer.data["word"] == "dry"
        assert answer.data["usable_at"] is None
        assert answer.data["advice"] == {
            "code": "press",
            "reason": "Dry: 3.0 % free water, no press since dry.",
        }

    def test_says_when_a_wet_mould_will_be_usable(self, maker, dry, path, now):
        yard.weighed(maker[0], dry, 2600, at=now - timedelta(hours=1))

        data = maker[1].get(f"{path}readiness/").data

        times = [data["usable_at"][name] for name in ("p10", "p50", "p90")]
        assert data["word"] == "rest"
        assert times == sorted(times)
        assert times[0] > now.isoformat()
        assert data["dry_at"]["p50"] > data["usable_at"]["p50"]
        assert data["air"]["is_assumed"] is True
        assert "Usable from about" in data["advice"]["reason"]
        assert len(data["cautions"]) == 1

    def test_uses_the_air_of_the_place(self, maker, studio, dry, path, now, tile_set):
        room = factories.place(studio, "Drying room")
        shelf = factories.place(studio, "Shelf P2", "shelf", parent=room)
        changes = {"place": shelf}
        sets.edit(act=factories.act(maker[0]), mould_set=tile_set, changes=changes)
        yard.weighed(maker[0], dry, 2600, at=now - timedelta(hours=1))
        usable = {}
        for number, humidity in enumerate((0.8, 0.4)):
            ClimateReading.objects.create(
                studio=studio,
                entry=factories.entry(maker[0]),
                place=room,
                taken_at=now + timedelta(minutes=number - 9),
                air_c=18.0,
                humidity_fraction=humidity,
            )
            data = maker[1].get(f"{path}readiness/").data
            usable[humidity] = data["usable_at"]["p50"]

        assert usable[0.4] < usable[0.8]
        assert data["air"]["words"] == "Readings of Drying room, around Shelf P2."

    def test_gives_the_pressings_left_by_the_studios_limit(self, maker, dry, path, tile_set):
        habits = {"inspect_at_presses": 100, "retire_at_presses": 200}
        sets.edit(act=factories.act(maker[0]), mould_set=tile_set, changes=habits)
        yard.pressed(maker[0], dry, count=40)

        left = maker[1].get(f"{path}readiness/").data["expected_pressings_left"]

        # Weibull, shape 3, life 200, having stood 40: 200 x (0.2^3 + ln 2)^(1/3) - 40 = 137.7,
        # by hand.
        assert left["p50"] == 137
        assert left["p10"] < left["p50"] < left["p90"]

    def test_says_pour_where_there_is_no_casting(self, maker, path):
        data = maker[1].get(f"{path}readiness/").data

        assert data["advice"]["code"] == "pour"
        assert data["casting_id"] is None

    def test_falls_back_to_presses_where_nobody_weighs(self, maker, casting, path):
        yard.pressed(maker[0], casting, count=2)

        data = maker[1].get(f"{path}readiness/").data

        assert (data["word"], data["dryness"]["basis"]) == ("usable", "presses")
        assert data["dryness"]["free_water_fraction"] is None

    def test_is_closed_to_strangers(self, stranger, path, tile_set):
        theirs = f"/api/v1/studios/quay/mould-sets/{tile_set.pk}/readiness/"

        assert [stranger[1].get(at).status_code for at in (path, theirs)] == [404, 404]
