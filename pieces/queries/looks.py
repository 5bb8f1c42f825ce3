"""What people saw of parts: weighings, touches, and moulds that would not let go yet."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from datetime import datetime
from typing import Any
from uuid import UUID

from pieces.domain.learning.looks import Look, LookKind
from pieces.models import Part, PartEvent, PieceWeighing, TouchCheck
from studio.models import Place, Studio

GONE = (Part.State.SCRAPPED, Part.State.REPLACED)


def looks_of(
    studio: Studio, *, piece_ids: Collection[UUID] | None = None
) -> dict[UUID, list[Look]]:
    """Return the looks at each part that has any (four queries).

    What was said of a whole piece is said of its heaviest part: the one that is last to dry.
    Weighings from before the piece was joined are left out, since it weighed less then.
    """
    checks = _of(TouchCheck.objects.of(studio), piece_ids).exclude(feel=TouchCheck.Feel.FINE)
    weighed = _of(PieceWeighing.objects.of(studio), piece_ids)
    held = _of(PartEvent.objects.of(studio), piece_ids).filter(kind=PartEvent.Kind.NOT_YET)
    touched_rows = list(
        checks.values_list("piece_id", "part_id", "happened_at", "entry__member_id", "feel")
    )
    weighed_rows = list(
        weighed.values_list("piece_id", "happened_at", "entry__member_id", "mass_g")
    )
    seen = {row[0] for row in (*touched_rows, *weighed_rows)}
    leading = _leading(seen)
    found: defaultdict[UUID, list[Look]] = defaultdict(list)
    for piece, part, at, who, feel in touched_rows:
        of = part or (leading[piece].pk if piece in leading else None)
        if of is not None:
            found[of].append(Look(at.timestamp(), str(who), LookKind.TOUCHED, feel=feel))
    joined = _joined(seen)
    for piece, at, who, mass_g in weighed_rows:
        if piece in leading and at >= joined.get(piece, at):
            found[leading[piece].pk].append(
                Look(at.timestamp(), str(who), LookKind.WEIGHED, mass_g=mass_g)
            )
    for part, at, who in held.values_list("part_id", "happened_at", "entry__member_id"):
        found[part].append(Look(at.timestamp(), str(who), LookKind.NOT_YET))
    return dict(found)


def rooms(studio: Studio) -> dict[UUID, str]:
    """Return, for each place, the room it is in: what its pieces' air has in common (one query)."""
    rows = {
        pk: (parent, kind)
        for pk, parent, kind in Place.objects.of(studio).values_list("pk", "parent_id", "kind")
    }
    found: dict[UUID, str] = {}
    for pk in rows:
        at: UUID = pk
        while rows[at][1] != Place.Kind.ROOM:
            parent = rows[at][0]
            if parent is None or parent not in rows:
                break
            at = parent
        found[pk] = str(at)
    return found


def _of(rows: Any, piece_ids: Collection[UUID] | None) -> Any:
    standing = rows.standing()
    return standing if piece_ids is None else standing.filter(piece_id__in=piece_ids)


def _leading(piece_ids: Iterable[UUID]) -> Mapping[UUID, Part]:
    parts = (
        Part.objects.filter(piece_id__in=set(piece_ids))
        .exclude(state__in=GONE)
        .exclude(pressed_at=None, pressing=None, state=Part.State.TO_PRESS)
        .select_related("design_part")
        .order_by("pk")
    )
    found: dict[UUID, Part] = {}
    for part in parts:
        if part.piece_id not in found or _weight(part) > _weight(found[part.piece_id]):
            found[part.piece_id] = part
    return found


def _weight(part: Part) -> tuple[float, float]:
    return part.design_part.clay_g or 0.0, part.design_part.thickest_mm


def _joined(piece_ids: Iterable[UUID]) -> dict[UUID, datetime]:
    found: dict[UUID, datetime] = {}
    rows = Part.objects.filter(piece_id__in=set(piece_ids)).exclude(joined_at=None)
    for piece, at in rows.values_list("piece_id", "joined_at"):
        if at is not None:
            found[piece] = max(at, found.get(piece, at))
    return found
