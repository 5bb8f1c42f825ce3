"""What is asked of a kiln, and what the answer looks like."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final, Literal

from firings.domain.shapes import Footprint, Outline, Spot

Verdict = Literal["fits", "doubtful", "does_not_fit"]
Measured = Literal["wet", "dry", "bisque"]

GLAZE_GAP_MM: Final = 6.0
"""A quarter of an inch: https://hotkilns.com/node/4550"""
HEADROOM_MM: Final = 12.0
"""Half an inch to the shelf above and to the lid: https://hotkilns.com/node/4550"""
BISQUE_HEADROOM_MM: Final = 6.0
"""Paper-thin works for new bisque; 6 mm leaves something for a warped shelf. No source."""
REFIRE_HEADROOM_MM: Final = 4.0
"""An eighth of an inch at least, since ware expands more when fired again:
http://community.ceramicartsdaily.org/topic/17581-how-much-space-between-pots-and-next-shelf-in-kiln/
"""
BASE_POST_MM: Final = 25.0
"""One inch under the lowest shelf: https://hotkilns.com/node/4550"""
POSTS_PER_SHELF: Final = 3
POST_SPARE_MM: Final = 6.0
"""How far a post may stand from where it was meant to; set by hand, no source. [mm]"""


@dataclass(frozen=True, slots=True)
class Chamber:
    """The inside of a kiln; a round one is `width_mm` across. [mm]"""

    is_round: bool
    width_mm: float
    depth_mm: float
    height_mm: float


@dataclass(frozen=True, slots=True)
class ShelfStock:
    """The shelves of a kiln, all alike; a round one is `width_mm` across. [mm]"""

    is_round: bool
    width_mm: float
    depth_mm: float
    thickness_mm: float
    count: int

    @property
    def outline(self) -> Outline:
        return Outline(self.is_round, self.width_mm, self.depth_mm)


@dataclass(frozen=True, slots=True)
class PostStock:
    """Posts of one height, square with sides of `footprint_mm`. [mm]"""

    height_mm: float
    count: int
    footprint_mm: float
    stands_inside: bool = False


@dataclass(frozen=True, slots=True)
class Rules:
    """The spaces a studio keeps; `top_shelf_to_lid_mm` None where it keeps no such rule. [mm]"""

    gap_mm: float
    above_mm: float
    refire_above_mm: float = REFIRE_HEADROOM_MM
    lid_mm: float = HEADROOM_MM
    base_post_mm: float = BASE_POST_MM
    top_shelf_to_lid_mm: float | None = None

    @staticmethod
    def of(
        kind: str, *, bisque_may_touch: bool = True, glaze_gap_mm: float = GLAZE_GAP_MM
    ) -> "Rules":
        """Return the spaces of a bisque, where ware may touch, or of any other firing."""
        if kind != "bisque":
            return Rules(glaze_gap_mm, HEADROOM_MM)
        return Rules(0.0 if bisque_may_touch else glaze_gap_mm, BISQUE_HEADROOM_MM)


@dataclass(frozen=True, slots=True)
class Ware:
    """One piece at the size it has in this firing [mm]; None where nobody measured.

    `level` 1 is the lowest shelf; None leaves the choice.
    """

    id: str
    name: str
    width_mm: float | None
    depth_mm: float | None
    height_mm: float | None
    is_round: bool = False
    is_refire: bool = False
    level: int | None = None

    @property
    def is_measured(self) -> bool:
        return None not in (self.width_mm, self.depth_mm, self.height_mm)

    @property
    def footprint(self) -> Footprint:
        assert self.width_mm is not None  # asked of measured ware only
        assert self.depth_mm is not None
        return Footprint(self.width_mm, self.depth_mm, self.is_round)


@dataclass(frozen=True, slots=True)
class Sample:
    """Ware to try in the room that is left, by its words: "tile", "tiles"."""

    singular: str
    plural: str
    ware: Ware


