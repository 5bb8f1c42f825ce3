from kombu.exceptions import OperationalError

from studio import tasks
from tests.factories import sent

PATH = "/api/v1/studios/yard/backups/"


class TestBackups:
    def test_tell_of_one_that_was_asked_for_made_and_came_back_whole(
        self, own_folders, studio, owner, clock
    ):
        asked = sent(owner[1], PATH, {"what": "backup"})

        waiting = owner[1].get(PATH).json()
        tasks.keep_backups()
        done = owner[1].get(PATH).json()

        assert asked.status_code == 201
        assert (waiting["results"], waiting["asked"]) == ([], ["backup"])
        (row,) = done["results"]
        assert row["file"] == "natch-2026-10-31T09-00-00Z.zip"
        assert row["is_good"] is True
        assert row["size_bytes"] == (own_folders / "backups" / row["file"]).stat().st_size
        assert (done["asked"], done["failure"], done["is_old"]) == ([], None, False)
        assert done["good_drill_at"] == row["tried_at"] == row["made_at"]

    def test_say_so_when_the_newest_is_old(self, own_folders, studio, owner, clock):
        tasks.keep_backups()
        clock.move(days=36)

        told = owner[1].get(PATH).json()

        assert (told["is_old"], told["is_drill_old"]) == (True, True)

    def test_are_asked_for_even_where_the_queue_does_not_answer(
        self, own_folders, studio, owner, monkeypatch
    ):
        def gone():
            raise OperationalError

        monkeypatch.setattr(tasks.keep_backups, "delay", gone)

        assert sent(owner[1], PATH, {"what": "drill"}).status_code == 201
        assert owner[1].get(PATH).json()["asked"] == ["drill"]

    def test_are_for_owners_only(self, studio, maker, technician):
        for _, client in (maker, technician):
            assert client.get(PATH).status_code == 403
            assert sent(client, PATH, {"what": "drill"}).status_code == 403
