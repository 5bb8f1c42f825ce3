import pytest

from studio.actions import studios
from studio.actions.studios import StudioTaken, UnknownZone
from studio.models import JournalEntry, StudioSettings
from studio.permissions import Permission, Role
from studio.queries import people
from tests import factories


class TestFound:
    def test_makes_all_that_a_studio_needs(self, studio, now):
        clockwork, device = people.clockwork(studio)
        entry = JournalEntry.objects.get(studio=studio)

        assert clockwork.is_clockwork
        assert device.member == clockwork
        assert [m.first_name for m in people.members(studio)] == ["Founder"]
        assert (entry.seq, entry.verb, entry.happened_at) == (1, "founded", now)
        assert StudioSettings.objects.get(studio=studio).revision == 1

    def test_refuses_an_address_twice(self, studio):
        with pytest.raises(StudioTaken):
            factories.studio(studio.slug)

    def test_refuses_a_zone_that_is_nowhere(self, db):
        with pytest.raises(UnknownZone):
            studios.found(
                slug="a", name="A", zone="Yard/Shed", owner=factories.person(), at=factories.NOW
            )


class TestWithRole:
    def test_leaves_out_who_has_left(self, studio, owner, maker, now):
        gone = factories.member(studio, [Role.MAKER], "Gus", left_at=now)

        assert people.with_role(studio, Role.MAKER) == [maker[0]]
        assert gone not in people.members(studio)

    def test_finds_who_may(self, studio, owner, technician):
        names = {m.first_name for m in people.who_may(studio, Permission.BUILD_LOADS)}

        assert names == {"Founder", "Orla", "Tess"}
