from concurrent.futures import ThreadPoolExecutor

import pytest
from django.db import connection

from studio.actions import numbers
from studio.models import NumberBlock
from tests import factories
from tests.factories import sent

PATH = "/api/v1/studios/yard/number-blocks/"


class TestLease:
    def test_works(self, maker):
        first = sent(maker[1], PATH, {"series": "T"})
        second = sent(maker[1], PATH, {"series": "T"}).json()

        assert first.status_code == 201
        assert (first.json()["series"], first.json()["first"], first.json()["last"]) == ("T", 1, 20)
        assert (second["first"], second["last"]) == (21, 40)

    def test_counts_each_series_and_studio_by_itself(self, maker, stranger):
        sent(maker[1], PATH, {"series": "T"})

        assert sent(maker[1], PATH, {"series": "J"}).json()["first"] == 1
        assert sent(stranger[1], PATH.replace("yard", "quay"), {"series": "T"}).json()["first"] == 1

    def test_gives_the_same_block_to_the_same_act(self, maker):
        first = sent(maker[1], PATH, {"series": "T"})

        again = sent(maker[1], PATH, {"id": first.json()["id"], "series": "T"})

        assert again.json() == first.json()
        assert again["Idempotent-Replay"] == "true"
        assert NumberBlock.objects.count() == 1

    @pytest.mark.parametrize("series", ["", "t", "ABCDE", "T1", "Ä"])
    def test_reads_letters_only(self, maker, series):
        answer = sent(maker[1], PATH, {"series": series})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/series"

    def test_is_for_those_who_press(self, technician, helper):
        assert sent(technician[1], PATH, {"series": "T"}).status_code == 403
        assert sent(helper[1], PATH, {"series": "T"}).status_code == 201

    def test_lends_no_number_twice_to_phones_that_ask_at_once(self, unlocked_journal, clock):
        member = factories.member(factories.studio("yard"))
        acts = [factories.act(member) for _ in range(8)]

        def lease(act):
            try:
                return numbers.lease(act=act, letters="T")
            finally:
                connection.close()

        with ThreadPoolExecutor(4) as phones:
            blocks = sorted(phones.map(lease, acts), key=lambda block: block.first)

        assert [block.first for block in blocks] == list(range(1, 161, 20))
        assert [block.last for block in blocks] == list(range(20, 161, 20))


class TestPassOver:
    def test_leaves_out_what_is_cut_already(self, studio, maker):
        numbers.pass_over(studio=studio, letters="T", number=27)
        numbers.pass_over(studio=studio, letters="T", number=12)

        assert numbers.take(studio=studio, letters="T") == 28
        assert sent(maker[1], PATH, {"series": "T"}).json()["first"] == 29
