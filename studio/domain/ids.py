"""Identifiers that sort by the time they were made (UUID version 7, RFC 9562 §5.7)."""

import os
import time
from uuid import UUID


def uuid7(unix_ms: int | None = None) -> UUID:
    """Return a version 7 UUID: 48 bits of Unix milliseconds, then 74 random bits."""
    moment = time.time_ns() // 1_000_000 if unix_ms is None else unix_ms
    tail = int.from_bytes(os.urandom(10))
    value = (moment & (1 << 48) - 1) << 80 | tail
    value = value & ~(0xF << 76) | 0x7 << 76
    value = value & ~(0x3 << 62) | 0x2 << 62
    return UUID(int=value)
