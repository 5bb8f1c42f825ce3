"""Time what the working process does for a studio's forecasts, one thread, CPU seconds.

Run from the root of the project, with nothing else on the machine::

    OPENBLAS_NUM_THREADS=1 python -m tests.bench.worker

It prints seconds and shares of the same run and never fails. First the demo's wet parts reckoned
anew, in the compiled loop and in numpy. Then one hour of three such studios, whose rooms' meters
report every ten minutes, swept every minute: the share of a core that idling costs.
"""

import os
import time
from collections.abc import Callable
from datetime import timedelta

import django

STUDIOS = 3
HOURS = 3
METER_EVERY_MIN = 10


def cpu_s(do: Callable[[], object]) -> float:
    """Return the CPU seconds of a call."""
    began = time.process_time()
    do()
    return time.process_time() - began


def main() -> None:
    """Print the figures."""
    os.environ["DJANGO_SETTINGS_MODULE"] = "tests.settings"
    django.setup()
    from django.conf import settings
    from django.db import connection
    from django.test.utils import setup_test_environment

    from firings.demo.loader import load
    from firings.demo.teller import Clock
    from pieces.actions import forecast_questions, forecasts
    from pieces.domain.drying import engine
    from pieces.domain.drying.march import march as plain
    from pieces.models import Forecast
    from studio.actions import climate
    from studio.domain.climate import Reading
    from studio.models import ClimateReading, Member, Place
    from tests.factories import NOW, PASSWORD, act

    setup_test_environment()
    connection.creation.create_test_db(verbosity=0)
    studios = [load(clock=Clock(None), password=PASSWORD, slug=f"yard-{i}") for i in range(STUDIOS)]
    first = studios[0]
    compiled = engine.compiled()

    def anew() -> None:
        Forecast.objects.filter(studio=first).delete()
        forecasts.refresh(studio=first, at=NOW)

    for is_embedded in (True, False):
        settings.IS_EMBEDDED = is_embedded
        engine.use(compiled)
        anew()
        kernel_s = cpu_s(anew)
        engine.use(plain)
        numpy_s = cpu_s(anew)
        draws = sorted(set(Forecast.objects.values_list("draws", flat=True)))
        parts = Forecast.objects.filter(studio=first).count()
        days = forecast_questions.HORIZON.days
        print(f"{parts} wet parts reckoned anew, {draws} draws, {days} days:")
        print(
            f"  kernel {kernel_s:.2f} s CPU, numpy {numpy_s:.2f} s; ratio {numpy_s / kernel_s:.1f}"
        )

    engine.use(compiled)
    for studio in studios:
        forecasts.refresh(studio=studio, at=NOW)
    metered = set(ClimateReading.objects.values_list("place_id", flat=True))
    rooms = list(Place.objects.filter(pk__in=metered).select_related("studio"))

    def report(minute: int) -> None:
        at = NOW + timedelta(minutes=minute)
        for room in rooms:
            owner = Member.objects.get(studio=room.studio, initials="OF")
            reading = Reading(at, 15.0 + minute / 60, 0.6)
            climate.record(act=act(owner, at), place=room, readings=[reading])

    spent, reckoned = 0.0, 0
    for minute in range(HOURS * 60):
        if minute % METER_EVERY_MIN == METER_EVERY_MIN - 1:
            report(minute)
        began = time.process_time()
        at = NOW + timedelta(minutes=minute, seconds=30)
        reckoned += sum(forecasts.refresh(studio=studio, at=at) for studio in studios)
        spent += time.process_time() - began
    parts = Forecast.objects.count()
    print(f"{HOURS} hours of {parts} wet parts, {len(rooms)} meters every {METER_EVERY_MIN} min:")
    print(f"  {reckoned} reckonings, {spent:.2f} s CPU: {spent / (HOURS * 3600):.2%} of a core")
    connection.creation.destroy_test_db(connection.settings_dict["NAME"], verbosity=0)


if __name__ == "__main__":
    main()
