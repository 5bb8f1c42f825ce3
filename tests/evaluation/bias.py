"""What a wrong meter, and readings taken seldom, do to the drying time.

    python -m tests.evaluation.bias

An 8 mm wall of red earthenware, standing hollow in the open; one draw, the body's own figures.
Bias: constant air, the meter off by so much; "never" where the air that is read cannot bring the
stage about. Interval: 40 made-up rooms, a month each, looked at every so many hours from eight on,
joined by the shipped `climate_from`, until dry enough to fire; the truth is looked at every quarter
of an hour.
"""

import math
from collections.abc import Sequence

import numpy as np

from pieces.domain.drying import (
    BODIES,
    STAGES,
    Batch,
    Climate,
    Face,
    FaceEvent,
    Problem,
    Reading,
    Section,
    Shape,
    Stage,
    climate_from,
    constant_climate,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of

HOUR_S = 3600
DAYS = 28
STEP_S = 900
EVERY_H = (3, 6, 12, 24)
ROOMS = 40
RED = BODIES["red_earthenware"]
OFF = ((1.0, 0.0), (0.0, 0.03), (0.0, 0.05))
HUMIDITIES = (0.50, 0.65, 0.80)


def hours_to(stage: Stage, climates: Sequence[Climate]) -> list[float]:
    """Return the hours from the pressing to a stage in each air; inf where not within it."""
    row = STAGES.index(stage)
    made = []
    for climate in climates:
        events = (FaceEvent(float(climate.start_s), Face(0.4), Face(1.0)),)
        problem = Problem(RED, Section(Shape.FLAT, 0.008), events, climate)
        made.append(ensemble_of(problem, np.array([[0.0], [0.0], [0.25], [0.0], [0.0]])))
    until = tuple(float(climate.end_s) for climate in climates)
    run = simulate(Batch(tuple(made), until))
    return [
        (float(after.state.crossed_s[row, 0]) - climate.start_s) / HOUR_S
        for after, climate in zip(run.after, climates, strict=True)
    ]


def biases(stage: Stage) -> dict[tuple[float, float, float], float]:
    """Return by (humidity, K off, share off) how much longer the drying looks, as a fraction."""

    def air(air_c: float, humidity: float) -> Climate:
        return constant_climate(0, 1000 * HOUR_S, air_c, humidity)

    asked = [(true, off_k, off_rh) for true in HUMIDITIES for off_k, off_rh in OFF]
    plain = hours_to(stage, [air(20.0, true) for true in HUMIDITIES])
    truths = dict(zip(HUMIDITIES, plain, strict=True))
    seen = hours_to(stage, [air(20.0 + off_k, true + off_rh) for true, off_k, off_rh in asked])
    return {key: hours / truths[key[0]] - 1.0 for key, hours in zip(asked, seen, strict=True)}


def weather(seed: int) -> list[Reading]:
    """Return a room every quarter of an hour: a day's swing and slow and quick changes."""
    random = np.random.default_rng(seed)
    steps = DAYS * 24 * 3600 // STEP_S
    at_h = np.arange(steps) * STEP_S / HOUR_S
    peak_h = random.uniform(13.0, 17.0)
    day = np.cos(2.0 * np.pi * (at_h - peak_h) / 24.0)
    air_c = random.uniform(13.0, 20.0) + random.uniform(1.0, 4.0) * day
    humidity = random.uniform(0.5, 0.68) - random.uniform(0.03, 0.10) * day
    air_c += _wander(random, steps, spread=1.0, memory_h=18.0)
    humidity += _wander(random, steps, spread=0.06, memory_h=18.0)
    air_c, humidity = np.clip(air_c, 5.0, 30.0), np.clip(humidity, 0.25, 0.85)
    return [
        Reading(float(at * HOUR_S), float(temperature), float(share))
        for at, temperature, share in zip(at_h, air_c, humidity, strict=True)
    ]


def _wander(random: np.random.Generator, steps: int, *, spread: float, memory_h: float):
    """Return a random walk that forgets: stationary, of this spread and memory."""
    keeps = math.exp(-STEP_S / HOUR_S / memory_h)
    pushes = random.normal(0.0, spread * math.sqrt(1.0 - keeps**2), steps)
    found = np.empty(steps)
    found[0] = random.normal(0.0, spread)
    for i in range(1, steps):
        found[i] = keeps * found[i - 1] + pushes[i]
    return found


def intervals(rooms: int = ROOMS) -> dict[int, tuple[float, float]]:
    """Return by hours between looks the median and the largest error, as fractions."""
    every = [weather(seed) for seed in range(rooms)]
    until_s = float(DAYS * 24 * HOUR_S)

    def seen(each_h: int | None) -> np.ndarray:
        step = 1 if each_h is None else each_h * HOUR_S // STEP_S
        first = 0 if each_h is None else 8 * HOUR_S // STEP_S % step  # somebody looks at eight
        airs = [climate_from(room[first::step], 0, until_s) for room in every]
        return np.array(hours_to(Stage.BISQUE, airs))

    truth = seen(None)
    off = {each: np.abs(seen(each) / truth - 1.0) for each in EVERY_H}
    return {each: (float(np.median(error)), float(error.max())) for each, error in off.items()}


def main() -> None:
    """Print both tables."""
    for stage in (Stage.SHRINKAGE_ENDED, Stage.BISQUE):
        print(
            f"| {stage.value.replace('_', ' ')}, true humidity | {' | '.join(map(_named, OFF))} |"
        )
        print("|---" * (len(OFF) + 1) + "|")
        found = biases(stage)
        for true in HUMIDITIES:
            cells = [_percent(found[true, off_k, off_rh]) for off_k, off_rh in OFF]
            print(f"| {true:.0%} | {' | '.join(cells)} |")
        print()
    print(f"| looked at every | median error, {ROOMS} rooms | largest |\n|---|---|---|")
    for each, (median, largest) in intervals().items():
        print(f"| {each} h | {median:.1%} | {largest:.1%} |")


def _percent(off: float) -> str:
    return f"{off:+.1%}" if math.isfinite(off) else "never"


def _named(off: tuple[float, float]) -> str:
    off_k, off_rh = off
    return f"{off_k:+.0f} K" if off_k else f"{100.0 * off_rh:+.0f} % humidity"


if __name__ == "__main__":
    main()
