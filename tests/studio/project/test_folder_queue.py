from collections import Counter
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from queue import Empty

import pytest
from celery import Celery
from kombu.transport.virtual import BrokerState

from studio.project import celery as registers_the_folder
from studio.project import folder_queue
from studio.project.settings import CELERY_BROKER_TRANSPORT_OPTIONS


@pytest.fixture
def app(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Celery]:
    # Kombu remembers for the whole process which queues are bound, whatever the folder.
    monkeypatch.setattr(folder_queue.Transport, "global_state", BrokerState())
    assert registers_the_folder.app.main == "natch"
    app = Celery("probe", broker="folder://", set_as_current=False)
    folders = {
        key: str(tmp_path / Path(value).name)
        for key, value in CELERY_BROKER_TRANSPORT_OPTIONS.items()
        if "folder" in key
    }
    app.conf.broker_transport_options = {**folders, "polling_interval": 0.01}
    yield app
    app.close()


class TestFolderQueue:
    def test_gives_messages_in_order(self, app: Celery) -> None:
        with app.connection_for_write() as link, link.SimpleQueue("quick") as queue:
            for number in range(5):
                queue.put(number)

            assert [queue.get(timeout=5).payload for _ in range(5)] == [0, 1, 2, 3, 4]

    def test_keeps_queues_apart(self, app: Celery) -> None:
        with app.connection_for_write() as link, link.SimpleQueue("work") as work:
            work.put("sum")

            with link.SimpleQueue("quick") as quick, pytest.raises(Empty):
                quick.get(block=False)

            assert work.get(timeout=5).payload == "sum"

    def test_gives_each_message_to_one_reader(self, app: Celery) -> None:
        def read(_: int) -> list[int]:
            with app.connection_for_read() as link, link.SimpleQueue("quick") as queue:
                found: list[int] = []
                while True:
                    try:
                        message = queue.get(block=False)
                        message.ack()  # else it goes back when the reader leaves
                        found.append(message.payload)
                    except Empty:
                        return found

        with app.connection_for_write() as link, link.SimpleQueue("quick") as queue:
            for number in range(60):
                queue.put(number)

        with ThreadPoolExecutor(4) as readers:
            counted = Counter(number for found in readers.map(read, range(4)) for number in found)

        assert counted == Counter(range(60))

    def test_leaves_no_file_behind(self, app: Celery, tmp_path: Path) -> None:
        with app.connection_for_write() as link, link.SimpleQueue("quick") as queue:
            queue.put("look")
            queue.get(timeout=5).ack()

        assert [file for file in tmp_path.glob("*/*") if "msg" in file.name] == []
