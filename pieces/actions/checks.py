"""Feeling pieces by hand."""

from collections.abc import Sequence

from django.db import transaction

from pieces.models import Part, Piece, TouchCheck
from studio.models import Act

from . import order, stories
from .rows import one_each


@transaction.atomic
def check(
    *, act: Act, pieces: Sequence[Piece], feel: str, part: Part | None = None
) -> list[TouchCheck]:
    """Record how pieces feel; a whole piece set to dry that feels bone dry is bone dry.

    Raises `BeforeItBegan`.
    """
    order.must_have_begun(act, pieces)
    rows = one_each(TouchCheck, act=act, pieces=pieces, feel=feel, part=part)
    facts = {"feel": feel, **({"part": part.pk} if part else {})}
    told_of = [("part", part.pk)] if part else []
    stories.append(act=act, rows=rows, verb="checked", facts=facts, subjects=told_of)
    return rows
