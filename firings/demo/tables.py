"""Sallowbeck Yard as tables. Everything here is invented; any likeness is accidental.

Wall-clock times are Europe/London; the demo clock stands at Saturday 31 October 2026, 09:00.
"""

from typing import Final, NamedTuple

SLUG: Final = "sallowbeck-yard"
NAME: Final = "Sallowbeck Yard"
ZONE: Final = "Europe/London"
CLOCK: Final = "2026-10-31 09:00"
FOUNDED: Final = "2026-08-31 09:00"


class PersonRow(NamedTuple):
    """One of the five people."""

    username: str
    full_name: str
    initials: str
    roles: tuple[str, ...]
    helps: tuple[str, ...] = ()
    choices: tuple[tuple[str, object], ...] = ()

    @property
    def first_name(self) -> str:
        return self.full_name.split()[0]


PEOPLE: Final = (
    PersonRow("odile", "Odile Farrant", "OF", ("owner",), choices=(("is_left_handed", True),)),
    PersonRow(
        "bram",
        "Bram Tolley",
        "BT",
        ("maker",),
        choices=(("length_unit", "in"), ("text_percent", 200)),
    ),
    PersonRow("jun", "Jun Haskett", "JH", ("maker",)),
    PersonRow("nessa", "Nessa Quill", "NQ", ("helper",), helps=("odile",)),
    PersonRow(
        "piet",
        "Piet Arrowby",
        "PA",
        ("technician", "maker"),
        choices=(("temperature_unit", "f"),),
    ),
)

# Minor units of the currency a litre, by the bounding box of the dry piece.
TARIFF: Final = {"bisque_fee_minor_per_l": 180, "glaze_fee_minor_per_l": 260}


class PlaceRow(NamedTuple):
    """A place, inside its parent."""

    name: str
    kind: str
    parent: str = ""
    air_from: str = ""


PLACES: Final = (
    PlaceRow("Drying room", "room"),
    PlaceRow("Bench room", "room", air_from="Drying room"),
    PlaceRow("Kiln shed", "room"),
    *(PlaceRow(f"Bench {n}", "bench", "Bench room") for n in (1, 2, 3)),
    *(PlaceRow(f"Shelf P{n}", "shelf", "Bench room") for n in (1, 2, 3)),
    *(PlaceRow(f"Tin {n}", "crate", "Bench room") for n in (1, 2, 4)),
    *(PlaceRow(f"Rack {rack}", "rack", "Drying room") for rack in "ABCD"),
    *(PlaceRow(f"Rack {rack}{n}", "shelf", f"Rack {rack}") for rack in "ABCD" for n in (1, 2, 3)),
    *(PlaceRow(f"Damp cupboard {n}", "cupboard", "Drying room") for n in (1, 2)),
    PlaceRow("Unclaimed shelf", "shelf", "Drying room"),
    PlaceRow("Put-right shelf", "shelf", "Bench room"),
    PlaceRow("Crate 1", "crate", "Bench room"),
    PlaceRow("Reclaim bin U", "crate", "Bench room"),
    *(PlaceRow(name, "kiln", "Kiln shed") for name in ("K1 Ox", "K2 Finch", "K3 Ember")),
)

BODIES: Final = (
    ("CR", "cream, base", 0.060, 0.116, ""),
    ("UM", "umber", 0.061, 0.119, "Brown stain: gloves, and no dust."),
    ("SL", "slate blue", 0.062, 0.121, "Blue stain holds cobalt: gloves, and no dust."),
)
DRYING_BODY: Final = "smooth_stoneware"  # fired to cone 6, shrinks by 6 % in drying

# label, body, stain g, clay g, mixed on
BATCHES: Final = (("CB-31", "UM", 474.0, 10_000.0, "2026-09-18"),)

# label, name, mixed on, mixed by, density g/l, cone, caution: all that was glazed so far
GLAZES: Final = (
    ("GZ-04", "clear", "2026-10-01", "odile", 1450.0, "6", ""),
)  # fmt: skip

