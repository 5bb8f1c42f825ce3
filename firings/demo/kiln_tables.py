"""Kilns, programmes and the hours of loads as tables. Everything here is invented."""

from dataclasses import dataclass
from typing import Any, Final, NamedTuple


class KilnRow(NamedTuple):
    """A kiln, its age without the loads of the tables, and what stands in it."""

    number: str
    name: str
    chamber: dict[str, Any]
    top_c: float
    elements_changed_on: str
    firings_before: int
    hot_hours_before: float
    sensor_firings_before: int
    remarks: str
    shelf: dict[str, Any]
    posts: tuple[tuple[float, int], ...]
    cooling_k_per_h: float | None = None


def _square(mm: float, count: int) -> dict[str, Any]:
    shelf = {"width_mm": mm, "depth_mm": mm, "thickness_mm": 15.0}
    return {"shape": "rect", "count": count, **shelf}


# The logs hold 1.1 hot hours of K1 (F-203) and 6.5 of K2 (F-209).
KILNS: Final = (
    KilnRow(
        "K1", "Ox",
        {"kind": "front", "chamber": "rect", "width_mm": 600.0, "depth_mm": 600.0,
         "height_mm": 800.0},
        1280.0, "2025-03-01", 93, 638.9, 38, "bisque mostly; ohms +4 %",
        _square(560.0, 6), ((25.0, 12), (60.0, 16), (130.0, 12), (260.0, 8)),
    ),
    KilnRow(
        "K2", "Finch",
        {"kind": "top", "chamber": "round", "diameter_mm": 460.0, "height_mm": 570.0},
        1300.0, "2026-01-01", 68, 513.5, 68, "cones went hot on F-209; ohms +7 %",
        {"shape": "round", "diameter_mm": 430.0, "thickness_mm": 15.0, "count": 6},
        ((25.0, 12), (60.0, 12), (130.0, 9), (260.0, 6)), 0.155,
    ),
    KilnRow(
        "K3", "Ember",
        {"kind": "front", "chamber": "rect", "width_mm": 300.0, "depth_mm": 300.0,
         "height_mm": 300.0},
        1250.0, "", 17, 95.0, 17, "new in 2026; tests, small ornaments",
        _square(280.0, 3), ((25.0, 6), (60.0, 6)),
    ),
)  # fmt: skip
POST_FOOTPRINT_MM: Final = 40.0

# name, kind, cone, top °C, segments of (to °C, °C an hour, hold in minutes)
PROGRAMMES: Final = (
    ("Bisque 04, warm hold", "bisque", "04", 1063.0,
     ((85.0, 65.0, 120), (285.0, 200.0, 0), (885.0, 300.0, 0), (963.0, 180.0, 0),
      (1063.0, 60.0, 0))),
    ("Glaze 6", "glaze", "6", 1222.0,
     ((80.0, 60.0, 0), (1055.0, 150.0, 0), (1222.0, 60.0, 43))),
    ("Tests 6", "test", "6", 1222.0,
     ((80.0, 60.0, 0), (1055.0, 150.0, 0), (1222.0, 60.0, 43))),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Slot:
    """The hours of a load that its table leaves out; empty: as is usual.

    Usually the list opens three days ahead, ware is put on it five hours ahead and it is settled
    two hours ahead, when it closes; the kiln is loaded half an hour before it is lit.
    """

    ended: str = ""
    opened_c: float = 0.0
    shelved_min: int = 10
    listed: str = ""
    placed: str = ""
    settled: str = ""
    closes: str = ""
    loaded: str = ""


SLOTS: Final = {
    "F-201": Slot("2026-10-06 02:20", 62.0),
    "F-202": Slot("2026-10-10 04:00", 41.0),
    "F-203": Slot("2026-10-13 22:45", 94.0, shelved_min=5),
    "F-204": Slot(
        "2026-10-14 23:50", 71.0, listed="2026-10-14 14:40", placed="2026-10-14 14:45",
        settled="2026-10-14 14:50", closes="2026-10-14 15:00",
    ),
    "F-205": Slot("2026-10-17 04:30", 38.0),
    "F-206": Slot(
        "2026-10-17 20:00", 29.0, placed="2026-10-16 16:00", settled="2026-10-16 17:00",
    ),
    "F-207": Slot("2026-10-21 02:15", 66.0, shelved_min=15),
    "F-208": Slot("2026-10-23 16:55", loaded="2026-10-23 16:40"),
    "F-209": Slot(
        "2026-10-25 05:00Z", 27.0, listed="2026-10-24 11:30", placed="2026-10-24 12:00",
    ),
    "F-210": Slot(
        "2026-10-31 04:30", placed="2026-10-29 18:00", settled="2026-10-30 08:40",
        loaded="2026-10-30 16:30",
    ),
    "F-211": Slot(listed="2026-10-28 12:00", placed="2026-10-30 09:30"),
    "F-212": Slot(listed="2026-10-28 12:10", placed="2026-10-30 10:00"),
}  # fmt: skip

# K2 was out of use between these: what was said, and when.
OUT_OF_USE: Final = (
    ("K2", "out_of_use", "2026-10-23 16:58", "vent fan dead"),
    ("K2", "in_use", "2026-10-24 11:00", "vent fan renewed"),
)
CALLED_OFF_WHY: Final = "vent fan dead"
STOPPED_WHY: Final = "power lost"
BROKEN: Final = {"F-201": ("B04",)}

# What is no piece here: load, how many of what, who put it on, its size. [mm]
THINGS: Final = {
    "F-206": ("colour test bars", 12, "piet", {"width_mm": 25.0, "depth_mm": 10.0,
                                                "height_mm": 110.0}),
}  # fmt: skip

# The cone that a piece waits for: piece, kind, cone, who said so and when; what was wrong with it,
# what was mended, and in what words.
TICKETS: Final = (
    ("B01", "glaze", "6", "piet", "2026-10-19 12:00",
     "crawled", ("ground", "glazed_thicker"), "the back edge"),
)  # fmt: skip
