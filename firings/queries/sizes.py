"""How big pieces are when they stand in a kiln: as drawn wet, less what the clay has shrunk."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from statistics import fmean
from typing import Literal
from uuid import UUID

from firings.domain.fees import box_litres
from firings.models import Placement
from pieces.domain.shrinkage import combine
from pieces.models import Piece
from studio.models import ClayBody, TestBar

Measured = Literal["wet", "dry", "bisque", "fired"]


@dataclass(frozen=True, slots=True)
class Size:
    """The box of a piece at one moment of the job. [mm]

    A round one is as wide as deep. `is_assumed` where the clay's shrinkage is not known, so that
    it is taken as big as when it was wet.
    """

    x_mm: float
    y_mm: float
    height_mm: float
    is_round: bool
    measured: Measured
    is_assumed: bool = False

    @property
    def litres(self) -> float:
        return box_litres(self.x_mm, self.y_mm, self.height_mm)


class Sizes:
    """The sizes of pieces (with their `design` and `body` at hand). At most three queries."""

    def __init__(self, pieces: Iterable[Piece]) -> None:
        pieces = list(pieces)
        ids = [pk for pk in map(_body_id, pieces) if pk is not None]
        self.bodies = {body.pk: body for body in ClayBody.objects.filter(pk__in=ids)}
        self.bisque = _bisque_shrinkages(self.bodies)

    def of(self, piece: Piece, measured: Measured) -> Size | None:
        """Return the size, None when its design has none."""
        drawn = piece.design
        x_mm, y_mm, height_mm = drawn.footprint_x_mm, drawn.footprint_y_mm, drawn.height_mm
        if x_mm is None or y_mm is None or height_mm is None:
            return None
        shrunk = self._shrinkage(piece, measured)
        left = 1.0 - (shrunk or 0.0)
        if drawn.is_round:
            x_mm = y_mm = max(x_mm, y_mm)
        return Size(
            x_mm=x_mm * left,
            y_mm=y_mm * left,
            height_mm=height_mm * left,
            is_round=drawn.is_round,
            measured=measured,
            is_assumed=shrunk is None,
        )

    def body_of(self, piece: Piece) -> ClayBody | None:
        """Return what the piece is made of, by its own word or its design's."""
        body_id = _body_id(piece)
        return self.bodies.get(body_id) if body_id is not None else None

    def _shrinkage(self, piece: Piece, measured: Measured) -> float | None:
        body = self.body_of(piece)
        if measured == "wet":
            return 0.0
        if measured == "fired" and body is not None:
            return body.total_shrinkage_fraction
        if body is None or body.dry_shrinkage_fraction is None:
            return None
        if measured == "dry":
            return body.dry_shrinkage_fraction
        return combine(body.dry_shrinkage_fraction, self.bisque.get(body.pk, 0.0))


def thing_size(row: Placement) -> Size | None:
    """Return the size that was said of what is no piece here, None where none was."""
    if row.width_mm is None or row.height_mm is None:
        return None
    depth_mm = row.depth_mm if row.depth_mm is not None else row.width_mm
    return Size(row.width_mm, depth_mm, row.height_mm, row.is_round, "dry")


def measured_for(kind: str) -> Measured:
    """Return at which moment ware is measured for a firing: dry for a bisque, bisqued for glaze."""
    return "dry" if kind == "bisque" else "bisque"


def _body_id(piece: Piece) -> UUID | None:
    return piece.body_id or piece.design.body_id


def _bisque_shrinkages(bodies: Iterable[UUID]) -> dict[UUID, float]:
    """Return what each body shrinks in the bisque firing, by its bars where it has any."""
    found: defaultdict[UUID, list[float]] = defaultdict(list)
    bars = TestBar.objects.filter(body__in=list(bodies), dry_mm__gt=0, bisque_mm__isnull=False)
    for body_id, dry_mm, bisque_mm in bars.values_list("body_id", "dry_mm", "bisque_mm"):
        assert dry_mm is not None
        assert bisque_mm is not None
        found[body_id].append(1.0 - bisque_mm / dry_mm)
    return {body_id: max(0.0, fmean(values)) for body_id, values in found.items()}
