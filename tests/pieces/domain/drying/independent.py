"""A second, independent reckoning of a wall: scipy BDF, even nodes, exact balance of heat.

Shares no code with the model but the saturation pressure, and nothing of its method: cell-centred
differences of the diffusivity's mean, the surface temperature by Newton's method, plaster as 20
cells instead of one node.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.integrate import solve_ivp

from studio.domain import moist_air

LATENT_J_KG = 2.453e6
HEAT_RADIATION = 5.5
CELLS = 81
PLASTER_CELLS = 20


@dataclass(frozen=True)
class Wall:
    """A section of red earthenware; `plaster` is (thickness_m, saturation) at the outer face."""

    power: int
    depth_m: float
    inner: Sequence[tuple[float, float]]  # (from_s, openness)
    outer: Sequence[tuple[float, float]]
    air_c: np.ndarray
    vapour: np.ndarray
    plaster: tuple[float, float] | None = None
    plaster_until_s: float = math.inf


def full_density(at_c: float) -> float:
    pressure = 611.21 * math.exp((18.678 - at_c / 234.5) * at_c / (257.14 + at_c))
    return pressure / (461.5 * (at_c + 273.15))


def evaporation(activity: float, openness: float, air_c: float, vapour: float) -> float:
    """Solve h (T - Ts) = L k f (a rho_sat(Ts) - rho_v) for the flow, by Newton's method."""
    k = 3.0 / (1.204 * 1006.0 * 0.90) * openness
    heat = 3.0 + HEAT_RADIATION
    at_c = air_c - 2.0
    for _ in range(30):
        full = full_density(at_c)
        slope = (full_density(at_c + 1e-4) - full) / 1e-4
        off = heat * (air_c - at_c) - LATENT_J_KG * k * (activity * full - vapour)
        step = off / (heat + LATENT_J_KG * k * activity * slope)
        at_c += step
        if abs(step) < 1e-10:
            break
    return k * (activity * full_density(at_c) - vapour)


def clay_activity(x: float) -> float:
    odds = (max(x, 1e-9) / 0.015) ** (1 / 0.45)
    return odds / (1 + odds)


def at(schedule: Sequence[tuple[float, float]], now: float) -> float:
    return [value for since, value in schedule if since <= now + 1e-6][-1]


