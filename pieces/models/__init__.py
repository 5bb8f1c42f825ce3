from .approvals import Approval, ApprovalAnswer
from .clashes import Clash, ClashAnswer
from .commissions import Assignment, Commission, Match, SetRecipe, TestReport
from .drying import Forecast
from .facts import Cover, Move, PartEvent, PieceFactQuerySet, PieceWeighing, StageEvent, TouchCheck
from .found import Claim, FoundPiece
from .learning import Learned, Lesson
from .pieces import CommissionLine, Part, Piece, Use

__all__ = [
    "Approval",
    "ApprovalAnswer",
    "Assignment",
    "Claim",
    "Clash",
    "ClashAnswer",
    "Commission",
    "CommissionLine",
    "Cover",
    "Forecast",
    "FoundPiece",
    "Learned",
    "Lesson",
    "Match",
    "Move",
    "Part",
    "PartEvent",
    "Piece",
    "PieceFactQuerySet",
    "PieceWeighing",
    "SetRecipe",
    "StageEvent",
    "TestReport",
    "TouchCheck",
    "Use",
]
