"""Windows made by hand, in seconds since an instant that means nothing."""

import math

from pieces.domain.drying import Quantiles, ReadinessWindows, Stage, Window

HOUR_S = 3600.0
NEVER = Quantiles(math.inf, math.inf, math.inf, 1.0)


def about(hour: float, *, spread: float = 1.0, p_never: float = 0.0) -> Quantiles:
    """Return quantiles `spread` hours apart round `hour`."""
    return Quantiles((hour - spread) * HOUR_S, hour * HOUR_S, (hour + spread) * HOUR_S, p_never)


def window(opens: float, closes: float) -> Window:
    return Window(about(opens), about(closes))


def windows(
    *,
    demould: Window | None = None,
    join: Window | None = None,
    shrunk: Quantiles | None = None,
    bisque: Quantiles | None = None,
    shut: frozenset[Stage] = frozenset(),
) -> ReadinessWindows:
    """Return a piece that lets go at 2 h, joins from 4 to 10 h and is dry at 60 h."""
    return ReadinessWindows(
        demould=demould or window(2, 10),
        join=join or window(4, 10),
        shrinkage_ended=shrunk or about(30),
        bisque=bisque or about(60),
        not_in_this_room=shut,
    )
