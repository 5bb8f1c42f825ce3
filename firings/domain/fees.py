"""What a firing costs each maker: shares that add up to the penny, litres of a bounding box."""

import math
from collections.abc import Sequence
from fractions import Fraction

from studio.domain.refusals import Unworkable


class NothingToShare(Unworkable):
    code = "nothing-to-share"
    title = "There is nothing to share it by."


def split(cost_pence: int, volumes: Sequence[float]) -> tuple[int, ...]:
    """Return the cost shared by volume, to the penny, adding up exactly.

    Each share is cut to whole pence; what is left goes by one penny to the largest remainders, of
    equals to the first (the method of largest remainders).

    Parameters
    ----------
    cost_pence
        The cost, 0 or more. [pence]
    volumes
        What each has in the load, 0 or more, any unit. `(n,)`

    Raises
    ------
    ValueError
        When the cost or a volume is negative or not finite.
    NothingToShare
        When the volumes add up to nothing.
    """
    if cost_pence < 0 or not all(math.isfinite(v) and v >= 0.0 for v in volumes):
        raise ValueError("Cost and volumes are 0 or more.")
    # A decimal as typed, so that a tie is a tie: 22.5 of 100 l of 2740p is 616.5p exactly.
    exact = [Fraction(str(volume)) for volume in volumes]
    total = sum(exact)
    if not total:
        raise NothingToShare("No volume was measured for any of them.")
    shares = [cost_pence * volume / total for volume in exact]
    pence = [int(share) for share in shares]
    by_remainder = sorted(range(len(shares)), key=lambda i: (pence[i] - shares[i], i))
    for i in by_remainder[: cost_pence - sum(pence)]:
        pence[i] += 1
    return tuple(pence)


def box_litres(width_mm: float, depth_mm: float, height_mm: float) -> float:
    """Return the volume of a bounding box. Lengths in mm, volume in litres."""
    if min(width_mm, depth_mm, height_mm) <= 0.0:
        raise ValueError("A box has three lengths above 0 mm.")
    return width_mm * depth_mm * height_mm / 1e6
