"""What to mind at a kiln, said where the act happens. Natch never says "safe".

Kilns are too hot to touch outside, and give off carbon monoxide, sulphur dioxide and fumes of
metals, so that they want extraction; steam bursts damp ware (common practice, from memory).
"""

from dataclasses import dataclass
from typing import Final


@dataclass(frozen=True, slots=True)
class Caution:
    """A code for screens and a sentence for people."""

    code: str
    detail: str


NOT_A_SAFETY_DEVICE: Final = Caution(
    "not-a-safety-device",
    "Natch keeps notes; it is not a safety device. It cannot see, stop or cool a kiln: somebody "
    "must go and look.",
)
BURNS_AND_FUMES: Final = Caution(
    "burns-and-fumes",
    "A kiln burns and gives off fumes: run the extractor, keep the door shut and the way clear, "
    "and follow the maker's book and your local codes.",
)
STEAM: Final = Caution(
    "damp-ware-bursts",
    "Water left in the wall turns to steam and bursts the pot and those beside it. Feel its "
    "thickest part, weigh it twice, or hold the whole kiln below 100 °C for longer.",
)
HOT_WHEN_OPENED: Final = Caution(
    "hot-when-opened",
    "Hot air and hot shelves burn; cold air cracks ware. Read the temperature first, open a crack, "
    "and wear gloves and glasses.",
)
LOOK_AT_CONES: Final = Caution(
    "look-at-cones", "A sensor drifts. The cones on each shelf say what the ware has had."
)
SHARP: Final = Caution(
    "sharp-when-unloaded",
    "Drips of glaze and broken ware cut. Gloves, glasses, and no bare hand over the shelf.",
)
FIRED_AGAIN: Final = Caution(
    "glaze-fired-again",
    "A second glaze firing can blister or craze more, and the ware swells: leave at least 3 mm "
    "(1/8 in) over it. Choose its cone on purpose.",
)
NO_SHELVES: Final = Caution(
    "no-shelves", "No shelves of this kiln are written down, so nobody can say what fits."
)
OVER_TOP: Final = Caution(
    "over-top",
    "That is over what this kiln may reach. Go and look now; switch it off if you are in doubt.",
)
INTERRUPTED: Final = Caution(
    "interrupted-firing",
    "It went out before its end. Glaze over such a bisque may crawl: try one piece first.",
)

AT: Final[dict[str, tuple[Caution, ...]]] = {
    "settled": (),
    "reopened": (),
    "loading": (BURNS_AND_FUMES, LOOK_AT_CONES),
    "started": (NOT_A_SAFETY_DEVICE, BURNS_AND_FUMES),
    "stopped": (NOT_A_SAFETY_DEVICE, INTERRUPTED),
    "resumed": (INTERRUPTED, NOT_A_SAFETY_DEVICE),
    "ended": (NOT_A_SAFETY_DEVICE, HOT_WHEN_OPENED),
    "opened": (HOT_WHEN_OPENED,),
    "unloaded": (SHARP, LOOK_AT_CONES),
    "called_off": (),
}
DRY_WARE: Final = Caution("dry-ware", "Every piece was weighed twice, felt, or called bone dry.")
SHELVES_WASHED: Final = Caution(
    "shelves-washed", "Shelves are washed, and no glaze stands on them."
)
WARM_HOLD: Final = Caution(
    "warm-hold-for-damp",
    "Ware that nobody showed to be dry is in it: hold the whole kiln below 100 °C first, and ask "
    "the others in it.",
)
CHECKLIST: Final = (
    Caution("cones-on-each-shelf", "Cones on each shelf, where the spy hole shows them."),
    Caution("vent-runs", "The extractor or vent runs."),
    Caution("who-watches", "Somebody watches, and knows it."),
    Caution("number-on-door", "Their telephone number hangs on the door."),
    Caution("nothing-near", "Nothing that burns stands near."),
)


def fired_again(*, cone: str | None, why: str) -> Caution:
    """Return what to mind of ware fired again; without a ticket since, it asks for the cone."""
    asked = f"Its ticket asks for cone {cone}." if cone else "No ticket says which cone: ask."
    said = f"{why.capitalize()}. " if why else ""
    return Caution(FIRED_AGAIN.code, f"{said}{FIRED_AGAIN.detail} {asked}")


def checklist(kind: str, *, clocks_change: str) -> tuple[Caution, ...]:
    """Return what to look at before lighting a load of a kind.

    `clocks_change` says so where they do in between.
    """
    own = {"bisque": (DRY_WARE,), "glaze": (SHELVES_WASHED,)}.get(kind, ())
    clocks = (Caution("clocks-change", clocks_change),) if clocks_change else ()
    return (*own, *CHECKLIST, *clocks)
