"""The fourteen mould sets of the invented yard, as its shelves stood on 31 October 2026, 09:00."""

from dataclasses import dataclass

from django.db import transaction

from moulds.actions import castings, designs, masters, parts, pressings, sets, weighings
from moulds.actions.designs import PartGiven
from moulds.models import Casting, Design, MouldSet
from studio.actions import journal
from studio.models import Member, Studio
from tests import factories

YESTERDAY = factories.NOW.replace(day=30)
EARLIER = factories.NOW.replace(month=9, day=28)
SUMMER = factories.NOW.replace(month=8, day=1)
DESIGNS = {
    "barley tile": [("tile", 10, 8, 560)],
    "sauce boat": [("body", 11, 7, 720), ("handle", 12, 9, 70)],
    "jar": [("jar", 12, 7, 900)],
    "jar lid": [("lid", 12, 7, 260), ("knop", 20, 20, 25)],
    "inkstand": [
        ("tray", 11, 8, 800),
        ("pot", 8, 6, 160),
        ("foot", 22, 22, 25),
        ("swag", 4, 4, 15),
    ],
    "bracket": [("back", 9, 8, 900), ("shelf", 10, 8, 500), ("spray", 12, 12, 40)],
}
# label, part, mould parts, generation, presses, dry g, now g
SETS = [
    ("M01", "tile", 2, 1, 131, 2310, 2395),
    ("M02", "tile", 2, 2, 22, 2280, 2405),
    ("M03", "body", 3, 1, 9, 6840, 7310),
    ("M04", "handle", 2, 1, 11, 940, 1070),
    ("M05", "jar", 3, 1, 17, 5900, 6180),
    ("M06", "lid", 2, 1, 19, 1720, 1790),
    ("M07", "knop", 1, 3, 58, 210, 214),
    ("M08", "spray", 1, 1, 34, 260, None),
    ("M09", "tray", 2, 1, 3, 4400, 4415),
    ("M10", "pot", 2, 1, 7, 880, 902),
    ("M11", "back", 2, 1, 6, 5200, 5240),
    ("M12", "shelf", 1, 1, 6, 2100, 2110),
    ("M13", "swag", 1, 2, 12, 190, 191),
    ("M14", "foot", 2, 1, 26, 610, 655),
]
IN_USE = ("M01", "M02", "M03", "M05", "M06")
NAMES = ("face", "back", "core")


@dataclass(frozen=True)
class Yard:
    """The sets by label, and the castings that have clay in them."""

    sets: dict[str, MouldSet]
    busy: frozenset

    def casting(self, label: str) -> Casting:
        return Casting.objects.get(mould_set=self.sets[label], is_in_use=True)


def poured(
    member: Member,
    mould_set: MouldSet,
    *,
    parts=("face", "back"),
    before: int = 0,
    at=None,
    master=None,
    **fields,
) -> Casting:
    """Pour a set from a master of its design, made where there is none."""
    at = at or EARLIER
    found = master or mould_set.makes.design.masters.first()
    if found is None:
        label = f"MS-{mould_set.label}"
        act = factories.act(member, at)
        found = masters.make(act=act, label=label, design=mould_set.makes.design, is_ready=True)
    blocks = [castings.Block(name, presses_before=before) for name in parts]
    act = factories.act(member, at)
    return castings.pour(
        act=act, mould_set=mould_set, master=found, blocks=blocks, **fields
    ).casting


def pressed(member: Member, casting: Casting, *, count: int = 1, parts=None, at=None, **fields):
    """Record a pressing as the app above does: first the journal, then the mould."""
    act = factories.act(member, at or factories.NOW)
    with transaction.atomic():
        entry = journal.write(act=act, verb="pressed", subjects=[("casting", casting.pk)])
        return pressings.record(
            act=act,
            entry=entry,
            casting=casting,
            mould_parts=list(parts if parts is not None else casting.parts.all()),
            count=count,
            **fields,
        )


def taken_back(member: Member, act_id, at=None):
    """Take an act back, as the app above does."""
    from moulds.actions import folds
    from studio.models import JournalEntry

    act = factories.act(member, at or factories.NOW, corrects=act_id)
    with transaction.atomic():
        journal.write(act=act, verb="took_back", subjects=[("member", member.pk)])
        folds.refold_after(act=act, entry=JournalEntry.objects.get(pk=act_id))


def weighed(member: Member, casting: Casting, mass_g: float, *, at=None, is_dry: bool = False):
    act = factories.act(member, at or factories.NOW)
    return weighings.weigh(act=act, casting=casting, mass_g=mass_g, is_dry=is_dry)


def stock(studio: Studio, member: Member) -> Yard:
    """Fill the shelves."""
    rows = {}
    for name, given in DESIGNS.items():
        design = _design(member, name, given)
        rows.update({part.role: part for part in design.parts.all()})
    found = {}
    for label, role, blocks, generation, presses, dry_g, now_g in SETS:
        act = factories.act(member, YESTERDAY)
        row = sets.make(act=act, label=label, makes=rows[role], place=None)
        master = masters.make(
            act=factories.act(member, SUMMER),
            label=f"MS-{label}",
            design=row.makes.design,
            part=row.makes,
            is_ready=True,
        )
        casting = poured(
            member,
            row,
            parts=NAMES[:blocks],
            before=presses,
            generation=generation,
            master=master,
        )
        weighed(member, casting, dry_g, at=factories.NOW.replace(day=1), is_dry=True)
        if now_g is not None:
            weighed(member, casting, now_g, at=YESTERDAY)
        found[label] = row
    yard = Yard(found, frozenset())
    _tell(member, yard.casting("M07"), "chipped")
    _tell(member, yard.casting("M08"), "missing")
    _tell(member, yard.casting("M12"), "out_of_use", "edge chipped")
    return Yard(found, frozenset(yard.casting(label).pk for label in IN_USE))


def _design(member: Member, name: str, given) -> Design:
    return designs.make(
        act=factories.act(member, SUMMER),
        name=name,
        noun=name.rsplit(maxsplit=1)[-1],
        series=name[0].upper(),
        parts=[
            PartGiven(role=role, thickest_mm=thickest, thinnest_mm=thinnest, clay_g=clay_g)
            for role, thickest, thinnest, clay_g in given
        ],
    )


def _tell(member: Member, casting: Casting, kind: str, reason: str = "") -> None:
    act = factories.act(member, factories.NOW.replace(day=29))
    parts.tell(act=act, mould_part=casting.parts.first(), kind=kind, reason=reason)
