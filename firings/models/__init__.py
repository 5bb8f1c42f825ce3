from .facts import FiringTicket, KilnReading, LoadEvent, WitnessCone
from .kilns import Kiln, KilnEvent, Post, Shelf
from .loads import Load, Placement
from .programmes import FiringKind, Programme, Segment

__all__ = [
    "FiringKind",
    "FiringTicket",
    "Kiln",
    "KilnEvent",
    "KilnReading",
    "Load",
    "LoadEvent",
    "Placement",
    "Post",
    "Programme",
    "Segment",
    "Shelf",
    "WitnessCone",
]
