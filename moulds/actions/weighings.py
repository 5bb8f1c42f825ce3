"""A casting on the scale: dry once, then whenever somebody wants to know."""

from dataclasses import dataclass

from django.db import transaction

from moulds.domain.moisture import (
    HeavierThanSoaked,
    LighterThanDry,
    NotAWeight,
    free_water_fraction,
)
from moulds.domain.scale import likely_meant_g
from moulds.models import Casting, MouldWeighing
from studio.actions import journal
from studio.domain.refusals import Refusal, Unworkable
from studio.models import Act

from .folds import refold_casting

SAME_DRY = (0.85, 1.15)  # a dry casting weighs the same each time; common practice, no source


class ImpossibleWeight(Unworkable):
    code = "impossible-mould-weight"
    title = "That mould cannot weigh that."


@dataclass(frozen=True, slots=True)
class OnTheScale:
    """The weighing and the fraction of capacity it shows, None without a dry weight."""

    weighing: MouldWeighing
    casting: Casting
    free_water_fraction: float | None


@transaction.atomic
def weigh(*, act: Act, casting: Casting, mass_g: float, is_dry: bool = False) -> OnTheScale:
    """Record the weight of a whole casting, all its parts, without clay. [g]

    Raises `ImpossibleWeight`, naming the field and what was probably meant.
    """
    casting = Casting.objects.select_for_update().get(pk=casting.pk)
    _check(casting, mass_g=mass_g, is_dry=is_dry)
    subjects = [("casting", casting.pk), ("mould_set", casting.mould_set_id)]
    facts = {"mass_g": mass_g, "is_dry": is_dry}
    entry = journal.write(act=act, verb="weighed_mould", subjects=subjects, facts=facts)
    weighing = MouldWeighing.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        casting=casting,
        mass_g=mass_g,
        is_dry=is_dry,
    )
    casting = refold_casting(casting)
    fraction = None
    if casting.dry_g is not None:
        fraction = max((mass_g - casting.dry_g) / (casting.capacity_fraction * casting.dry_g), 0.0)
    return OnTheScale(weighing, casting, fraction)


def _check(casting: Casting, *, mass_g: float, is_dry: bool) -> None:
    try:
        if is_dry:
            _check_dry(casting, mass_g)
        elif casting.dry_g is not None:
            free_water_fraction(mass_g, casting.dry_g, casting.capacity_fraction)
    except (LighterThanDry, HeavierThanSoaked, NotAWeight) as refused:
        raise _impossible(casting, mass_g, refused) from refused


def _check_dry(casting: Casting, mass_g: float) -> None:
    if casting.dry_g is None:
        if casting.now_g is not None:
            free_water_fraction(casting.now_g, mass_g, casting.capacity_fraction)
        return
    if not SAME_DRY[0] <= mass_g / casting.dry_g <= SAME_DRY[1]:
        raise LighterThanDry(
            f"Dry it weighed {casting.dry_g:g} g before; this says {mass_g:g} g.",
            now_g=mass_g,
            dry_g=casting.dry_g,
        )


def _impossible(casting: Casting, mass_g: float, refused: Refusal) -> ImpossibleWeight:
    meant_g = None
    if casting.dry_g is not None and mass_g > 0:
        meant_g = likely_meant_g(
            mass_g, dry_g=casting.dry_g, capacity_fraction=casting.capacity_fraction
        )
    asked = f" Did you mean {meant_g:g} g?" if meant_g is not None else ""
    detail = f"{refused.detail}{asked}"
    error = {"pointer": "#/mass_g", "code": refused.code, "detail": detail}
    return ImpossibleWeight(detail, errors=[error], did_you_mean_g=meant_g, **refused.facts)
