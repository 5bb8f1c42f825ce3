"""What is to be known of pieces before they join a load: a fixed number of queries."""

from collections.abc import Iterable, Sequence
from uuid import UUID

from django.db.models import Max

from firings.domain.cautions import Caution
from firings.domain.cautions import fired_again as fired_again_words
from firings.domain.cones import WareCone, check_cones
from firings.domain.dry_evidence import Evidence
from firings.domain.gate import Asked
from firings.domain.warm_hold import Inside, warm_hold_for_all
from firings.models import Load, Placement
from moulds.models import DesignPart
from pieces.domain.cautions import thick_wall
from pieces.domain.refire_words import wrong_and_mended
from pieces.domain.stages import Spot
from pieces.models import Piece
from studio.models import StudioSettings

from .evidence import evidence_of
from .loads import usual_cone
from .refires import fired_again, tickets_of
from .sizes import Sizes


class Gate:
    """The gate of one load for some pieces. Twelve queries, however many pieces."""

    def __init__(self, load: Load, pieces: Iterable[Piece]) -> None:
        self.load = load
        self.pieces = list(pieces)
        self.evidence = evidence_of(self.pieces)
        self.tickets = tickets_of(self.pieces, load.kind, load)
        self.usual_cone = usual_cone(load.studio, load.kind)
        self.sizes = Sizes(self.pieces)
        self.thickest_mm = thickest_of(self.pieces)
        self.wall_limit_mm = StudioSettings.objects.get(studio=load.studio_id).wall_limit_mm
        self.in_load = in_loads(self.pieces)
        self.again = fired_again(self.pieces, load)

    def asked(self, piece: Piece) -> Asked:
        """Return the piece as the rules see it."""
        shown = self.evidence.get(piece.pk, Evidence("none", False, ""))
        placed = self.in_load.get(piece.pk)
        return Asked(
            mark=piece.shown_mark,
            spot=Spot(piece.stage, piece.state),
            in_load=placed.load.number if placed else "",
            has_clash=piece.has_clash,
            is_unclaimed=piece.unclaimed_since is not None,
            is_dry=shown.is_ok,
            dry_words=shown.detail,
        )

    def check_cones(self) -> list[tuple[UUID, str, str]]:
        """Return doubts (piece, code, detail) about cone and body.

        Raises `MixedCones` when one of them waits for another cone or does not bear this one.
        """
        doubts = check_cones(self.load.cone, [self._ware(piece) for piece in self.pieces])
        return [(UUID(doubt.id), doubt.code, doubt.detail) for doubt in doubts]

    def warnings(self, piece: Piece) -> list[tuple[str, str]]:
        """Return (code, detail) of what to mind about one piece."""
        found = []
        thick = thick_wall(self.thickest_mm.get(piece.design_id, 0.0), self.wall_limit_mm)
        if thick is not None:
            found.append((thick.code, f"{piece.shown_mark}: {thick.detail}"))
        if piece.pk in self.again:
            found.append(self._fired_again(piece))
        if self.load.kind == "glaze" and piece.has_interrupted_bisque:
            detail = f"{piece.shown_mark}: its bisque was interrupted; the glaze may crawl."
            found.append(("interrupted-bisque", detail))
        if piece.is_damaged:
            found.append(("damaged", f"{piece.shown_mark} was reported damaged: look first."))
        return found

    def _fired_again(self, piece: Piece) -> tuple[str, str]:
        ticket = self.tickets.get(piece.pk)
        why = wrong_and_mended(ticket.fault, ticket.mended) if ticket is not None else ""
        said = fired_again_words(cone=ticket.cone if ticket is not None else None, why=why)
        return said.code, f"{piece.shown_mark}: {said.detail}"

    def _ware(self, piece: Piece) -> WareCone:
        ticket, body = self.tickets.get(piece.pk), self.sizes.body_of(piece)
        # Without a ticket a piece waits for what the studio always fires to.
        # Fired again, it waits for a cone that somebody chose on purpose.
        is_usual = self.load.cone == self.usual_cone and piece.pk not in self.again
        usual = self.load.cone if is_usual else None
        return WareCone(
            id=str(piece.pk),
            name=piece.shown_mark,
            cone=ticket.cone if ticket is not None else usual,
            top_cone=(body.top_cone or None) if body is not None else None,
        )


def in_loads(pieces: Sequence[Piece]) -> dict[UUID, Placement]:
    """Return the load that each piece is in, if it is in one. One query."""
    rows = Placement.objects.filter(piece__in=[piece.pk for piece in pieces], is_live=True)
    found = {}
    for row in rows.select_related("load__kiln"):
        assert row.piece_id is not None  # filtered above
        found[row.piece_id] = row
    return found


def warm_hold(gate: Gate, inside: Iterable[Piece]) -> Caution | None:
    """Return whether all in a bisque are to wait for its thick ware.

    One query, none where the gate has looked at all of them.
    """
    if gate.load.kind != "bisque":
        return None
    pieces = list(inside)
    others = [piece for piece in pieces if piece.design_id not in gate.thickest_mm]
    thickest, limit_mm = gate.thickest_mm | thickest_of(others), gate.wall_limit_mm
    return warm_hold_for_all(
        [
            Inside(
                piece.shown_mark,
                piece.maker.first_name if piece.maker else "",
                thick_wall(thickest.get(piece.design_id, 0.0), limit_mm) is not None,
            )
            for piece in pieces
        ]
    )


def thickest_of(pieces: Iterable[Piece]) -> dict[UUID, float]:
    """Return the thickest section of each design. One query. [mm]"""
    rows = DesignPart.objects.filter(design__in={piece.design_id for piece in pieces})
    thickest = rows.values_list("design_id").annotate(most=Max("thickest_mm"))
    return {design_id: most for design_id, most in thickest if most is not None}
