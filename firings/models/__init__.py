from .decisions import LoadFees
from .facts import FiringTicket, KilnReading, LoadEvent, QueueTurn, WitnessCone
from .kilns import Kiln, KilnEvent, Post, Shelf
from .loads import Load, Placement
from .programmes import FiringKind, Programme, Segment
from .service import KilnService
from .shares import Share, ShareOpened

__all__ = [
    "FiringKind",
    "FiringTicket",
    "Kiln",
    "KilnEvent",
    "KilnReading",
    "KilnService",
    "Load",
    "LoadEvent",
    "LoadFees",
    "Placement",
    "Post",
    "Programme",
    "QueueTurn",
    "Segment",
    "Share",
    "ShareOpened",
    "Shelf",
    "WitnessCone",
]
