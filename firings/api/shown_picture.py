"""Where the ware of a load would stand, as it is shown."""

from typing import Any
from uuid import UUID

from firings.domain import cautions
from firings.domain.fit_problem import Item, Level, Problem, Reason, Result, Ware
from firings.domain.shapes import Spot
from firings.queries.fitting import SEPARATOR
from firings.queries.picture import Picture

Shown = dict[str, Any]


def shown_picture(picture: Picture) -> Shown:
    """Return the picture; without shelves nothing can be said, which makes it doubtful."""
    problem, result = picture.problem, picture.result
    if problem is None or result is None:
        unknown = cautions.NO_SHELVES
        reason = {"code": unknown.code, "detail": unknown.detail, "level": None}
        return {
            "verdict": "doubtful",
            "sentence": unknown.detail,
            "reasons": [{**reason, "placement_id": None, "piece_id": None}],
            "levels": [],
            "left_out": [],
            "used_height_mm": 0.0,
            "spare_ware_mm": None,
            "layers_left": 0,
            "tallest": None,
        }
    return _shown(problem, result, picture)


def _shown(problem: Problem, result: Result, picture: Picture) -> Shown:
    wares = {ware.id: ware for ware in problem.ware}
    measured = [ware for ware in problem.ware if ware.height_mm is not None]
    tallest = max(measured, key=lambda ware: ware.height_mm or 0.0, default=None)
    left_out = dict.fromkeys(_id(ware_id) for ware_id in result.left_out)
    return {
        "verdict": result.verdict,
        "sentence": result.sentence,
        "reasons": [_reason(reason, picture) for reason in result.reasons],
        "levels": [_level(level, problem, wares, picture) for level in result.levels],
        "left_out": list(left_out),
        "used_height_mm": result.used_height_mm,
        "spare_ware_mm": result.spare_ware_mm,
        "layers_left": result.layers_left,
        "tallest": {"mark": tallest.name, "height_mm": tallest.height_mm} if tallest else None,
    }


def _reason(reason: Reason, picture: Picture) -> Shown:
    return {
        "code": reason.code,
        "detail": reason.detail,
        "level": reason.level,
        **_named(reason.ware_id, picture),
    }


def _level(level: Level, problem: Problem, wares: dict[str, Ware], picture: Picture) -> Shown:
    shelf = problem.shelf
    return {
        "level": level.level,
        "shelf": {
            "shape": "round" if shelf.is_round else "rect",
            "width_mm": shelf.width_mm,
            "depth_mm": shelf.depth_mm,
            "thickness_mm": shelf.thickness_mm,
        },
        "floor_mm": level.floor_mm,
        "height_mm": level.height_mm,
        "room_left": {
            "words": level.room_left,
            "spots": [_spot(spot) for spot in level.room_spots],
        },
        "items": [_item(item, wares[item.ware_id], picture) for item in level.items],
        "posts": [{"x_mm": x_mm, "y_mm": y_mm} for x_mm, y_mm in level.posts],
    }


def _item(item: Item, ware: Ware, picture: Picture) -> Shown:
    return {
        **_named(item.ware_id, picture),
        "mark": ware.name,
        "rotation_deg": item.rotation_deg,
        **_spot(item.spot),
    }


def _spot(spot: Spot) -> Shown:
    return {
        "x_mm": spot.x_mm,
        "y_mm": spot.y_mm,
        "width_mm": spot.footprint.width_mm,
        "depth_mm": spot.footprint.depth_mm,
        "is_round": spot.footprint.is_round,
    }


def _named(ware_id: str | None, picture: Picture) -> Shown:
    found = _id(ware_id) if ware_id is not None else None
    piece_id = picture.pieces.get(found, found) if found is not None else None
    return {
        "placement_id": found if found in picture.pieces else None,
        "piece_id": piece_id,
    }


def _id(ware_id: str) -> UUID:
    return UUID(ware_id.partition(SEPARATOR)[0])
