from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

from django.db import connection

from studio.actions import sign_in
from studio.models import SignInTry
from tests.factories import NOW


def tried(at=NOW, username="maud"):
    return sign_in.count_try(username=username, address="10.0.0.1", at=at)


class TestCountTry:
    def test_lets_five_through_and_says_how_long_to_wait(self, db):
        waits = [tried(NOW + timedelta(minutes=n)) for n in range(6)]

        assert waits == [None] * 5 + [timedelta(minutes=10)]

    def test_lets_one_through_for_each_that_is_old(self, db):
        for n in range(5):
            tried(NOW + timedelta(minutes=n))

        assert tried(NOW + timedelta(minutes=15)) is None
        assert tried(NOW + timedelta(minutes=15)) == timedelta(minutes=1)

    def test_takes_no_notice_of_capitals(self, db):
        for name in ("maud", "Maud", "MAUD", "mAUD", "maUD"):
            tried(username=name)

        assert tried() is not None

    def test_forgets_what_is_old(self, db):
        tried()

        tried(NOW + timedelta(minutes=16), username="orla")

        assert SignInTry.objects.count() == 1

    def test_lets_no_more_through_that_come_at_once(self, unlocked_journal):
        def guess(_):
            try:
                return tried()
            finally:
                connection.close()

        with ThreadPoolExecutor(8) as guesses:
            waits = list(guesses.map(guess, range(24)))

        assert waits.count(None) <= 5
        assert waits.count(None) >= 1