# label, laid on, bodies
BLOCKS: Final = (
    ("BK-14", "2026-09-22", ("CR", "UM")),
    ("BK-15", "2026-10-12", ("CR", "UM", "SL")),
    ("BK-16", "2026-10-28", ("CR", "UM")),
)


class PartRow(NamedTuple):
    """A clay part of a design, as pressed."""

    role: str
    shape: str
    thickest_mm: float
    thinnest_mm: float
    footprint: tuple[float, float, float] | None
    clay_g: float
    number: int = 1
    method: str = "pressed"
    is_required: bool = True


class DesignRow(NamedTuple):
    """A design with its size as joined, wet; how deep it is inside and what it holds, as fired."""

    name: str
    noun: str
    series: str
    parts: tuple[PartRow, ...]
    size: tuple[float, float, float]
    uses_moulds: bool = True
    is_round: bool = False
    inside_depth_mm: float | None = None
    capacity_ml: float | None = None
    contact: str = "table"


DESIGNS: Final = (
    DesignRow(
        "barley-row hearth tile",
        "tile",
        "T",
        (PartRow("tile", "flat", 10, 8, (169.7, 169.7, 12), 560),),
        (169.7, 169.7, 12),
    ),
    DesignRow(
        "ribbed sauce boat",
        "sauce boat",
        "S",
        (
            PartRow("body", "flat", 11, 7, (220, 95, 95), 720),
            PartRow("handle", "rod", 12, 9, None, 70),
        ),
        (245, 95, 120),
        inside_depth_mm=58,
        capacity_ml=310,
    ),
    DesignRow(
        "pine-knop jar",
        "jar",
        "J",
        (PartRow("jar", "flat", 12, 7, (125, 125, 137), 900),),
        (125, 125, 137),
        is_round=True,
        inside_depth_mm=108,
        capacity_ml=600,
    ),
    DesignRow(
        "pine-knop lid",
        "lid",
        "L",
        (
            PartRow("lid", "flat", 12, 7, (118, 118, 45), 260),
            PartRow("knop", "lump", 20, 20, None, 25, method="sprigged"),
        ),
        (118, 118, 65),
        is_round=True,
        contact="lid",
    ),
    DesignRow(
        "inkstand with two pots",
        "inkstand",
        "I",
        (
            PartRow("tray", "flat", 11, 8, (240, 160, 40), 800),
            PartRow("pot", "flat", 8, 6, (60, 60, 55), 160, number=2, is_required=False),
            PartRow("foot", "lump", 22, 22, (30, 30, 22), 25, number=4),
            PartRow("swag", "flat", 4, 4, None, 15, method="sprigged"),
        ),
        (240, 160, 62),
    ),
    DesignRow(
        "wall bracket",
        "bracket",
        "B",
        (
            PartRow("back", "flat", 9, 8, (180, 40, 260), 900),
            PartRow("shelf", "flat", 10, 8, (180, 120, 15), 500),
            PartRow("spray", "lump", 12, 12, None, 40, method="sprigged"),
        ),
        (180, 130, 260),
    ),
    *(
        DesignRow(
            name,
            noun,
            "P",
            (PartRow(noun, "flat", 7, 6, size, clay_g, method="thrown"),),
            size,
            uses_moulds=False,
            is_round=size[0] == size[1],
        )
        for name, noun, size, clay_g in (
            ("footed dish", "dish", (210.0, 210.0, 60.0), 900.0),
            ("small tray", "tray", (180.0, 120.0, 25.0), 420.0),
            ("beaker", "beaker", (85.0, 85.0, 110.0), 380.0),
        )
    ),
)


class MouldRow(NamedTuple):
    """A mould set: what it makes, how it was weighed, and what became of it."""

    label: str
    design: str
    role: str
    blocks: tuple[str, ...]
    generation: int
    owner: str
    presses_before: int
    place: str
    dry_g: float
    dry_at: str
    now_g: float | None
    now_at: str
    poured: str = "2026-03-02"
    master: str = ""
    kept: tuple[str, str, str] | None = None  # kind, when, reason


