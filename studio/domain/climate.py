"""Which readings of a room's air are believed.

Every numeric reading is kept. One that cannot be, or may mean something else, is left out of
estimates or asked about, with its reason: a wrong humidity for six hours moves a forecast by eleven
hours. The limits are what a studio's room and a cheap meter can show; common practice, no source.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final, Literal

from studio.domain.moist_air import vapour_density_kg_m3

Use = Literal["used", "left_out", "asked"]
Reason = Literal[
    "",
    "humidity-above-all",
    "humidity-too-low",
    "humidity-in-percent",
    "air-in-fahrenheit",
    "air-out-of-range",
    "second-at-that-time",
    "spike",
]

LOWEST_HUMIDITY: Final = 0.05
MOST_MISREAD_HUMIDITY: Final = 1.5  # a splashed meter shows this much; above, percent was meant
LOWEST_AIR_C: Final = -25.0
HIGHEST_AIR_C: Final = 40.0
HIGHEST_AIR_F: Final = 104.0
JUMP_K: Final = 15.0
NEAR_K: Final = 5.0
NEARBY: Final = timedelta(hours=12)
SPIKE_KG_M3: Final = 0.004
SPIKE_WITHIN: Final = timedelta(hours=24)


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at a meter, as given: `air_c` [°C] and `humidity_fraction`, one of which may be
    None.

    `humidity_is_named` is False where the source did not say whether its number is a percentage.
    """

    taken_at: datetime
    air_c: float | None
    humidity_fraction: float | None
    humidity_is_named: bool = True


@dataclass(frozen=True, slots=True)
class Judgement:
    """Whether a reading is used, why not, in a sentence, and what it may have meant."""

    use: Use
    reason: Reason = ""
    detail: str = ""
    did_you_mean_c: float | None = None
    did_you_mean_fraction: float | None = None


USED: Final = Judgement("used")


def judge(reading: Reading, nearby: Sequence[Reading] = ()) -> Judgement:
    """Return whether a reading is believed.

    Parameters
    ----------
    reading
        The reading; its time is the caller's to check.
    nearby
        Readings of the same place that are used, in any order.

    Raises
    ------
    ValueError
        When a value is not finite, or both are missing.
    """
    values = [v for v in (reading.air_c, reading.humidity_fraction) if v is not None]
    if not values or not all(map(math.isfinite, values)):
        raise ValueError("A reading needs a finite temperature or humidity.")
    for found in (
        _judge_humidity(reading),
        _judge_air(reading.air_c),
        _judge_time(reading, nearby),
        _judge_jump(reading, nearby),
    ):
        if found is not None:
            return found
    return USED


def judge_all(readings: Sequence[Reading]) -> list[Judgement]:
    """Return the judgement of each reading of one place, in the order given.

    Readings are judged in order of time against those used before them, then single spikes are left
    out: a reading whose vapour density differs by more than 4 g/m³ from both its neighbours, the
    same way.
    """
    order = sorted(range(len(readings)), key=lambda i: readings[i].taken_at)
    judged = [USED] * len(readings)
    used: list[int] = []
    for i in order:
        judged[i] = judge(readings[i], [readings[j] for j in used[-3:]])
        if judged[i].use == "used":
            used.append(i)
    for before, here, after in zip(used, used[1:], used[2:], strict=False):
        if _is_spike(readings[before], readings[here], readings[after]):
            judged[here] = Judgement(
                "left_out", "spike", "It jumps away from the readings before and after it."
            )
    return judged


def may_mean_c(air_c: float | None, detail: str) -> float | None:
    """Return what a temperature is if °F was meant, where its reading still waits to be told so.

    Parameters
    ----------
    air_c
        The temperature as given. [°C]
    detail
        Why the reading is not used: the sentence of its judgement, or of the answer to it.
    """
    if air_c is None:
        return None
    doubt = _maybe_fahrenheit("asked", air_c)
    return doubt.did_you_mean_c if doubt.detail == detail else None


def _judge_humidity(reading: Reading) -> Judgement | None:
    humidity = reading.humidity_fraction
    if humidity is None or LOWEST_HUMIDITY <= humidity <= 1.0:
        return None
    if 1.0 < humidity <= 100.0 and (
        not reading.humidity_is_named or humidity > MOST_MISREAD_HUMIDITY
    ):
        return Judgement(
            "asked",
            "humidity-in-percent",
            f"Is {humidity:g} a percentage? Kept, and left out of estimates until you say.",
            did_you_mean_fraction=humidity / 100.0,
        )
    if humidity > 1.0:
        return Judgement(
            "left_out",
            "humidity-above-all",
            f"{_percent(humidity)} humidity cannot be. Kept, and left out of estimates.",
        )
    return Judgement(
        "left_out",
        "humidity-too-low",
        f"{_percent(humidity)} humidity is below what a meter can show. "
        "Kept, and left out of estimates.",
    )


def _judge_air(air_c: float | None) -> Judgement | None:
    if air_c is None or LOWEST_AIR_C <= air_c <= HIGHEST_AIR_C:
        return None
    if HIGHEST_AIR_C < air_c <= HIGHEST_AIR_F:
        return _maybe_fahrenheit("left_out", air_c)
    return Judgement(
        "left_out",
        "air-out-of-range",
        f"{air_c:g} °C is no air of a room. Kept, and left out of estimates.",
    )


def _judge_time(reading: Reading, nearby: Sequence[Reading]) -> Judgement | None:
    if all(other.taken_at != reading.taken_at for other in nearby):
        return None
    return Judgement(
        "left_out",
        "second-at-that-time",
        "There is a reading at that time already. Kept, and left out of estimates.",
    )


def _judge_jump(reading: Reading, nearby: Sequence[Reading]) -> Judgement | None:
    """Ask about a number that is no temperature of this room, but would be one in °F."""
    close = [
        other
        for other in nearby
        if other.air_c is not None and abs(other.taken_at - reading.taken_at) <= NEARBY
    ]
    if reading.air_c is None or not close:
        return None
    last = min(close, key=lambda other: abs(other.taken_at - reading.taken_at))
    assert last.air_c is not None  # `close` holds no other
    jumps = abs(reading.air_c - last.air_c) > JUMP_K
    fits = abs(_from_fahrenheit(reading.air_c) - last.air_c) <= NEAR_K
    return _maybe_fahrenheit("asked", reading.air_c) if jumps and fits else None


def _maybe_fahrenheit(use: Use, air_c: float) -> Judgement:
    meant = round(_from_fahrenheit(air_c), 1)
    return Judgement(
        use,
        "air-in-fahrenheit",
        f"{air_c:g} °C: was it {air_c:g} °F, which is {meant:g} °C? "
        "Kept, and left out of estimates until you say.",
        did_you_mean_c=meant,
    )


def _is_spike(before: Reading, here: Reading, after: Reading) -> bool:
    if after.taken_at - before.taken_at > SPIKE_WITHIN:
        return False
    vapour = [_vapour(reading) for reading in (before, here, after)]
    if vapour[0] is None or vapour[1] is None or vapour[2] is None:
        return False
    up, down = vapour[1] - vapour[0], vapour[1] - vapour[2]
    return min(abs(up), abs(down)) > SPIKE_KG_M3 and up * down > 0


def _vapour(reading: Reading) -> float | None:
    if reading.air_c is None or reading.humidity_fraction is None:
        return None
    return float(vapour_density_kg_m3(reading.air_c, reading.humidity_fraction))


def _from_fahrenheit(air_f: float) -> float:
    return (air_f - 32.0) / 1.8


def _percent(fraction: float) -> str:
    return f"{100.0 * fraction:.4g} %"
