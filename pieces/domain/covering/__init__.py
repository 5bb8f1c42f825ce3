"""Covering: where drying may crack a piece, how to cover it, and how parts come to meet.

How to use it::

    strain = crack_index(state)                       # of each draw, now
    plan = plan_covers([PieceNow(...), ...], hours)   # for many pieces in one call
    meeting = meet([PartNow(...), ...], now_s)        # when parts are leather-hard together

An index of 1 is where a 12 mm wall, open on both faces at 20 °C and 50 % in still air, comes to.
That is a rule of thumb made into a number [calibrated], not a strength that anybody measured: show
`level` in words, never the number. Warping, plates lying on boards and joints are not in it.
"""

from pieces.domain.covering.cracking import HIGH, LIMIT, WATCH, Level, crack_index, level
from pieces.domain.covering.meeting import Meeting, PartNow, meet
from pieces.domain.covering.plan import CoverPlan, CoverStep, PieceNow, plan_covers
from pieces.domain.covering.unequal import Levelling, PartLine, drying_first, held_back, level_out

__all__ = [
    "HIGH",
    "LIMIT",
    "WATCH",
    "CoverPlan",
    "CoverStep",
    "Level",
    "Levelling",
    "Meeting",
    "PartLine",
    "PartNow",
    "PieceNow",
    "crack_index",
    "drying_first",
    "held_back",
    "level",
    "level_out",
    "meet",
    "plan_covers",
]
