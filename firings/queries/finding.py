"""Whatever a studio keeps, by a few letters."""

from collections.abc import Sequence

from firings.domain.load_rules import STATE_WORDS
from firings.models import Load
from moulds.queries import finding as moulds
from pieces.queries import finding as pieces
from studio.domain.finding import best
from studio.models import Studio
from studio.queries import finding as studio_finding
from studio.queries.finding import LOOKED_THROUGH, MOST_OF_A_KIND, Hit, said

MOST = 50


def loads(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the loads of these letters: number, kiln, what kind. One query."""
    rows = Load.objects.of(studio).select_related("kiln").order_by("-starts_at")[:LOOKED_THROUGH]
    found = best(rows, words, _names_of_load, most=MOST_OF_A_KIND)
    return [Hit("load", row.pk, row.number, _beside(row), fit) for fit, row in found]


def everything(studio: Studio, words: Sequence[str], *, with_clients: bool = True) -> list[Hit]:
    """Return at most fifty things, those of that very name first. Nine queries; none for no word.

    Each kind comes in its own order; who may see the studio may see all that is named here.
    """
    if not words:
        return []
    hits = [
        *pieces.pieces(studio, words),
        *pieces.orders(studio, words, with_clients=with_clients),
        *moulds.mould_sets(studio, words),
        *loads(studio, words),
        *studio_finding.places(studio, words),
        *studio_finding.people(studio, words),
        *pieces.found_ware(studio, words),
    ]
    return sorted(hits, key=lambda hit: hit.fit)[:MOST]


def _names_of_load(row: Load) -> tuple[str, ...]:
    return row.number, row.kiln.number, row.kiln.name, row.kind, f"cone {row.cone}"


def _beside(row: Load) -> str:
    return said(f"{row.kind}, cone {row.cone}", row.kiln.number, STATE_WORDS[row.state])
