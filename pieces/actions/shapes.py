"""What the actions of pieces are given."""

from dataclasses import dataclass
from uuid import UUID

from moulds.models import Design
from pieces.domain.stages import Spot
from pieces.models import CommissionLine, Piece
from studio.models import ClayBody, GlazeBatch, Member, Place


@dataclass(frozen=True, slots=True)
class PieceGiven:
    """A piece that is meant or made; an id that exists already means that piece.

    Without a mark it gets the next number of its design's series; without a maker it is the
    writer's, unless it is nobody's: found on a shelf, say.
    """

    id: UUID
    design: Design
    mark: str | None = None
    maker: Member | None = None
    body: ClayBody | None = None
    use: str = Piece.Use.FOOD
    line: CommissionLine | None = None
    is_nobodys: bool = False


@dataclass(frozen=True, slots=True)
class PartGiven:
    """A part that was pressed, of a piece that may be new; `replaces` is the part it stands for."""

    id: UUID
    role: str
    piece: PieceGiven
    replaces: UUID | None = None


@dataclass(frozen=True, slots=True)
class Visit:
    """A spot of the job that a piece came to.

    `occasion_id` and `occasion_name` are opaque here: they name the firing that brought it there.
    `glaze_batch` is what it was dipped in, where it came to be glazed.
    """

    stage: str
    state: str
    reason: str = ""
    place: Place | None = None
    occasion_id: UUID | None = None
    occasion_name: str = ""
    grade: str = ""
    is_interrupted: bool = False
    glaze_batch: GlazeBatch | None = None

    @property
    def spot(self) -> Spot:
        return Spot(self.stage, self.state)


@dataclass(frozen=True, slots=True)
class Warned:
    """Something worth saying beside an act that was accepted; it never holds an act back."""

    code: str
    detail: str
