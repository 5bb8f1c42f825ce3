"""Waiting for other processes, and asking whether they live."""

import json
import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from studio.project.bootstrap import ROOT


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


def children_of(parent: int) -> dict[int, str]:
    listed = subprocess.run(
        ["ps", "-A", "-ww", "-o", "pid=,ppid=,args="], capture_output=True, text=True, check=True
    )
    rows = (line.split(None, 2) for line in listed.stdout.splitlines())
    return {int(row[0]): row[2] for row in rows if len(row) == 3 and int(row[1]) == parent}


def run_script(script: str, environment: dict[str, str]) -> Any:
    """Run Python in a process of its own; return the JSON of the last line it prints."""
    done = subprocess.run(
        [sys.executable, "-c", script],
        env=environment,
        cwd=ROOT,
        check=True,
        stdout=subprocess.PIPE,
        text=True,
    )
    return json.loads(done.stdout.splitlines()[-1])
