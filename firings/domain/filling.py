"""Share ware out over the shelves of a kiln: tallest first, so that like heights come together.

Greedy, bounded, and the same every time. Ware that has a level stays on it. Where posts stand among
the ware, the first layer says where, and the others keep those places free.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from firings.domain.arranging import arrange, arrange_with_posts
from firings.domain.fit_problem import Problem, Ware
from firings.domain.heights import stacked, stands
from firings.domain.placing import SCORES, set_down
from firings.domain.posts import stand_posts
from firings.domain.shapes import Spot, swollen_area_mm2

MOST_REARRANGED: Final = 4
"""How often a whole layer of unlike ware is set anew for one more piece; common sense, for time."""

MOST_SET_ANEW: Final = 0.85
"""Share of a shelf above which unlike ware with its gaps is not set anew; no source."""


@dataclass(slots=True)
class Layer:
    """The ware of one shelf and where it stands, in one order."""

    level: int
    ware: list[Ware] = field(default_factory=list)
    spots: list[Spot] = field(default_factory=list)


@dataclass(slots=True)
class Filling:
    """Layers from below, the posts among the ware, and what found no place."""

    problem: Problem
    has_posts: bool
    layers: list[Layer] = field(default_factory=list)
    posts: list[Spot] = field(default_factory=list)
    left_out: list[Ware] = field(default_factory=list)
    rearranged: int = 0
    failed: set[tuple[int, int, object]] = field(default_factory=set)

    def fill(self, ware: Sequence[Ware]) -> None:
        """Set down as much as finds a place."""
        for level in sorted({piece.level for piece in ware if piece.level is not None}):
            self._fill_level(level, [piece for piece in ware if piece.level == level])
        free = sorted(
            (piece for piece in ware if piece.level is None),
            key=lambda p: (-(p.height_mm or 0.0), -p.footprint.area_mm2, p.id),
        )
        for piece in free:
            if not any(self._add(layer, piece) for layer in self._by_slack(piece)):
                self._open_layer(piece)
        if self.has_posts and self.layers:
            self._free_top()

    def _fill_level(self, level: int, pieces: list[Ware]) -> None:
        layer = Layer(level)
        self.layers.append(layer)
        if self._set_all(layer, pieces):
            return
        for piece in sorted(pieces, key=lambda p: (-p.footprint.area_mm2, p.id)):
            if not self._add(layer, piece, may_grow=True):
                self.left_out.append(piece)

    def _by_slack(self, piece: Ware) -> list[Layer]:
        height = piece.height_mm or 0.0
        return sorted(self.layers, key=lambda layer: (_height(layer) < height, layer.level))

    def _open_layer(self, piece: Ware) -> None:
        level = max((layer.level for layer in self.layers), default=0) + 1
        layer = Layer(level)
        self.layers.append(layer)
        if level > self.problem.shelf.count or not self._add(layer, piece):
            self.layers.pop()
            self.left_out.append(piece)

    def _add(self, layer: Layer, piece: Ware, *, may_grow: bool = False) -> bool:
        key = (layer.level, len(layer.ware), piece.footprint)
        if key in self.failed or not (may_grow or self._stays_under_lid(layer, piece)):
            return False
        if self._set_one(layer, piece):
            return True
        is_like = {each.footprint for each in layer.ware} == {piece.footprint}
        may_help = self.rearranged < MOST_REARRANGED and self._is_loose(layer, piece)
        if layer.ware and (is_like or may_help):
            self.rearranged += not is_like
            if self._set_all(layer, [*layer.ware, piece]):
                return True
        self.failed.add(key)
        return False

    def _is_loose(self, layer: Layer, piece: Ware) -> bool:
        """Return whether the layer is empty enough for setting it anew to be worth the time."""
        outline, gap = self.problem.shelf.outline, self.problem.rules.gap_mm
        prints = [piece.footprint, *(each.footprint for each in layer.ware)]
        area = sum(
            swollen_area_mm2(each.is_round, each.width_mm, each.depth_mm, gap / 2.0)
            for each in prints
        )
        return area < MOST_SET_ANEW * outline.area_mm2

    def _set_one(self, layer: Layer, piece: Ware) -> bool:
        outline, gap = self.problem.shelf.outline, self.problem.rules.gap_mm
        standing = [*layer.spots, *self.posts]
        for score in SCORES:
            spot = set_down(outline, standing, piece.footprint, gap, score)
            if spot is None:
                return False
            if self._take(layer, [*layer.ware, piece], [*layer.spots, spot], None):
                return True
        return False

    def _set_all(self, layer: Layer, pieces: list[Ware]) -> bool:
        outline, gap = self.problem.shelf.outline, self.problem.rules.gap_mm
        prints = [piece.footprint for piece in pieces]
        post = self.problem.inside_post
        if not self.has_posts or self._others(layer) or post is None:
            spots = arrange(outline, prints, gap, self.posts)
            return spots is not None and self._take(layer, pieces, spots, self.posts)
        found = arrange_with_posts(outline, prints, gap, post.footprint_mm)
        return found is not None and self._take(layer, pieces, *found)

    def _take(
        self, layer: Layer, ware: list[Ware], spots: list[Spot], posts: list[Spot] | None
    ) -> bool:
        """Keep an arrangement; with posts not given, find them places if this layer decides."""
        post = self.problem.inside_post
        if posts is None:
            posts = self.posts
            if self.has_posts and post is not None and not self._others(layer):
                outline, gap = self.problem.shelf.outline, self.problem.rules.gap_mm
                found = stand_posts(outline, [spots], post.footprint_mm, gap)
                if found is None:
                    return False
                posts = found
        layer.ware, layer.spots, self.posts = ware, spots, posts
        return True

    def _free_top(self) -> None:
        """Set what is left out on the top layer, which carries no shelf and needs no posts."""
        top = max(self.layers, key=lambda layer: layer.level)
        outline, gap = self.problem.shelf.outline, self.problem.rules.gap_mm
        for piece in list(self.left_out):
            if piece.level not in (None, top.level) or not self._stays_under_lid(top, piece):
                continue
            spots = arrange(outline, [each.footprint for each in (*top.ware, piece)], gap)
            if spots is None:
                break
            top.ware, top.spots = [*top.ware, piece], spots
            self.left_out.remove(piece)

    def _others(self, layer: Layer) -> bool:
        return any(other.ware for other in self.layers if other is not layer)

    def _stays_under_lid(self, layer: Layer, piece: Ware) -> bool:
        layers = [
            [*other.ware, piece] if other is layer else other.ware
            for other in sorted(self.layers, key=lambda each: each.level)
        ]
        return stands(self.problem, stacked(self.problem, layers))


def _height(layer: Layer) -> float:
    return max((piece.height_mm or 0.0 for piece in layer.ware), default=0.0)
