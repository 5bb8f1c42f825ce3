"""Telling people, over real SMTP: once, at the right time, and again only when it failed."""

from datetime import time, timedelta
from uuid import uuid4

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio.actions import deliveries, reminders
from studio.models import Delivery, Reminder
from tests import factories

NOW = factories.NOW  # Saturday 31 October 2026, 09:00 in London
HOUR = timedelta(hours=1)
MINUTE = timedelta(minutes=1)
ELEVEN = NOW + 2 * HOUR


@pytest.fixture
def person(maker):
    maker[0].email = "maud@yard.test"
    maker[0].save()
    return maker[0]


@pytest.fixture
def remind(studio, person):
    def given(grade="C", mark="T26", due_at=NOW, to=None, object_id=None, **more):
        thing = reminders.About(
            cause="demould",
            grade=grade,
            kind="piece",
            object_id=object_id or uuid4(),
            mark=mark,
            title=f"{mark}, tile, in its window. Bench 1.",
            body="Take it out by 12:00.",
            link="/yard/bench",
        )
        more.setdefault("at", due_at)
        return reminders.set_for(
            studio=studio, person=to or person, about=thing, due_at=due_at, **more
        )

    return given


class TestSendDue:
    def test_sends_one_plain_message_about_all_at_the_grouped_time(self, smtp, remind):
        for mark in ("T25", "T26", "J08"):
            remind(mark=mark)

        before = deliveries.send_due(at=ELEVEN - MINUTE)
        sent = deliveries.send_due(at=ELEVEN)

        assert (before, sent) == (0, 1)
        [message] = smtp.messages
        assert message["To"] == "maud@yard.test"
        assert message["Subject"] == "T25, tile, in its window. Bench 1., and 2 more"
        assert message.get_content_type() == "text/plain"
        for mark in ("T25", "T26", "J08"):
            assert f"{mark}, tile, in its window. Bench 1." in message.get_content()
        assert "http://localhost:8000/yard/bench" in message.get_content()
        assert set(Reminder.objects.values_list("state", flat=True)) == {"sent"}

    def test_sends_nothing_the_second_time(self, smtp, remind):
        remind()
        for minutes in range(0, 60, 10):
            deliveries.send_due(at=ELEVEN + minutes * MINUTE)

        assert len(smtp.messages) == 1

    def test_sends_a_hot_kiln_at_night_at_once_and_again_by_rounds(self, smtp, remind):
        night, kiln = NOW + 14 * HOUR, uuid4()
        remind("A", "K2", due_at=night, object_id=kiln)
        deliveries.send_due(at=night)
        deliveries.send_due(at=night + MINUTE)
        remind("A", "K2", due_at=night + 15 * MINUTE, object_id=kiln, round=1)
        deliveries.send_due(at=night + 15 * MINUTE)

        assert [message["Subject"][:7] for message in smtp.messages] == ["Now: K2", "Now: K2"]

    def test_says_nothing_of_what_was_done_meanwhile(self, studio, smtp, remind):
        reminder = remind()
        deliveries.group(at=ELEVEN)
        reminders.withdraw(studio=studio, object_id=reminder.object_id)

        assert deliveries.send_due(at=ELEVEN) == 0
        assert smtp.messages == []

    def test_holds_the_persons_own_quiet_hours(self, smtp, remind, person):
        person.quiet_from, person.quiet_until = time(10, 0), time(12, 30)
        person.save()
        remind()

        deliveries.send_due(at=ELEVEN)
        assert smtp.messages == []
        deliveries.send_due(at=NOW + 3.5 * HOUR)
        assert len(smtp.messages) == 1

    def test_wakes_what_was_put_off(self, smtp, remind, person, act):
        reminder = remind("B")
        deliveries.send_due(at=NOW)
        reminders.answer(act=act(person), reminder=reminder, answer="snooze", until=NOW + 2 * HOUR)

        deliveries.send_due(at=NOW + HOUR)
        assert len(smtp.messages) == 1
        deliveries.send_due(at=NOW + 2 * HOUR)
        deliveries.send_due(at=NOW + 2 * HOUR + MINUTE)
        assert len(smtp.messages) == 2

    def test_tells_who_has_no_address_in_the_app_alone(self, smtp, remind, person):
        person.email = ""
        person.save()
        remind()

        deliveries.send_due(at=ELEVEN)

        assert smtp.messages == []
        assert Delivery.objects.get().channel == "app"
        assert Reminder.objects.get().state == "sent"

    def test_never_writes_to_who_left(self, smtp, remind, person):
        remind()
        person.left_at = NOW + HOUR
        person.save()

        assert deliveries.send_due(at=ELEVEN) == 0


