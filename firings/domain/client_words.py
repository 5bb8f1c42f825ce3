"""What a client is shown of an order, in plain words: no mark of the trade that wants explaining.

Only what stands here can be told through a link: it names stages, days and marks, never a person's
contact, a price, a note, a shelf or another client.
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from datetime import date
from typing import Final

from pieces.domain.order_words import day
from pieces.domain.sets import Counts
from pieces.domain.stages import GLAZE_FIRED, UNFIRED
from pieces.domain.story import Visited

#: What a link to the client may show, in the order of the page.
ITEMS: Final = (
    "counts",
    "delivery",
    "approvals",
    "stages",
    "history",
    "losses",
    "papers",
)
PLAIN: Final = {
    "wants_model": "waiting to be begun",
    "wants_mould": "waiting to be begun",
    "to_press": "waiting to be begun",
    "in_mould": "being pressed",
    "out": "being put together",
    "joined": "put together",
    "drying": "drying",
    "bone_dry": "dry, waiting for the first firing",
    "in_bisque": "in the kiln for the first firing",
    "bisqued": "fired once, waiting for glaze",
    "glazed": "glazed, waiting for the second firing",
    "in_glaze": "in the kiln for the second firing",
    "glaze_fired": "fired with its glaze, to be looked over",
    "checked": "finished",
    "packed": "finished and packed",
    "delivered": "delivered",
}
#: What is told of a piece's way; a state that is not here is passed over.
EVENTS: Final = {
    "in_mould": "pressed",
    "joined": "put together",
    "drying": "set to dry",
    "bone_dry": "dry",
    "bisqued": "fired once",
    "glazed": "glazed",
    "glaze_fired": "fired with its glaze",
    "checked": "looked over and finished",
    "packed": "packed",
    "delivered": "delivered",
}
LOST: Final = "lost"
FOOD: Final = "Meant for food use. A record here is no declaration; ask for the papers."
DISPLAY: Final = "For display only, not for food."


def stood(counts: Sequence[tuple[str, int, Counts]], *, with_losses: bool) -> list[str]:
    """Return how each line stands, as in "sauce boat: 2 wanted, none finished, 4 being made".

    `counts` holds what a line is called, how many sets are wanted, what its pieces come to.
    """
    return [_stood(what, wanted, found, with_losses) for what, wanted, found in counts]


def _stood(what: str, wanted: int, found: Counts, with_losses: bool) -> str:
    ready = found.finished - found.delivered
    said = [
        f"{wanted} wanted",
        *([f"{found.delivered} delivered"] if found.delivered else []),
        f"{ready or 'none'} finished",
        *([f"{found.made - found.finished} being made"] if found.made > found.finished else []),
        *([f"{found.lost_pieces} lost on the way"] if with_losses and found.lost_pieces else []),
    ]
    return f"{what}: {', '.join(said)}"


def staged(states: Iterable[str]) -> list[tuple[str, int]]:
    """Return how many pieces are how far, the furthest first; the lost are left out."""
    counted = Counter(PLAIN[state] for state in states if state in PLAIN)
    order = list(dict.fromkeys(PLAIN.values()))
    return sorted(counted.items(), key=lambda row: -order.index(row[0]))


def worth_telling(visits: Iterable[Visited], *, with_losses: bool) -> list[Visited]:
    """Return the visits of a piece that a client is told of, in order of time.

    Each spot once, but for a glaze firing, of which there may be two; a piece that came back from
    a firing which was called off is told of nowhere, nor is its loss unless that was chosen.
    """
    found: list[Visited] = []
    for visit in visits:
        is_loss = visit.spot.stage == LOST
        is_told = with_losses if is_loss else visit.spot.state in EVENTS
        is_again = any(visit.spot == one.spot for one in found) and visit.spot != GLAZE_FIRED
        if is_told and not is_again and visit.reason not in UNFIRED:
            found.append(visit)
    return found


def expected(likely: tuple[date | None, date | None], promised: date | None) -> list[str]:
    """Return when it may be there and what was promised; a range, with what it is."""
    first, last = likely
    said = []
    if first is not None and last is not None:
        days = day(first) if first == last else f"{day(first)} to {day(last)}"
        said.append(f"Likely ready {days}. That is an estimate, not a promise.")
    if promised is not None:
        said.append(f"Promised for {day(promised)}.")
    return said or ["No day is promised yet."]
