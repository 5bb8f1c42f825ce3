from .clashes import Clash, ClashAnswer
from .drying import Forecast
from .facts import Cover, Move, PartEvent, PieceFactQuerySet, PieceWeighing, StageEvent, TouchCheck
from .pieces import Part, Piece

__all__ = [
    "Clash",
    "ClashAnswer",
    "Cover",
    "Forecast",
    "Move",
    "Part",
    "PartEvent",
    "Piece",
    "PieceFactQuerySet",
    "PieceWeighing",
    "StageEvent",
    "TouchCheck",
]
