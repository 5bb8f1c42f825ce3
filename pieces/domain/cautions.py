"""What is worth saying where an act happens. Natch says what to mind; it never says "safe".

Sources: respirable crystalline silica, workplace exposure limit 0.1 mg/m³ over 8 hours (HSE,
EH40/2005, 4th edition 2020). Water left in the wall turns to steam while the kiln is still below
red heat and bursts the ware: common practice, as is the wider gap over ware fired again.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from pieces.domain import stages
from pieces.domain.stages import Spot


@dataclass(frozen=True, slots=True)
class Caution:
    """A code for screens and a sentence for people."""

    code: str
    detail: str


DAMP_IN_THE_KILN: Final = Caution(
    "not-called-bone-dry",
    "Nobody has called it bone dry. Water left in the wall turns to steam and bursts the pot and "
    "those beside it: feel it, weigh it twice, or hold the kiln below 100 °C for longer.",
)
DUST: Final = Caution(
    "silica-dust",
    "Do not sand or scrape it dry: the dust scars lungs. Use a damp sponge, or wear a fitted mask "
    "and clean up wet.",
)
FIRED_AGAIN: Final = Caution(
    "glaze-fired-again",
    "A second glaze firing can blister or craze more. Leave 3 mm (1/8 in) more room over it, and "
    "choose its cone on purpose.",
)
INTERRUPTED: Final = Caution(
    "interrupted-bisque", "Its bisque was interrupted: the glaze may crawl. Try one piece first."
)
UNEQUAL_DAMPNESS: Final = Caution(
    "join-alike", "Join parts of like dampness: unlike ones crack at the join as they dry."
)
FOOD_USE: Final = Caution(
    "food-use-not-declared",
    "Meant for food: that wants a test report for its glaze, firing and depth; none is known here.",
)
REPORT_KEPT: Final = Caution(
    "food-use-report-kept",
    "A report is kept here as it was written. Whether it is about this glaze batch, firing and "
    "depth is for a person to say; nothing is declared by keeping it.",
)
DISPLAY_ONLY: Final = Caution("display-only", "For display only, not for food.")
TWO_STORIES: Final = Caution(
    "two-stories", "Two people told two stories of it. Somebody must say which stands."
)
DAMAGED: Final = Caution(
    "damaged", "Somebody reported damage: look, then decide what becomes of it."
)


def on_coming_to(
    spot: Spot, visited: Sequence[Spot], *, has_interrupted_bisque: bool = False
) -> list[Caution]:
    """Return what to mind when a piece comes to a spot, given where it has been so far."""
    said: list[Caution] = []
    if spot == stages.IN_BISQUE and not _was_called_dry(visited):
        said.append(DAMP_IN_THE_KILN)
    if spot == stages.BONE_DRY:
        said.append(DUST)
    if spot in (stages.GLAZED, stages.IN_GLAZE) and stages.GLAZE_FIRED in visited:
        said.append(FIRED_AGAIN)
    if spot == stages.GLAZED and has_interrupted_bisque:
        said.append(INTERRUPTED)
    return said


def thick_wall(thickest_mm: float, limit_mm: float) -> Caution | None:
    """Return a word about a section above the studio's limit; None at or below it. [mm]"""
    if thickest_mm <= limit_mm:
        return None
    return Caution(
        "thick-wall",
        f"{thickest_mm:g} mm at its thickest; the studio's limit is {limit_mm:g} mm. It dries and "
        "fires slower than its neighbours: give it a longer hold below 100 °C.",
    )


def _was_called_dry(visited: Sequence[Spot]) -> bool:
    """Say whether it was called bone dry since it was last wet; a bisqued piece was."""
    for spot in reversed(visited):
        if spot in (stages.BONE_DRY, stages.BISQUED):
            return True
        if spot in (stages.DRYING, stages.JOINED, stages.OUT):
            return False
    return False
