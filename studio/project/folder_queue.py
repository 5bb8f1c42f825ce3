"""Celery's queue as a folder of files, for an installation without Redis.

Kombu's own file transport writes a message under its final name, so that a worker may read half of
it. Here a message is written aside and renamed, and a folder that is missing is made.
"""

import contextlib
import json
import os
import time
import uuid
from pathlib import Path
from queue import Empty
from typing import Any

from kombu.transport import filesystem


class Channel(filesystem.Channel):
    """A channel whose messages appear and are taken whole, by renaming."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)  # type: ignore[no-untyped-call]
        self.messages = Path(self.data_folder_out)
        self.taken = Path(self.processed_folder)
        for folder in (self.messages, self.taken, Path(self.control_folder)):
            folder.mkdir(parents=True, exist_ok=True)

    def _put(  # type: ignore[override]  # kombu's two bases differ
        self, queue: str, payload: Any, **kwargs: Any
    ) -> None:
        # Wall-clock names keep their order through a restart of the machine.
        name = f"{time.time_ns():020d}_{uuid.uuid4().hex}.{queue}.msg"
        draft = self.taken / f"{name}.draft"
        draft.write_text(json.dumps(payload), encoding="utf-8")
        draft.rename(self.messages / name)

    def _get(self, queue: str, timeout: float | None = None) -> Any:
        for name in sorted(os.listdir(self.messages)):  # noqa: PTH208  (names are all it needs)
            if name.partition(".")[2] != f"{queue}.msg":
                continue
            mine = self.taken / name
            with contextlib.suppress(FileNotFoundError):  # another worker was quicker
                (self.messages / name).rename(mine)
                payload = mine.read_text(encoding="utf-8")
                mine.unlink()
                return json.loads(payload)
        raise Empty


class Transport(filesystem.Transport):
    """The folder as a transport: `folder://`."""

    Channel = Channel
