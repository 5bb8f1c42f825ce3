"""Loads the demo studio: people, kilns, orders, readings, sixty pieces and twelve loads."""

from __future__ import annotations

from django.db import transaction

from studio.models import Studio

from . import climate, ground, kilns, moulds, orders, shares, tables
from .histories import History
from .loads import queue_loads
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
        order_of={row.mark: row.commission for row in rows},
    )
    made = kilns.make_kilns(teller), kilns.make_programmes(teller)
    climate.queue_readings(teller)
    orders.queue_orders(teller, bench, designs)
    pressed = bench.queue()
    for row in rows:
        History(teller, bench, row, pressed.get(row.mark, [])).queue()
    orders.queue_pairs(teller, bench, pressed)
    orders.queue_found(teller, bench)
    shares.queue_shares(teller)
    queue_loads(teller, bench, rows, made)
    teller.tell()
    return teller.studio
