"""The air a piece met: that of one place after another, joined into one climate."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from pieces.domain.drying import Climate
from pieces.domain.drying.climate import HOUR_S

Stay = tuple[float, Climate]


def air_along(stays: Sequence[Stay], *, from_s: float) -> Climate:
    """Return the hourly air of a piece from `from_s` on.

    Parameters
    ----------
    stays
        (since when, air of that place), in order of time; the first reaches back to `from_s`. All
        climates begin at one hour, not after `from_s`, and end at one hour. [s since 1970]
    from_s
        Where the piece begins; taken to the whole hour before it. [s since 1970]

    Returns
    -------
    Climate: an hour belongs to where the piece stood in the middle of it. It is measured up to the
    last reading that was taken where the piece stood then.

    Raises
    ------
    ValueError
        Without stays, or when the climates do not cover the same hours from `from_s` on.
    """
    if not stays:
        raise ValueError("A piece stands somewhere.")
    places = [climate for _, climate in stays]
    first = places[0]
    if any((each.start_s, each.end_s) != (first.start_s, first.end_s) for each in places):
        raise ValueError("The climates must cover the same hours.")
    skip = int(from_s // HOUR_S) - first.start_s // HOUR_S
    if not 0 <= skip < len(first.air_c):
        raise ValueError("The climates must cover from_s.")
    hours = np.arange(skip, len(first.air_c))
    middles_s = first.start_s + (hours + 0.5) * HOUR_S
    where = np.searchsorted([since_s for since_s, _ in stays[1:]], middles_s, side="right")
    return Climate(
        start_s=first.start_s + skip * HOUR_S,
        air_c=np.stack([each.air_c for each in places])[where, hours],
        vapour_kg_m3=np.stack([each.vapour_kg_m3 for each in places])[where, hours],
        assumed=np.stack([each.assumed for each in places])[where, hours],
        measured_to_s=_measured_to_s(stays),
    )


def _measured_to_s(stays: Sequence[Stay]) -> float | None:
    ends = [since_s for since_s, _ in stays[1:]] + [np.inf]
    known = [
        min(climate.measured_to_s, end_s)
        for (since_s, climate), end_s in zip(stays, ends, strict=True)
        if climate.measured_to_s is not None and climate.measured_to_s >= since_s
    ]
    return max(known, default=None)
