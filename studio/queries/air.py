"""The air of a place between two times, and whose meter says so.

A place's own readings; else those of the nearest thing it stands in; else those of the place named
in `air_from`; else the studio's assumed air. A cupboard without a meter has the air around it, but
closed in. Temperatures below freezing are given as 0 °C, where drying all but stops and the model
ends.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final, Literal
from uuid import UUID

from django.db.models import Exists, OuterRef, QuerySet

from studio.models import ClimateReading, JournalEntry, Place, Studio, StudioSettings

#: How long before the asked time readings still count: they give the room's daily shape.
LOOK_BACK: Final = timedelta(days=7)
LOWEST_AIR_C: Final = 0.0

Source = Literal["own", "around", "air_from", "assumed"]
Sample = tuple[datetime, float, float]


@dataclass(frozen=True, slots=True)
class Air:
    """The air of one place: samples of (instant, air_c [°C], humidity_fraction), in order.

    Without a sample it is `assumed_air_c` and `assumed_humidity_fraction` throughout. `is_closed`
    says that the place is a cupboard in that air.
    """

    place_id: UUID
    samples: tuple[Sample, ...]
    source: Source
    source_place_id: UUID | None
    source_name: str
    words: str
    is_closed: bool
    assumed_air_c: float
    assumed_humidity_fraction: float

    @property
    def is_assumed(self) -> bool:
        return self.source == "assumed"


def standing(readings: "QuerySet[ClimateReading]") -> "QuerySet[ClimateReading]":
    """Leave out readings whose act was taken back."""
    taken_back = JournalEntry.objects.filter(corrects=OuterRef("entry_id"))
    return readings.filter(~Exists(taken_back))


def of_place(place: Place, from_at: datetime, until_at: datetime) -> Air:
    """Return the air of one place; samples from a week before `from_at` to `until_at`."""
    return Sky(place.studio, from_at, until_at).over(place.pk)


class Sky:
    """The air of every place of a studio between two times, read once with three queries."""

    def __init__(self, studio: Studio, from_at: datetime, until_at: datetime) -> None:
        self.places = {place.pk: place for place in Place.objects.filter(studio=studio)}
        readings = ClimateReading.objects.filter(studio=studio)
        found = _by_place(readings, from_at - LOOK_BACK, until_at)
        self.samples = {place_id: _not_freezing(rows) for place_id, rows in found.items()}
        self.settings = StudioSettings.objects.get(studio=studio)

    def over(self, place_id: UUID | None) -> Air:
        """Return the air of the place; of nowhere in particular, the studio's assumed air."""
        around = list(self._around(place_id))
        found = self._metered(around)
        if found is not None:
            source: Source = "own" if found.pk == place_id else "around"
            return self._air(place_id, around, found, source)
        for place in around:
            lender = self._lender(place)
            if lender is not None:
                return self._air(place_id, around, lender, "air_from")
        return self._air(place_id, around, None, "assumed")

    def _around(self, place_id: UUID | None) -> Iterator[Place]:
        """Yield the place and what it stands in, innermost first."""
        seen: set[UUID] = set()
        while place_id is not None and place_id in self.places and place_id not in seen:
            seen.add(place_id)
            yield self.places[place_id]
            place_id = self.places[place_id].parent_id

    def _metered(self, places: Iterable[Place]) -> Place | None:
        return next((place for place in places if place.pk in self.samples), None)

    def _lender(self, place: Place) -> Place | None:
        """Return the place with a meter that `air_from` leads to, however many steps away."""
        seen: set[UUID] = set()
        step = place.air_from_id
        while step is not None and step not in seen:
            seen.add(step)
            found = self._metered(self._around(step))
            if found is not None:
                return found
            step = self.places[step].air_from_id if step in self.places else None
        return None

    def _air(
        self, place_id: UUID | None, around: Sequence[Place], found: Place | None, source: Source
    ) -> Air:
        closed_in = around[: around.index(found)] if found in around else around
        is_closed = any(place.kind == Place.Kind.CUPBOARD for place in closed_in)
        own_name = around[0].name if around else "the place"
        return Air(
            place_id=place_id or UUID(int=0),
            samples=self.samples[found.pk] if found else (),
            source=source,
            source_place_id=found.pk if found else None,
            source_name=found.name if found else "",
            words=self._words(own_name, found, source, is_closed=is_closed),
            is_closed=is_closed,
            assumed_air_c=self.settings.assumed_air_c,
            assumed_humidity_fraction=self.settings.assumed_humidity_fraction,
        )

    def _words(self, name: str, found: Place | None, source: Source, *, is_closed: bool) -> str:
        lid = " behind a closed door" if is_closed else ""
        if found is None:
            air = self.settings
            return (
                f"{name} has no readings: {air.assumed_air_c:g} °C and "
                f"{100 * air.assumed_humidity_fraction:g} % are assumed{lid}."
            )
        if source == "own":
            return f"Readings of {found.name}."
        if source == "around":
            return f"Readings of {found.name}, around {name}{lid}."
        return f"{name} has no readings: its air is taken from {found.name}{lid}."


def samples_of(place: Place, from_at: datetime, until_at: datetime) -> tuple[Sample, ...]:
    """Return the place's own readings that are used and whole, in order of time."""
    rows = ClimateReading.objects.filter(place=place)
    return _by_place(rows, from_at, until_at).get(place.pk, ())


def _by_place(
    readings: "QuerySet[ClimateReading]", from_at: datetime, until_at: datetime
) -> Mapping[UUID, tuple[Sample, ...]]:
    rows = (
        standing(readings)
        .filter(
            use=ClimateReading.Use.USED,
            taken_at__gte=from_at,
            taken_at__lte=until_at,
            air_c__isnull=False,
            humidity_fraction__isnull=False,
        )
        .order_by("taken_at")
        .values_list("place_id", "taken_at", "air_c", "humidity_fraction")
    )
    samples: defaultdict[UUID, list[Sample]] = defaultdict(list)
    for place_id, taken_at, air_c, humidity in rows:
        assert air_c is not None
        assert humidity is not None
        samples[place_id].append((taken_at, air_c, humidity))
    return {place_id: tuple(rows) for place_id, rows in samples.items()}


def _not_freezing(samples: tuple[Sample, ...]) -> tuple[Sample, ...]:
    return tuple((at, max(LOWEST_AIR_C, air_c), share) for at, air_c, share in samples)
