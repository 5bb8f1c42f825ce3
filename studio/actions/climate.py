"""Readings of the air: kept as given, judged, and asked about where they look odd."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final, Literal
from uuid import UUID, uuid5

from django.db import transaction

from studio.actions import journal
from studio.domain import climate
from studio.domain.refusals import Unworkable
from studio.models import Act, ClimateReading, JournalEntry, JournalHead, Place
from studio.queries import air

Answer = Literal["fahrenheit", "percent", "as_given", "leave_out"]

AROUND: Final = timedelta(hours=24)
AS_FAHRENHEIT: Final = "Read as °F, as somebody answered."
AS_PERCENT: Final = "Read as a percentage, as somebody answered."
AS_GIVEN: Final = "Taken as given, as somebody answered."
LEFT_OUT: Final = "Left out, as somebody answered."


class NothingToConvert(Unworkable):
    code = "nothing-to-convert"
    title = "The reading does not hold that number."


class StillImpossible(Unworkable):
    code = "still-impossible"
    title = "The reading could not be used even so."


@dataclass(frozen=True, slots=True)
class Recorded:
    """What came of some readings: rows kept, with a judgement each, and how many were known."""

    rows: list[ClimateReading]
    judgements: list[climate.Judgement]
    repeated: int


@transaction.atomic
def record(*, act: Act, place: Place, readings: Sequence[climate.Reading]) -> Recorded:
    """Keep readings of one place; the same reading again is the same reading.

    Instants must be checked by the caller. A reading already kept is not judged anew, so that an
    answer somebody gave stands.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    first = min(reading.taken_at for reading in readings)
    last = max(reading.taken_at for reading in readings)
    known = _known(place, first, last)
    fresh = list({_key(reading): reading for reading in readings}.values())
    fresh = [reading for reading in fresh if _key(reading) not in {_row_key(row) for row in known}]
    judgements = _judged(known, fresh)
    facts = {
        "readings": len(fresh),
        "repeated": len(readings) - len(fresh),
        "odd": sum(judged.use != "used" for judged in judgements),
        "first_at": first,
        "last_at": last,
    }
    entry = journal.write(act=act, verb="read_climate", subjects=[("place", place.pk)], facts=facts)
    rows = [
        _row(entry, place, reading, judged, _row_id(act, reading, is_alone=len(readings) == 1))
        for reading, judged in zip(fresh, judgements, strict=True)
    ]
    ClimateReading.objects.bulk_create(rows, batch_size=500)
    return Recorded(rows=rows, judgements=judgements, repeated=len(readings) - len(fresh))


@transaction.atomic
def answer(*, act: Act, reading: ClimateReading, answer: Answer) -> ClimateReading:
    """Say what an odd reading meant, and return the row that is used for it now.

    The reading keeps its numbers; what was meant instead is a row of its own. The last answer
    stands. Raises `NothingToConvert` and `StillImpossible`.
    """
    meant = _meant(reading, answer)
    entry = journal.write(
        act=act,
        verb="answered_reading",
        subjects=[("place", reading.place_id)],
        facts={"reading": reading.pk, "answer": answer},
    )
    _drop_earlier_answers(reading)
    match answer:
        case "as_given":
            return _settle(reading, ClimateReading.Use.USED, AS_GIVEN)
        case "leave_out":
            return _settle(reading, ClimateReading.Use.LEFT_OUT, LEFT_OUT)
        case _:
            why = AS_FAHRENHEIT if answer == "fahrenheit" else AS_PERCENT
            _settle(reading, ClimateReading.Use.LEFT_OUT, why)
            judged = climate.Judgement("used", detail=why)
            row = _row(entry, reading.place, meant, judged, act.id)
            row.save(force_insert=True)
            return row


def _meant(reading: ClimateReading, answer: Answer) -> climate.Reading:
    air_c, humidity = reading.air_c, reading.humidity_fraction
    if answer == "fahrenheit":
        if air_c is None:
            raise NothingToConvert("It holds no temperature.", pointer="#/answer")
        air_c = (air_c - 32.0) / 1.8
    if answer == "percent":
        if humidity is None:
            raise NothingToConvert("It holds no humidity.", pointer="#/answer")
        humidity = humidity / 100.0
    meant = climate.Reading(reading.taken_at, air_c, humidity)
    judged = climate.judge(meant)
    if answer != "leave_out" and judged.use != "used":
        raise StillImpossible(judged.detail, pointer="#/answer")
    return meant


def _settle(reading: ClimateReading, use: str, why: str) -> ClimateReading:
    reading.use, reading.why = use, why
    reading.save(update_fields=["use", "why"])
    return reading


def _drop_earlier_answers(reading: ClimateReading) -> None:
    ClimateReading.objects.filter(
        place=reading.place_id, taken_at=reading.taken_at, why__in=[AS_FAHRENHEIT, AS_PERCENT]
    ).exclude(pk=reading.pk).update(use=ClimateReading.Use.LEFT_OUT, why=LEFT_OUT)


def _known(place: Place, first: datetime, last: datetime) -> list[ClimateReading]:
    rows = ClimateReading.objects.filter(
        place=place, taken_at__gte=first - AROUND, taken_at__lte=last + AROUND
    )
    return list(air.standing(rows).order_by("taken_at"))


def _judged(known: list[ClimateReading], fresh: list[climate.Reading]) -> list[climate.Judgement]:
    """Judge the fresh readings among those known; what is known keeps its own judgement."""
    used = [
        climate.Reading(row.taken_at, row.air_c, row.humidity_fraction)
        for row in known
        if row.use == ClimateReading.Use.USED
    ]
    return climate.judge_all([*used, *fresh])[len(used) :]


def _row(
    entry: JournalEntry,
    place: Place,
    reading: climate.Reading,
    judged: climate.Judgement,
    row_id: UUID,
) -> ClimateReading:
    return ClimateReading(
        id=row_id,
        studio_id=place.studio_id,
        entry=entry,
        place=place,
        taken_at=reading.taken_at,
        air_c=reading.air_c,
        humidity_fraction=reading.humidity_fraction,
        use=judged.use,
        why=judged.detail,
    )


def _row_id(act: Act, reading: climate.Reading, *, is_alone: bool) -> UUID:
    return act.id if is_alone else uuid5(act.id, repr(_key(reading)))


def _key(reading: climate.Reading) -> tuple[object, ...]:
    return (reading.taken_at.timestamp(), reading.air_c, reading.humidity_fraction)


def _row_key(row: ClimateReading) -> tuple[object, ...]:
    return (row.taken_at.timestamp(), row.air_c, row.humidity_fraction)
