from concurrent.futures import ThreadPoolExecutor

from django.db import connection

from studio.actions import members
from studio.actions.members import LastOwner
from studio.permissions import Role
from studio.queries import people
from tests import factories


class TestChange:
    def test_keeps_an_owner_when_all_step_down_at_once(self, unlocked_journal, clock):
        studio = factories.studio("yard")
        factories.member(studio, [Role.OWNER], "Orla")
        owners = people.with_role(studio, Role.OWNER)
        acts = [factories.act(owner) for owner in owners]

        def step_down(act):
            try:
                members.change(act=act, member=act.member, roles=[Role.MAKER])
            except LastOwner:
                return False
            finally:
                connection.close()
            return True

        with ThreadPoolExecutor(2) as phones:
            went = list(phones.map(step_down, acts))

        assert sorted(went) == [False, True]
        assert len(people.with_role(studio, Role.OWNER)) == 1
