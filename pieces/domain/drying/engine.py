"""Which march this process uses: plain numpy, or the compiled loop once somebody made it ready.

numba is heavy (a second to import, fifteen to compile the first time), so that only a worker asks
for it, in the background; a web process never does, and goes on in numpy if it must reckon.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pieces.domain.drying.lanes import Lanes, Timetable
from pieces.domain.drying.march import March, Progress
from pieces.domain.drying.march import march as plain


@dataclass(slots=True)
class _Engine:
    march: March = plain


_engine = _Engine()


def march(lanes: Lanes, table: Timetable, progress: Progress) -> int:
    """Carry all lanes on by the quickest march there is in this process."""
    return _engine.march(lanes, table, progress)


def is_compiled() -> bool:
    """Return whether this process uses the compiled loop."""
    return _engine.march is not plain


def use(chosen: March) -> None:
    """Have this process march so from now on: `compiled()`, or `plain`."""
    _engine.march = chosen


def compiled() -> March:
    """Return the compiled loop, ready to go; compiles it unless that was kept from before.

    Raises whatever numba raises where it is missing or cannot compile.
    """
    from numba import config

    settings: Any = config
    # numba keeps what it compiled until the file of the outermost function changes. Whatever
    # file of the sums changes, the folder is another one.
    usual = settings.CACHE_DIR
    settings.CACHE_DIR = str(Path(usual) / _digest()) if usual else usual
    try:
        from pieces.domain.drying import kernel
    finally:
        settings.CACHE_DIR = usual
    kernel.get_ready()
    return kernel.march


def _digest() -> str:
    said = hashlib.sha256()
    for file in sorted(Path(__file__).parent.glob("*.py")):
        said.update(file.read_bytes())
    return said.hexdigest()[:16]
