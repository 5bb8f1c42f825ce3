"""Ten thousand mixed pieces to time the drying with, and the same told in finer steps."""

import numpy as np

from pieces.domain.drying import (
    BODIES,
    Climate,
    Cover,
    Ensemble,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Reading,
    Section,
    Shape,
    climate_from,
    in_mould,
    out_of_mould,
)
from pieces.domain.drying.draws import ensemble_of

HOUR_S = 3600
HOURS = 336
SECTIONS = [
    Section(Shape.FLAT, 0.008),
    Section(Shape.FLAT, 0.010),
    Section(Shape.FLAT, 0.014),
    Section(Shape.ROD, 0.010),
    Section(Shape.LUMP, 0.030),
]


def room(air_c: float = 15.0, humidity: float = 0.6) -> Climate:
    """Return the air of a room that warms by day."""
    readings = [
        Reading(
            4.0 * i * HOUR_S,
            air_c + 3.0 * np.sin(2 * np.pi * i / 6),
            humidity + 0.1 * np.cos(2 * np.pi * i / 6),
        )
        for i in range(110)
    ]
    return climate_from(readings, 0, 400 * HOUR_S)


def rooms() -> list[Climate]:
    """Return four rooms, cool and damp to warm and dry."""
    return [room(12.0, 0.7), room(15.0, 0.6), room(19.0, 0.5), room(22.0, 0.4)]


def mixed(pieces: int, seed: int = 1) -> list[Problem]:
    """Return pieces of five sections and six bodies in four rooms: in a mould, out, covered, open.

    No two are alike: each has instants, plaster and a cover of its own.
    """
    chance, air, bodies = np.random.default_rng(seed), rooms(), list(BODIES.values())
    problems = []
    for i in range(pieces):
        section, begun = SECTIONS[i % len(SECTIONS)], float(chance.integers(0, 24 * HOUR_S))
        out, covered, open_again = np.cumsum(chance.uniform([2, 1, 6], [9, 24, 60])) * HOUR_S
        cover = (Cover.LOOSE, Cover.TUCKED)[int(chance.integers(0, 2))]
        events = (
            in_mould(begun, section, Plaster(float(chance.uniform(0.05, 0.5)))),
            out_of_mould(begun + out, section),
            out_of_mould(begun + covered, section, cover=cover),
            out_of_mould(begun + open_again, section),
        )
        body = bodies[int(chance.integers(0, len(bodies)))]
        problems.append(Problem(body, section, events, air[int(chance.integers(0, 4))]))
    return problems


def one_draw_each(problems: list[Problem], seed: int = 2) -> tuple[Ensemble, ...]:
    """Return each piece with one draw of what is not known of it."""
    chance = np.random.default_rng(seed)
    made = []
    for problem in problems:
        belief = problem.belief
        theta = chance.normal(np.array(belief.mean), belief.sd)[:, None]
        theta[2] += problem.body.pressed_kg_per_kg
        made.append(ensemble_of(problem, theta))
    return tuple(made)


def finely(made: Ensemble, nodes: int = 65, every_s: int = HOUR_S // 4) -> Ensemble:
    """Return the same piece on many nodes, its schedule said over again so that steps are short.

    Steps end where an event falls: quarter hours, and 225 s in the six hours after a change.
    """
    problem = made.problem
    begun, end = problem.pressed_at_s, problem.pressed_at_s + HOURS * HOUR_S
    known = {round(event.at_s): event for event in problem.events}
    told = set(range(begun, end, every_s)) | set(known)
    for at in known:
        told |= set(range(at, min(at + 6 * HOUR_S, end), every_s // 4))
    events, last = [], problem.events[0]
    for at in sorted(told):
        last = known.get(at, last)
        is_said_again = at not in known
        faces = [_going_on(face) if is_said_again else face for face in (last.inner, last.outer)]
        events.append(FaceEvent(at, *faces, is_covered=last.is_covered))
    finer = Problem(problem.body, problem.section, tuple(events), problem.climate)
    return ensemble_of(finer, made.theta, nodes)


def _going_on(face: Face) -> Face:
    plaster = face.plaster
    if plaster is None:
        return face
    rest = (plaster.thickness_m, plaster.capacity_kg_m3, plaster.outside_factor)
    return Face(face.factor, Plaster(None, *rest))
