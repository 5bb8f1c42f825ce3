"""Lines of orders: how many sets are wanted, and what makes one."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final
from uuid import UUID

from django.db import transaction

from moulds.models import Design
from pieces.models import Commission, CommissionLine, SetRecipe
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act

from .order_rows import open_one, write

PIECES_MOST: Final = 12


class LineExists(Conflict):
    code = "line-exists"
    title = "There is such a line already."


class NotARecipe(Unworkable):
    code = "not-a-recipe"
    title = "That does not make a set."


@dataclass(frozen=True, slots=True)
class RoleGiven:
    """How many pieces of a design a set holds, and as what."""

    role: str
    design: Design
    count: int = 1


@dataclass(frozen=True, slots=True)
class LineGiven:
    """So many sets of something; without a recipe any piece is a set."""

    what: str
    wanted_sets: int
    recipe: Sequence[RoleGiven] = ()
    id: UUID | None = None


@transaction.atomic
def add_line(*, act: Act, commission: Commission, line: LineGiven) -> CommissionLine:
    """Add a line. Raises `CommissionClosed`, `NotARecipe` and `LineExists`."""
    check_recipe(line.recipe)
    commission = open_one(commission)
    made = make(commission, line, commission.lines.count())
    write(act, "added_line", commission, {"line": made.pk, "wanted_sets": made.wanted_sets})
    return made


@transaction.atomic
def change_line(
    *, act: Act, line: CommissionLine, what: str | None = None, wanted_sets: int | None = None
) -> CommissionLine:
    """Change what a line says or wants. Raises `CommissionClosed`."""
    commission = open_one(line.commission)
    facts = {"line": line.pk, "was": line.wanted_sets}
    line.what = line.what if what is None else what
    line.wanted_sets = line.wanted_sets if wanted_sets is None else wanted_sets
    line.save(update_fields=["what", "wanted_sets"])
    write(act, "changed_line", commission, {**facts, "wanted_sets": line.wanted_sets})
    return line


@transaction.atomic
def set_recipe(*, act: Act, line: CommissionLine, recipe: Sequence[RoleGiven]) -> CommissionLine:
    """Say anew what makes a set of a line. Raises `CommissionClosed` and `NotARecipe`."""
    check_recipe(recipe)
    commission = open_one(line.commission)
    line.recipe.all().delete()
    _make_recipe(line, recipe)
    rows = [{"role": r.role, "design": r.design.pk, "count": r.count} for r in recipe]
    write(act, "changed_recipe", commission, {"line": line.pk, "recipe": rows})
    return line


def check_recipe(recipe: Sequence[RoleGiven]) -> None:
    """Raise `NotARecipe` unless each role and design is there once, and a set can be carried."""
    roles = [row.role.casefold() for row in recipe]
    designs = [row.design.pk for row in recipe]
    if len(set(roles)) < len(roles) or len(set(designs)) < len(designs):
        raise NotARecipe("Name each role and each design once, with its count.")
    if sum(row.count for row in recipe) > PIECES_MOST:
        raise NotARecipe(f"A set holds at most {PIECES_MOST} pieces.", most=PIECES_MOST)


def make(commission: Commission, line: LineGiven, order: int) -> CommissionLine:
    """Make the row of a line and what makes a set of it. Raises `LineExists`."""
    if line.id is not None and CommissionLine.objects.filter(pk=line.id).exists():
        raise LineExists("Make each line with an id of its own.", id=str(line.id))
    made = CommissionLine.objects.create(
        id=line.id or uuid7(),
        studio=commission.studio,
        commission=commission,
        what=line.what,
        wanted_sets=line.wanted_sets,
        order=order,
    )
    _make_recipe(made, line.recipe)
    return made


def _make_recipe(line: CommissionLine, recipe: Sequence[RoleGiven]) -> None:
    SetRecipe.objects.bulk_create(
        SetRecipe(
            studio_id=line.studio_id,
            line=line,
            role=row.role,
            design=row.design,
            count=row.count,
        )
        for row in recipe
    )
