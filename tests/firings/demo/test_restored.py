"""The whole demo studio through a backup and back, on either database."""

import pytest
from django.core.management import call_command

from studio.actions import backups, drills
from studio.queries import archives, inventory
from tests.factories import NOW


@pytest.mark.slow
class TestDemo:
    def test_comes_back_whole_from_a_backup(self, own_folders):
        call_command("demo", verbosity=0)
        told = inventory.rows_by_table("default")

        file = backups.make(folder=backups.usual_folder(), at=NOW)

        assert archives.read(file).rows == told
        assert told["studio_journalentry"] > 500
        assert drills.drill(file) == []
