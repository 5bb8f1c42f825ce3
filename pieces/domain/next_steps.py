"""What a piece waits for, in a potter's words."""

from collections.abc import Sequence
from typing import Final

from pieces.domain import stages
from pieces.domain.stages import Spot, Step

WAITS_FOR: Final[dict[Spot, str]] = {
    stages.WANTS_MODEL: "its master, enlarged and ready",
    stages.WANTS_MOULD: "a casting fit for use",
    stages.TO_PRESS: "pressing",
    stages.IN_MOULD: "the clay to let go of its mould",
    stages.OUT: "joining, when its parts are equally leather-hard",
    stages.JOINED: "setting to dry: cover it",
    stages.DRYING: "somebody to call it bone dry, by weight or by touch",
    stages.BONE_DRY: "room in a bisque load",
    stages.IN_BISQUE: "the bisque kiln to be unloaded",
    stages.BISQUED: "glazing",
    stages.GLAZED: "room in a glaze load",
    stages.IN_GLAZE: "the glaze kiln to be unloaded",
    stages.GLAZE_FIRED: "somebody to check it",
    stages.CHECKED: "packing",
    stages.PACKED: "delivery",
    stages.MISSING: "somebody to find it",
}


def waits_for(spot: Spot, missing: Sequence[str], *, is_one_part: bool) -> str | None:
    """Return what the piece waits for; None when nothing more is to come.

    `missing` are the roles that the design requires and nobody has made yet.
    """
    if missing and spot in (stages.IN_MOULD, stages.OUT):
        return f"its {_listed(missing)} to be made"
    if spot == stages.OUT and is_one_part:
        return "setting to dry: cover it"
    return WAITS_FOR.get(spot)


def nexts(spot: Spot, *, is_one_part: bool, missed_at: Spot | None = None) -> list[Spot]:
    """Return the spots a person can say the piece came to, without a reason."""
    if spot == stages.MISSING:
        return [missed_at] if missed_at else []
    pressed_there = (stages.TO_PRESS, stages.IN_MOULD)
    return [s for s in stages.nexts(spot, is_one_part=is_one_part) if s not in pressed_there]


def backs(spot: Spot, *, is_one_part: bool) -> list[Spot]:
    """Return the spots to which the piece can go back, with a reason."""
    if spot.stage == "lost":
        return []
    return [
        end
        for end in stages.SPOTS
        if stages.step(spot, end, is_one_part=is_one_part) is Step.BACK
        and not (is_one_part and end == stages.JOINED)
    ]


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
