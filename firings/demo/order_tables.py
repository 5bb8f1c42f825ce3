"""Orders and what stands together, as tables. Clients and places to reach them are invented."""

from typing import Final, NamedTuple


class RoleRow(NamedTuple):
    """How many pieces of a design one set holds, and as what."""

    role: str
    design: str
    in_set: int = 1


class OrderRow(NamedTuple):
    """An order of one line."""

    number: str
    client: str
    contact: str
    what: str
    line: str
    wanted_sets: int
    recipe: tuple[RoleRow, ...]
    use: str
    maker: str
    taken: str
    promised: str
    note: str = ""


ORDERS: Final = (
    OrderRow(
        "C-105", "Coldwater Lane Chapel", "warden@coldwater.example",
        "pair of wall brackets, acorn spray", "pair of brackets", 1,
        (RoleRow("bracket", "wall bracket", 2),),
        "display", "piet", "2026-09-02 10:00", "2026-11-13",
    ),
    OrderRow(
        "C-101", "Larkspur Inn", "innkeeper@larkspur.example",
        "barley-row hearth tiles, 150 mm fired", "hearth tile", 24,
        (RoleRow("tile", "barley-row hearth tile"),),
        "display", "bram", "2026-09-04 11:00", "2026-11-20",
    ),
    OrderRow(
        "C-103", "Marrowfield Garden Society", "secretary@marrowfield.example",
        "jars with pine-knop lids, 600 ml, for dry food", "jar with its lid", 6,
        (RoleRow("jar", "pine-knop jar"), RoleRow("lid", "pine-knop lid")),
        "food", "jun", "2026-09-21 15:00", "2026-12-04",
    ),
    OrderRow(
        "C-102", "Dr E. Wainfleet", "wainfleet@clients.example",
        "ribbed sauce boats, marbled brown and cream", "sauce boat", 2,
        (RoleRow("boat", "ribbed sauce boat"),),
        "food", "odile", "2026-09-28 16:20", "2026-12-18",
        "The client approves the colour before the glaze firing; no test report yet.",
    ),
    OrderRow(
        "C-104", "Miss T. Oakhanger", "oakhanger@clients.example",
        "inkstand, two pots, bun feet", "inkstand", 1,
        (RoleRow("inkstand", "inkstand with two pots"),),
        "display", "odile", "2026-10-06 10:30", "2027-01-22",
    ),
)  # fmt: skip

JARS_WITH_LIDS: Final = tuple((f"J0{n}", f"L0{n}") for n in range(1, 9))
PAIRED_AFTER_MIN: Final = 2
PLANNED_TOGETHER: Final = {"J09": ("J09", "L09")}

# Two brackets: who said so and when. The newest word counts, as B01 crawled.
BRACKETS: Final = (
    ("B01", "B02", "piet", "2026-09-15 10:20"),
    ("B02", "B03", "piet", "2026-10-27 17:25"),
)


class FoundRow(NamedTuple):
    """Ware without a name: its record, where it stood, and where it was put."""

    mark: str
    what: str
    found_in: str
    by: str
    at: str
    looks: str
    size_mm: tuple[float, float, float]


FOUND: Final = (
    FoundRow("P03", "beaker, no mark", "Rack B2", "nessa", "2026-10-12 10:02", "bone_dry",
             (80.0, 80.0, 103.0)),
)  # fmt: skip