class TestSend:
    def test_tries_again_later_when_the_server_refuses(self, smtp, remind):
        remind("B")
        smtp.refuse()
        deliveries.send_due(at=NOW)
        smtp.accept()

        assert deliveries.send_due(at=NOW + MINUTE) == 0
        assert "Come back later" in Delivery.objects.get().failure
        assert deliveries.send_due(at=NOW + 3 * MINUTE) == 1
        assert Delivery.objects.get().failure == ""

    def test_gives_up_after_ten_tries_and_keeps_the_reminder(self, smtp, remind):
        remind("B")
        smtp.refuse()
        for number in range(20):
            deliveries.send_due(at=NOW + number * 20 * MINUTE)

        assert Delivery.objects.get().tries <= deliveries.TRIES_MOST
        assert Reminder.objects.get().state == "due"

    def test_leaves_what_somebody_else_is_sending(self, smtp, remind):
        remind("B")
        deliveries.group(at=NOW)
        Delivery.objects.update(lease_until=NOW + MINUTE)

        assert deliveries.send_due(at=NOW) == 0

    def test_repeats_at_most_once_when_killed_between_sending_and_marking(
        self, smtp, remind, monkeypatch
    ):
        remind("B")

        def killed(*_):
            raise KeyboardInterrupt

        with monkeypatch.context() as at_the_wrong_moment:
            at_the_wrong_moment.setattr(deliveries, "_mark", killed)
            with pytest.raises(KeyboardInterrupt):
                deliveries.send_due(at=NOW)
        for minutes in range(1, 12):
            deliveries.send_due(at=NOW + minutes * MINUTE)

        ids = [message["Message-ID"] for message in smtp.messages]
        assert len(ids) == 2
        assert len(set(ids)) == 1


class TestEverySweep:
    @given(
        grades=st.lists(st.sampled_from("ABCD"), min_size=1, max_size=6),
        late=st.lists(st.integers(0, 40), min_size=6, max_size=6),
        sweeps=st.lists(st.integers(0, 60), min_size=1, max_size=12),
    )
    @settings(
        max_examples=25,
        deadline=None,
        suppress_health_check=[HealthCheck.function_scoped_fixture],
    )
    def test_tells_each_thing_once_and_class_c_never_in_quiet_hours(
        self, studio, person, remind, settings, grades, late, sweeps
    ):
        settings.EMAIL_BACKEND = "django.core.mail.backends.locmem.EmailBackend"
        Delivery.objects.all().delete()
        Reminder.objects.all().delete()
        set_at = {
            remind(grade, due_at=NOW + hours * HOUR).pk: grade
            for grade, hours in zip(grades, late, strict=False)
        }

        for hours in sorted([*sweeps, *sweeps]):
            deliveries.send_due(at=NOW + hours * HOUR)

        told = Delivery.objects.filter(sent_at__isnull=False)
        pairs = [(one.sent_at, row.pk) for one in told for row in one.reminders.all()]
        assert len(pairs) == len({pk for _, pk in pairs})
        for sent_at, pk in pairs:
            if set_at[pk] != "A":
                assert 7.5 <= sent_at.hour + sent_at.minute / 60 < 20
