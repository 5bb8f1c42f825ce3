"""People at the same moment, each with a connection of their own."""

from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

from django.db import connections

from firings.actions.gating import NotPlaced
from firings.models import Load, Placement
from pieces.domain.stages import GLAZED
from studio.permissions import Role
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, put, tell, tile

WORKERS = 4


class TestManyAtOnce:
    """Real transactions, a thread for each person: whoever the server hears first has it."""

    def at_once(self, work):
        line = Barrier(WORKERS)

        def one(number):
            line.wait()
            try:
                return work(number)
            finally:
                connections.close_all()

        with ThreadPoolExecutor(WORKERS) as pool:
            return list(pool.map(one, range(WORKERS)))

    def scene(self):
        studio = factories.studio("yard")
        keeper = factories.member(studio, [Role.TECHNICIAN], "Tess")
        its = yards.yard(studio, keeper)
        makers = [factories.member(studio, [Role.MAKER], f"M{n}") for n in range(WORKERS)]
        return its, makers

    def claim(self, load_id, member, piece):
        load = Load.objects.select_related("kiln__place", "studio").get(pk=load_id)
        try:
            put(load, member, piece, at=NOW - HOUR)
        except NotPlaced as error:
            return error.facts["refused"][0]["code"]
        return "placed"

    def test_one_of_them_wins_the_last_place(self, unlocked_journal):
        its, makers = self.scene()
        yards.size(its.kit.tile, 110.0, 110.0, 480.0, is_round=True)
        its.body.dry_shrinkage_fraction = 0.0
        its.body.save()
        load = yards.load(its, "glaze")
        put(load, its.keeper, *[tile(its, makers[0], GLAZED) for _ in range(8)])
        wanted = [tile(its, member, GLAZED) for member in makers]

        said = self.at_once(lambda n: self.claim(load.pk, makers[n], wanted[n]))

        assert sorted(said) == ["placed", "too-full", "too-full", "too-full"]
        assert Placement.objects.filter(load=load, removed_at=None).count() == 9

    def test_one_load_wins_a_piece_that_two_want(self, unlocked_journal):
        its, makers = self.scene()
        piece = tile(its, makers[0])
        loads = [yards.load(its) for _ in range(WORKERS)]

        said = self.at_once(lambda n: self.claim(loads[n].pk, makers[n], piece))

        assert sorted(said) == ["in-another-load"] * 3 + ["placed"]
        assert Placement.objects.filter(piece=piece, is_live=True).count() == 1

    def test_a_load_is_settled_once(self, unlocked_journal):
        its, _ = self.scene()
        load = yards.load(its)

        def settle(_):
            try:
                tell(Load.objects.get(pk=load.pk), its.keeper, "settled", NOW)
            except Exception as error:  # noqa: BLE001  # the kind of refusal is what is asked
                return type(error).__name__
            return "settled"

        said = self.at_once(settle)

        assert sorted(said) == ["LoadOutOfOrder"] * 3 + ["settled"]
