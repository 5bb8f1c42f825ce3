"""Instants as the answers tell them."""

from __future__ import annotations

import math
from datetime import UTC, datetime


def instant(at_s: float | None) -> str | None:
    """Return an instant in UTC; None for one that never comes."""
    return iso(at_s) if at_s is not None and math.isfinite(at_s) else None


def iso(at_s: float) -> str:
    """Return seconds since 1970 as RFC 3339 in UTC, to the second."""
    return datetime.fromtimestamp(round(at_s), tz=UTC).isoformat().replace("+00:00", "Z")
