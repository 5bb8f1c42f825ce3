"""Loads the demo studio: people, places, clays, moulds, readings and sixty pieces."""

from __future__ import annotations

from django.db import transaction

from studio.models import Studio

from . import climate, ground, moulds, tables
from .histories import History
from .pressings import Bench
from .rows import read_pieces
from .teller import Clock


@transaction.atomic
def load(*, clock: Clock, password: str, slug: str = tables.SLUG) -> Studio:
    """Found the demo studio and tell its whole story in order of time."""
    teller = ground.lay(clock=clock, password=password, slug=slug)
    rows = read_pieces()
    designs = moulds.make_designs(teller)
    bench = Bench(
        teller=teller,
        designs=designs,
        castings=moulds.make_moulds(teller, designs),
        makers={row.mark: row.maker or "odile" for row in rows},
        design_of={row.mark: row.design for row in rows},
    )
    climate.queue_readings(teller)
    pressed = bench.queue()
    for row in rows:
        History(teller, bench, row, pressed.get(row.mark, [])).queue()
    teller.tell()
    return teller.studio