@dataclass(frozen=True, slots=True)
class Problem:
    """A kiln, its furniture, the spaces to keep, and the ware. No posts: cut to measure."""

    chamber: Chamber
    shelf: ShelfStock
    rules: Rules
    ware: tuple[Ware, ...]
    posts: tuple[PostStock, ...] = ()
    samples: tuple[Sample, ...] = ()

    @property
    def inside_post(self) -> PostStock | None:
        """The broadest of the posts that stand on the shelf among the ware."""
        inside = [post for post in self.posts if post.stands_inside]
        return max(inside, key=lambda post: post.footprint_mm, default=None)


@dataclass(frozen=True, slots=True)
class Reason:
    """Why it is doubtful or does not fit: for which piece, on which level."""

    code: str
    detail: str
    ware_id: str | None = None
    level: int | None = None


@dataclass(frozen=True, slots=True)
class Item:
    """A piece where it would stand: its middle from the shelf's middle [mm], turned by 0 or 90."""

    ware_id: str
    spot: Spot

    @property
    def x_mm(self) -> float:
        return self.spot.x_mm

    @property
    def y_mm(self) -> float:
        return self.spot.y_mm

    @property
    def rotation_deg(self) -> int:
        return 90 if self.spot.is_turned else 0


@dataclass(frozen=True, slots=True)
class Level:
    """One shelf: its upper face above the kiln's floor, and the room up to the next. [mm]"""

    level: int
    floor_mm: float
    height_mm: float
    items: tuple[Item, ...]
    posts: tuple[tuple[float, float], ...] = ()
    room_left: str = ""
    room_spots: tuple[Spot, ...] = ()


@dataclass(frozen=True, slots=True)
class Result:
    """The answer.

    On one more shelf ware may be `spare_ware_mm` high, None where none stands; `layers_left` counts
    further layers of ware as high as the highest here.
    """

    verdict: Verdict
    reasons: tuple[Reason, ...]
    levels: tuple[Level, ...]
    left_out: tuple[str, ...]
    used_height_mm: float
    spare_ware_mm: float | None
    layers_left: int
    top_gap_mm: float
    sentence: str


@dataclass(frozen=True, slots=True)
class Capacity:
    """How much of one kind of ware a kiln takes. [mm]

    `per_layer_possible` is the number above which none can stand; between it and the sure one it is
    doubtful. `top_layer_sure` differs where posts stand among the ware of the layers below.
    """

    per_layer_sure: int
    per_layer_possible: int
    top_layer_sure: int
    layers: int
    total_sure: int
    used_height_mm: float
    spare_ware_mm: float | None
    top_gap_mm: float
    words: str


def headroom_mm(ware: Ware, rules: Rules) -> float:
    """Return what is kept free above a piece; a re-fire expands, so never less than its own."""
    return max(rules.above_mm, rules.refire_above_mm if ware.is_refire else 0.0)


def size_in_firing_mm(
    measured_mm: float,
    measured: Measured,
    firing: str,
    *,
    dry_fraction: float,
    bisque_fraction: float,
) -> float:
    """Return the size at which a piece goes into a firing: dry for bisque, bisqued for glaze.

    Parameters
    ----------
    measured_mm
        A length, as measured. [mm]
    measured
        When it was measured.
    firing
        Kind of load: a bisque takes dry ware, every other takes bisqued ware.
    dry_fraction, bisque_fraction
        Linear shrinkage of the body from wet to dry and from wet to bisqued, of the wet length.

    Returns
    -------
    The length, which never counts on shrinkage that has not happened. [mm]
    """
    if not 0.0 <= dry_fraction <= bisque_fraction < 1.0:
        raise ValueError("Shrinkage goes up from 0: wet to dry, wet to bisqued.")
    left = {"wet": 1.0, "dry": 1.0 - dry_fraction, "bisque": 1.0 - bisque_fraction}
    wanted = left["dry"] if firing == "bisque" else left["bisque"]
    return measured_mm * min(1.0, wanted / left[measured])


def only_measured(ware: Sequence[Ware]) -> tuple[Ware, ...]:
    return tuple(piece for piece in ware if piece.is_measured)


def with_ware(problem: Problem, ware: Sequence[Ware]) -> Problem:
    """Return the same question about other ware."""
    return replace(problem, ware=tuple(ware))