TWO: Final = ("face", "back")
THREE: Final = ("left", "right", "foot")

MOULDS: Final = (
    MouldRow("M01", "barley-row hearth tile", "tile", TWO, 1, "", 116, "Bench 1",
             2310, "2026-10-14 08:30", 2395, "2026-10-31 07:30", master="MS-1"),
    MouldRow("M02", "barley-row hearth tile", "tile", TWO, 2, "", 10, "Bench 1",
             2280, "2026-10-27 08:00", 2405, "2026-10-30 16:15", poured="2026-09-28",
             master="MS-1"),
    MouldRow("M03", "ribbed sauce boat", "body", THREE, 1, "odile", 4, "Bench 2",
             6840, "2026-10-30 07:30", 7310, "2026-10-31 07:35"),
    MouldRow("M04", "ribbed sauce boat", "handle", TWO, 1, "odile", 6, "Shelf P2",
             940, "2026-10-08 08:00", 1070, "2026-10-31 08:00"),
    MouldRow("M05", "pine-knop jar", "jar", THREE, 1, "jun", 9, "Bench 3",
             5900, "2026-10-26 08:10", 6180, "2026-10-30 14:00"),
    MouldRow("M06", "pine-knop lid", "lid", TWO, 1, "jun", 11, "Bench 3",
             1720, "2026-10-26 08:20", 1790, "2026-10-30 14:25"),
    MouldRow("M07", "pine-knop lid", "knop", ("face",), 3, "jun", 51, "Tin 4",
             210, "2026-10-26 08:30", 214, "2026-10-31 08:05",
             kept=("chipped", "2026-10-27 09:00", "small chip at the rim, watched")),
    MouldRow("M08", "wall bracket", "spray", ("face",), 1, "piet", 30, "Tin 2",
             260, "2026-09-09 08:00", None, "",
             kept=("missing", "2026-10-26 12:00", "last seen in Tin 2")),
    MouldRow("M09", "inkstand with two pots", "tray", TWO, 1, "odile", 1, "Shelf P1",
             4400, "2026-10-14 08:00", 4415, "2026-10-31 08:10"),
    MouldRow("M10", "inkstand with two pots", "pot", TWO, 1, "odile", 3, "Shelf P1",
             880, "2026-10-14 08:05", 902, "2026-10-31 08:12"),
    MouldRow("M11", "wall bracket", "back", TWO, 1, "piet", 2, "Shelf P3",
             5200, "2026-09-09 08:05", 5240, "2026-10-31 08:15"),
    MouldRow("M12", "wall bracket", "shelf", ("face",), 1, "piet", 2, "Shelf P3",
             2100, "2026-09-09 08:10", 2110, "2026-10-28 08:00",
             kept=("out_of_use", "2026-10-29 10:00", "edge chipped")),
    MouldRow("M13", "inkstand with two pots", "swag", ("face",), 2, "odile", 10, "Tin 1",
             190, "2026-10-14 08:10", 191, "2026-10-31 08:18"),
    MouldRow("M14", "inkstand with two pots", "foot", TWO, 1, "", 18, "Shelf P2",
             610, "2026-10-14 08:15", 655, "2026-10-31 08:20"),
)  # fmt: skip

# Moulds with clay in them, put on the scale once more in the morning: they weigh what they did.
WEIGHED_AGAIN: Final = (("M01", "M02", "M03", "M05", "M06"), "2026-10-31 08:25")

# Slab blocks by piece; the rest is not known.
SLABS: Final = {"S03": "BK-15", "S04": "BK-15", "S05": "BK-15", "I02": "BK-15", "T26": "BK-16"}

# Pieces under plastic that somebody looked at and left as they were: who, when.
SEEN: Final = {"S03": ("odile", "2026-10-28 16:10")}

# weekday, opens, closes
OPENING: Final = (*((day, "08:00", "18:00") for day in range(5)), (5, "08:00", "13:00"))
