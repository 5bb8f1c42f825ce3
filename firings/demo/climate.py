"""The demo's meter readings, as somebody wrote them down."""

from __future__ import annotations

import csv
from datetime import datetime
from pathlib import Path

from studio.actions import climate
from studio.domain.climate import Reading

from .teller import Teller

TABLE = Path(__file__).with_name("climate.csv")


def queue_readings(teller: Teller) -> None:
    """Queue one act for each look at a meter; empty cells were never read."""
    with TABLE.open(encoding="utf-8") as lines:
        for row in csv.DictReader(lines):
            for place, hour, column in (
                ("Drying room", "08:00", "dry_0800"),
                ("Kiln shed", "08:05", "shed_0800"),
                ("Drying room", "16:00", "dry_1600"),
            ):
                if row[f"{column}_T"]:
                    at = teller.clock.at(f"{row['date']} {hour}")
                    air_c, percent = float(row[f"{column}_T"]), float(row[f"{column}_RH"])
                    _queue(teller, place, at, air_c=air_c, percent=percent)


def _queue(teller: Teller, place: str, at: datetime, *, air_c: float, percent: float) -> None:
    reading = Reading(taken_at=at, air_c=air_c, humidity_fraction=percent / 100.0)

    def record() -> None:
        room = teller.places[place]
        climate.record(act=teller.act("nessa", at), place=room, readings=[reading])

    teller.then(at, record)
