"""The studio of the loaded demo: its people, its air, its journal."""

from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest
from django.core.management import CommandError, call_command
from rest_framework.test import APIClient

from pieces.models import Clash, Piece
from studio.models import ClimateReading, JournalEntry, Member, Reminder
from studio.queries import chain
from tests.factories import PASSWORD
from tests.firings.demo.telling import sweep

LONDON = ZoneInfo("Europe/London")


class TestPeople:
    def test_are_the_five_with_their_roles_and_habits(self, demo) -> None:
        found = Member.objects.of(demo.studio).exclude(user=None).order_by("initials")

        assert [(m.full_name, m.initials, sorted(m.roles)) for m in found] == [
            ("Bram Tolley", "BT", ["maker"]),
            ("Jun Haskett", "JH", ["maker"]),
            ("Nessa Quill", "NQ", ["helper"]),
            ("Odile Farrant", "OF", ["owner"]),
            ("Piet Arrowby", "PA", ["maker", "technician"]),
        ]
        bram, odile, piet = (demo.member(name) for name in ("bram", "odile", "piet"))
        assert (bram.length_unit, bram.text_percent) == ("in", 200)
        assert (odile.length_unit, odile.temperature_unit, odile.is_left_handed) == (
            "mm",
            "c",
            True,
        )
        assert piet.temperature_unit == "f"
        assert [m.first_name for m in demo.member("nessa").helps.all()] == ["Odile"]

    def test_sign_in_with_the_demo_password(self, demo) -> None:
        for name in ("odile", "bram", "jun", "nessa", "piet"):
            answer = APIClient().post(
                "/api/v1/session/", {"username": name, "password": PASSWORD}, format="json"
            )
            assert answer.status_code == 200, (name, answer.content)


class TestStudio:
    def test_has_its_zone_hours_limits_and_tariff(self, demo) -> None:
        settings = demo.get("settings/")

        assert demo.studio.zone == "Europe/London"
        assert (settings["quiet_from"], settings["quiet_until"]) == ("20:00:00", "07:30:00")
        expected = {
            "mould_usable_below_fraction": 0.15,
            "mould_dry_below_fraction": 0.05,
            "wall_limit_mm": 12.0,
            "open_kiln_below_c": 100.0,
            "bisque_may_touch": True,
            "glaze_gap_mm": 6.0,
            "refire_headroom_mm": 4.0,
            "currency": "GBP",
            "bisque_fee_minor_per_l": 180,
            "glaze_fee_minor_per_l": 260,
        }
        assert {name: settings[name] for name in expected} == expected

    def test_has_the_rooms_racks_cupboards_and_kilns(self, demo) -> None:
        names = {row["name"] for row in demo.get("places/")["results"]}

        assert {"Bench room", "Drying room", "Kiln shed", "Damp cupboard 1"} <= names
        assert {f"Rack {rack}" for rack in "ABCD"} <= names
        assert {"Damp cupboard 2", "K1 Ox", "K2 Finch", "K3 Ember"} <= names

    def test_knows_its_clays(self, demo) -> None:
        bodies = {row["code"]: row for row in demo.get("clay-bodies/")["results"]}
        blocks = {row["label"] for row in demo.get("slab-blocks/")["results"]}

        shrinkage = {
            code: (row["dry_shrinkage_fraction"], row["total_shrinkage_fraction"])
            for code, row in bodies.items()
        }
        assert shrinkage == {"CR": (0.060, 0.116), "UM": (0.061, 0.119), "SL": (0.062, 0.121)}
        assert "cobalt" in bodies["SL"]["caution"]
        assert blocks == {"BK-14", "BK-15", "BK-16"}


class TestClimate:
    def test_keeps_thirty_days_as_they_were_written_down(self, demo) -> None:
        readings = ClimateReading.objects.of(demo.studio)
        drying = readings.filter(place__name="Drying room").order_by("taken_at")
        days = {reading.taken_at.astimezone(LONDON).date() for reading in drying}

        assert len(days) == 30
        assert drying.count() == 58  # one afternoon missed, one not yet taken
        assert readings.filter(place__name="Kiln shed").count() == 30
        assert not readings.filter(place__name="Bench room").exists()

    def test_leaves_out_what_cannot_be_and_asks_about_the_wrong_unit(self, demo) -> None:
        odd = ClimateReading.objects.of(demo.studio).exclude(use="used").order_by("taken_at")

        splashed, fahrenheit = odd
        assert (splashed.humidity_fraction, splashed.use) == (1.04, "left_out")
        assert fahrenheit.air_c == 61.2
        assert "was it 61.2 °F, which is 16.2 °C?" in fahrenheit.why

    def test_keeps_the_evening_after_the_clocks_went_back(self, demo) -> None:
        taken = ClimateReading.objects.of(demo.studio).filter(place__name="Drying room")
        hours = [
            (reading.taken_at.day, reading.taken_at.hour)
            for reading in taken.filter(taken_at__day__in=[24, 25]).order_by("taken_at")
        ]

        assert hours == [(24, 7), (24, 15), (25, 8), (25, 16)]  # UTC: BST, then GMT


class TestJournal:
    def test_is_whole(self, demo) -> None:
        assert chain.faults(demo.studio) == []
        assert JournalEntry.objects.of(demo.studio).count() > 500

    def test_holds_no_act_that_was_heard_late(self, demo) -> None:
        told = JournalEntry.objects.of(demo.studio).exclude(seq=1)  # the founding
        delays = {entry.written_at - entry.happened_at for entry in told}

        assert delays == {timedelta(seconds=20)}

    def test_tells_of_acts_by_their_own_people_on_their_own_phones(self, demo) -> None:
        told = JournalEntry.objects.of(demo.studio).exclude(seq=1)  # the founding
        pairs = set(told.values_list("member__first_name", "device__name"))

        assert pairs == {(n, f"{n}’s phone") for n in ("Odile", "Bram", "Jun", "Nessa", "Piet")}

    def test_leaves_nothing_in_dispute(self, demo) -> None:
        assert not Clash.objects.of(demo.studio).exists()
        assert not Piece.objects.of(demo.studio).filter(has_clash=True).exists()


class TestReminders:
    def test_are_not_set_for_what_was_due_before_now(self, demo) -> None:
        sweep(demo, demo.now)

        assert not Reminder.objects.of(demo.studio).filter(due_at__lt=demo.now).exists()


class TestDemo:
    def test_never_loads_into_a_database_that_has_a_studio(self, demo) -> None:
        with pytest.raises(CommandError, match="There is a studio in this database"):
            call_command("demo", verbosity=0)
