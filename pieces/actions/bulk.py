"""The same of many by one act: all of them or none."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any
from uuid import UUID

from django.db import transaction

from pieces.models import Part, Piece
from studio.domain.refusals import Missing, Unworkable
from studio.models import Act, Studio

from . import checks, covers, moves, parts, stages
from .shapes import Visit


class SomeUnknown(Missing):
    code = "some-unknown"
    title = "Some of these are not in this studio."


class NoneLeft(Unworkable):
    code = "none-left"
    title = "Nothing is left to do it to."


@transaction.atomic
def do(*, act: Act, kind: str, rows: Sequence[Any], details: Mapping[str, Any]) -> None:
    """Do `kind` to every piece (or part) of `rows`.

    Raises what the single act raises, naming in `refused` each that does not go; then none went.
    """
    match kind:
        case "cover":
            covers.cover(act=act, pieces=rows, state=details["state"])
        case "move":
            moves.move(act=act, pieces=rows, place=details["place"])
        case "check":
            checks.check(act=act, pieces=rows, feel=details["feel"])
        case "stage":
            visit = Visit(
                details["stage"],
                details["state"],
                reason=details.get("reason", ""),
                place=details.get("place"),
                grade=details.get("grade", ""),
                glaze_batch=details.get("glaze_batch"),
            )
            stages.advance_all(act=act, visits=[(piece, visit) for piece in rows])
        case "lose":
            stages.lose(
                act=act,
                pieces=rows,
                state=details["state"],
                cause=details.get("cause", ""),
                cause_is_guess=details.get("cause_is_guess", False),
                reclaim=details.get("reclaim", ""),
            )
        case _:
            parts.record_events(act=act, parts=rows, kind=kind, cause=details.get("cause", ""))


def pieces_of(studio: Studio, ids: Iterable[UUID]) -> list[Piece]:
    """Return the pieces of those ids. Raises `SomeUnknown` and `NoneLeft`."""
    wanted = list(dict.fromkeys(ids))
    rows = Piece.objects.of(studio).filter(pk__in=wanted, is_undone=False)
    return _all(wanted, list(rows.select_related("design", "maker")))


def parts_of(studio: Studio, ids: Iterable[UUID]) -> list[Part]:
    """Return the parts of those ids. Raises `SomeUnknown` and `NoneLeft`."""
    wanted = list(dict.fromkeys(ids))
    rows = Part.objects.of(studio).filter(pk__in=wanted)
    return _all(wanted, list(rows.select_related("piece__design", "piece__maker")))


def _all(wanted: Sequence[UUID], rows: list[Any]) -> list[Any]:
    if not wanted:
        raise NoneLeft("All of them were left out.")
    unknown = sorted(set(wanted) - {row.pk for row in rows}, key=str)
    if unknown:
        raise SomeUnknown(
            "None of it was done: some are not known here.",
            refused=[{"id": str(pk), "detail": "Not known here."} for pk in unknown],
        )
    by_id = {row.pk: row for row in rows}
    return [by_id[pk] for pk in wanted]
