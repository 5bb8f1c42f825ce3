"""What shows that pieces are dry, for a fixed number of queries."""

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime
from uuid import UUID

from firings.domain.dry_evidence import Evidence, evidence
from pieces.models import Part, Piece, PieceWeighing


def evidence_of(pieces: Iterable[Piece]) -> dict[UUID, Evidence]:
    """Return what there is for each piece. Two queries."""
    pieces = list(pieces)
    ids = [piece.pk for piece in pieces]
    joined: dict[UUID, datetime] = {}
    parts = Part.objects.filter(piece__in=ids, joined_at__isnull=False)
    for piece_id, at in parts.values_list("piece_id", "joined_at"):
        assert at is not None
        joined[piece_id] = max(at, joined.get(piece_id, at))
    weighed: defaultdict[UUID, list[tuple[datetime, float]]] = defaultdict(list)
    rows = PieceWeighing.objects.filter(piece__in=ids).standing()
    for piece_id, at, mass_g in rows.values_list("piece_id", "happened_at", "mass_g"):
        if piece_id not in joined or at >= joined[piece_id]:
            weighed[piece_id].append((at, mass_g))
    return {
        piece.pk: evidence(
            is_called_dry=piece.state == "bone_dry",
            called_at=piece.since_at if piece.state == "bone_dry" else None,
            weighings=weighed.get(piece.pk, ()),
        )
        for piece in pieces
    }
