"""What becomes of the size when a mould is taken from a fired piece.

Ware shrinks by S from pressing to firing, so a piece from a mould of a fired piece comes out
(1 - S) times as large; the model must be 1 / (1 - S) times the fired piece to give the same size
again. A vase cast from a mould of a fired vase came out smaller by about a tenth:
https://mymamastable.blogspot.com/2010/01/very-big-mold.html
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class FromFired:
    """Sizes of a mould taken off a fired piece, all of one length. [mm]"""

    fired_mm: float
    would_become_mm: float
    model_mm: float


def from_fired(fired_mm: float, shrinkage_fraction: float) -> FromFired:
    """Return what a fired piece would become, and the model that keeps its size.

    Parameters
    ----------
    fired_mm
        A length of the fired piece, above 0. [mm]
    shrinkage_fraction
        Total linear shrinkage of the clay from pressing to firing, 0 to below 1.

    Raises
    ------
    ValueError
        When an argument lies outside its range.
    """
    if not fired_mm > 0 or not 0 <= shrinkage_fraction < 1:
        raise ValueError("fired_mm must be above 0 and shrinkage_fraction from 0 to below 1.")
    kept = 1.0 - shrinkage_fraction
    return FromFired(fired_mm, fired_mm * kept, fired_mm / kept)