def moistures(wall: Wall, hours: int) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Return instants [s], mean and largest moisture, every tenth of an hour (every 36 s at first).

    Each hour is integrated by itself, since the air and the faces change by steps.
    """
    edges = np.linspace(0.0, wall.depth_m, CELLS + 1)
    width = edges[1] - edges[0]
    area = edges**wall.power
    volume = np.diff(edges ** (wall.power + 1)) / (wall.power + 1)
    dry = 1.0 / (1.0 / 2650.0 + 0.25 / 1000.0)
    layers = PLASTER_CELLS if wall.plaster else 0
    state = np.full(CELLS + layers, 0.25)
    if wall.plaster:
        state[CELLS:] = wall.plaster[1]

    def face(x_cell: float, diffusivity: float, taken) -> float:
        """Return the moisture on a face: the half cell passes what the face gives off."""
        x = x_cell
        for _ in range(60):
            mean_d = diffusivity * math.exp(10.0 * (0.5 * (x + x_cell) - 0.20))
            off = dry * mean_d * (x_cell - x) / (0.5 * width) - taken(x)
            nudge = 1e-7
            mean_up = diffusivity * math.exp(10.0 * (0.5 * (x + nudge + x_cell) - 0.20))
            up = dry * mean_up * (x_cell - x - nudge) / (0.5 * width) - taken(x + nudge)
            step = -off * nudge / (up - off)
            x = max(x + max(min(step, 0.02), -0.02), 1e-6)
            if abs(step) < 1e-11:
                break
        return taken(x)

    def rate(hour: int, now: float):
        air_c, vapour = float(wall.air_c[hour]), float(wall.vapour[hour])
        warm = math.exp(-20_000.0 / 8.314462 * (1 / (air_c + 273.15) - 1 / 293.15))
        diffusivity = 2.0e-9 * warm
        inner, outer = at(wall.inner, now), at(wall.outer, now)
        in_plaster = wall.plaster is not None and now < wall.plaster_until_s

        def slope_of(_: float, y: np.ndarray) -> np.ndarray:
            x = y[:CELLS]
            between = diffusivity * np.exp(10.0 * (0.5 * (x[1:] + x[:-1]) - 0.20))
            flow = np.zeros(CELLS + 1)
            flow[1:-1] = dry * area[1:-1] * between * (x[:-1] - x[1:]) / width

            def to_air(openness: float):
                return lambda value: evaporation(clay_activity(value), openness, air_c, vapour)

            if wall.power == 0:
                flow[0] = -face(float(x[0]), diffusivity, to_air(inner))
            dy = np.zeros_like(y)
            if in_plaster:
                thickness = wall.plaster[0] / layers
                first = float(y[CELLS])

                def to_plaster(value: float) -> float:
                    pull = 50e3 * math.exp(-(value - 0.25) / 0.04) / 150e3
                    rest = (1 + pull**2) ** -0.5
                    through = 0.5 * thickness / (2.8e-7 * 435.0) + 1 / 1.5e-4
                    return (rest - first) / through

                drawn = face(float(x[-1]), diffusivity, to_plaster)
                flow[-1] = area[-1] * drawn
                s = y[CELLS:]
                move = np.zeros(layers + 1)
                move[0] = drawn
                move[1:-1] = 2.8e-7 * 435.0 * (s[:-1] - s[1:]) / thickness
                far = float(s[-1])
                move[-1] = evaporation(far / (far + 0.02), 1.0, air_c, vapour)
                dy[CELLS:] = (move[:-1] - move[1:]) / (thickness * 435.0)
            else:
                flow[-1] = area[-1] * face(float(x[-1]), diffusivity, to_air(outer))
            dy[:CELLS] = (flow[:-1] - flow[1:]) / (dry * volume)
            return dy

        return slope_of

    instants, means, most = [0.0], [0.25], [0.25]
    for hour in range(hours):
        begin = 3600.0 * hour
        marks = np.linspace(begin, begin + 3600.0, 11)
        found = solve_ivp(
            rate(hour, begin),
            (begin, begin + 3600.0),
            state,
            method="BDF",
            t_eval=marks[1:],
            rtol=1e-6,
            atol=1e-8,
        )
        state = found.y[:, -1]
        x = found.y[:CELLS]
        instants.extend(found.t)
        means.extend((volume[:, None] * x).sum(axis=0) / volume.sum())
        most.extend(x.max(axis=0))
    return np.array(instants), np.array(means), np.array(most)


def crossing_h(instants: np.ndarray, moisture: np.ndarray, limit: float) -> float:
    """Return the hour at which `moisture` first falls to `limit`, inf if it does not."""
    below = np.flatnonzero(moisture <= limit)
    if not below.size or below[0] == 0:
        return math.inf
    i = int(below[0])
    part = (moisture[i - 1] - limit) / (moisture[i - 1] - moisture[i])
    return float(instants[i - 1] + part * (instants[i] - instants[i - 1])) / 3600.0


def weather(hours: int) -> tuple[np.ndarray, np.ndarray]:
    """Return hourly temperature and vapour density of a restless room."""
    random = np.random.default_rng(7)
    hour = np.arange(hours)
    air = 18.0 + 3.0 * np.sin(2 * np.pi * hour / 24) + random.normal(0.0, 0.7, hours)
    humidity = np.clip(0.55 + 0.12 * np.cos(2 * np.pi * hour / 24 + 1), 0.3, 0.9)
    return air, moist_air.vapour_density_kg_m3(air, humidity)
