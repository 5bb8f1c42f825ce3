"""Pieces on the scale."""

from django.db import transaction

from pieces.domain import stages
from pieces.domain.stages import Spot
from pieces.domain.weighing import Verdict, judge
from pieces.models import Part, Piece, PieceWeighing
from pieces.queries import trend
from studio.domain.refusals import Unworkable
from studio.models import Act

from . import order, stories
from .rows import one_each
from .shapes import Warned


class MassImpossible(Unworkable):
    code = "mass-impossible"
    title = "The piece cannot weigh that; weigh it again."


@transaction.atomic
def weigh(*, act: Act, piece: Piece, mass_g: float) -> tuple[PieceWeighing, list[Warned]]:
    """Record a mass.

    Raises `MassImpossible`, with what may have been meant where it can tell, and `BeforeItBegan`.
    """
    order.must_have_begun(act, [piece])
    verdict = _verdict(act, piece, mass_g)
    if not verdict.is_possible:
        error = {"pointer": "#/mass_g", "code": verdict.code, "detail": verdict.detail}
        meant = {"did_you_mean_g": round(verdict.meant_g, 1)} if verdict.meant_g else {}
        raise MassImpossible(verdict.detail, errors=[error], **meant)
    rows = one_each(PieceWeighing, act=act, pieces=[piece], mass_g=mass_g)
    stories.append(act=act, rows=rows, verb="weighed", facts={"mass_g": mass_g})
    warnings = [Warned(verdict.code, verdict.detail)] if verdict.code else []
    return rows[0], warnings


def _verdict(act: Act, piece: Piece, mass_g: float) -> Verdict:
    parts = [
        part
        for part in Part.objects.filter(piece=piece).select_related("design_part")
        if part.state in (Part.State.IN_MOULD, Part.State.OUT, Part.State.JOINED)
    ]
    drawn = [part.design_part.clay_g for part in parts]
    since = max((part.pressed_at for part in parts if part.pressed_at), default=piece.begun_at)
    earlier = list(
        PieceWeighing.objects.filter(
            piece=piece, happened_at__gte=since, happened_at__lte=act.happened_at
        )
        .standing()
        .order_by("happened_at", "id")
        .values_list("happened_at", "mass_g")
    )
    expected_g = trend.mass_by_now_g(piece, earlier[-1], act.happened_at) if earlier else None
    is_known = bool(drawn) and None not in drawn
    return judge(
        mass_g,
        drawn_g=sum(mass for mass in drawn if mass is not None) if is_known else None,
        first_g=earlier[0][1] if earlier else None,
        last_g=earlier[-1][1] if earlier else None,
        expected_g=expected_g,
        is_raw=stages.rank(Spot(piece.stage, piece.state)) < stages.rank(stages.BISQUED),
    )
