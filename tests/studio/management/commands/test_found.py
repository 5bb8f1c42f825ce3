from typing import Any

import pytest
from django.core.management import CommandError, call_command
from django.test import Client

from studio.models import JournalEntry, Member, Studio

PASSWORD = "slip-and-score-9"


@pytest.fixture(autouse=True)
def password(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NATCH_OWNER_PASSWORD", PASSWORD)


@pytest.mark.django_db
class TestFound:
    def test_makes_a_studio_whose_owner_can_sign_in(self, client: Client) -> None:
        call_command("found", "north-shed", "maud", full_name="Maud Quarry", verbosity=0)

        owner = Member.objects.get(user__username="maud")
        assert (owner.first_name, owner.initials, owner.roles) == ("Maud", "MQ", ["owner"])
        assert Studio.objects.get().name == "North Shed"
        assert JournalEntry.objects.get().verb == "founded"
        answer = client.post(
            "/api/v1/session/",
            {"username": "maud", "password": PASSWORD},
            content_type="application/json",
        )
        assert answer.status_code in {200, 201}

    @pytest.mark.parametrize(
        ("words", "options", "reason"),
        [
            (("north shed", "maud"), {}, "Enter a valid"),
            (("north-shed", "maud"), {"zone": "Mars/Base"}, "time zone"),
        ],
    )
    def test_leaves_nothing_behind_when_it_refuses(
        self, words: tuple[str, str], options: dict[str, Any], reason: str
    ) -> None:
        with pytest.raises(CommandError, match=reason):
            call_command("found", *words, verbosity=0, **options)

        assert not Studio.objects.exists()
        assert not Member.objects.exists()

    def test_asks_for_a_password_worth_the_name(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setenv("NATCH_OWNER_PASSWORD", "12345678")

        with pytest.raises(CommandError, match="too common"):
            call_command("found", "north-shed", "maud", verbosity=0)

    def test_refuses_an_address_that_is_taken(self) -> None:
        call_command("found", "north-shed", "maud", verbosity=0)

        with pytest.raises(CommandError, match="There is a studio at that address already"):
            call_command("found", "north-shed", "ines", verbosity=0)
