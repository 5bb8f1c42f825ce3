"""Waiting for other processes, and asking whether they live."""

import os
import sys
import time
from collections.abc import Callable
from pathlib import Path


def until(is_so: Callable[[], bool], within_s: float = 15) -> bool:
    limit_s = time.monotonic() + within_s
    while time.monotonic() < limit_s:
        if is_so():
            return True
        time.sleep(0.02)
    return is_so()


def is_alive(process_id: int) -> bool:
    try:
        os.kill(process_id, 0)
    except ProcessLookupError:
        return False
    status = Path(f"/proc/{process_id}/stat")
    try:
        return status.read_text().rpartition(")")[2].split()[0] != "Z"
    except FileNotFoundError:
        return sys.platform != "linux"
