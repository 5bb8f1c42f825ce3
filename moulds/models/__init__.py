from .designs import Design, DesignPart, Master, MasterEvent
from .facts import Booking, Inspection, MouldPartEvent, MouldWeighing, Pressing
from .sets import Casting, MouldPart, MouldSet

__all__ = [
    "Booking",
    "Casting",
    "Design",
    "DesignPart",
    "Inspection",
    "Master",
    "MasterEvent",
    "MouldPart",
    "MouldPartEvent",
    "MouldSet",
    "MouldWeighing",
    "Pressing",
]
