"""Regression: the hours of an earlier kernel, and what potters say. Neither is a measurement."""

import math

import numpy as np
import pytest

from pieces.domain.drying import (
    STAGES,
    Batch,
    Cover,
    Face,
    FaceEvent,
    Plaster,
    Section,
    Shape,
    Stage,
    in_mould,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of
from tests.pieces.domain.drying.problems import WALL, carried, hours_of, rows, wall

COLUMNS = ("demould_h", "join_opens_h", "join_closes_h", "shrinkage_h", "bisque_h")


class TestSimulate:
    @pytest.mark.parametrize("row", rows("check_values.csv"), ids=lambda row: row["case"])
    def test_comes_to_the_stages_when_the_earlier_kernel_did(self, row) -> None:
        section = Section(Shape(row["shape"]), float(row["thickest_mm"]) / 1000.0)
        outer = Face(0.0, Plaster(float(row["plaster"]))) if row["plaster"] else None
        event = FaceEvent(0.0, Face(float(row["inner"])), outer or Face(float(row["outer"])))
        problem = wall(
            (event,),
            section=section,
            air_c=float(row["air_c"]),
            humidity=float(row["humidity"]),
            hours=504,
        )

        hours = hours_of(carried(problem, 504))

        expected = {name: float(row[name]) for name in COLUMNS if row[name]}
        found = {name: hours[COLUMNS.index(name)] for name in expected}
        assert found == pytest.approx(expected, rel=float(row["tolerance"]))

    @pytest.mark.parametrize("row", rows("practice.csv"), ids=lambda row: row["practice"])
    def test_lies_where_practice_has_it(self, row) -> None:
        # common practice in a room of 20 °C and half humidity
        section = Section(Shape(row["shape"]), float(row["thickest_mm"]) / 1000.0)
        if row["plaster"]:
            event = in_mould(0.0, section, Plaster(float(row["plaster"])))
        else:
            event = out_of_mould(0.0, section, cover=Cover(row["cover"]))

        hours = hours_of(carried(wall((event,), section=section, hours=1000), 1000))

        at = hours[STAGES.index(Stage(row["stage"]))]
        assert float(row["from_h"]) <= at <= float(row["to_h"])

    @pytest.mark.parametrize(
        ("what", "elasticity"), [("thickness", 1.00), ("exchange", -0.79), ("diffusivity", 0.00)]
    )
    def test_leans_on_thickness_and_room_and_hardly_on_the_clay(
        self, what: str, elasticity: float
    ) -> None:
        def opens_at(factor: float) -> float:
            theta = np.array([[0.0], [0.0], [0.25], [0.0], [0.0]])
            thickness = WALL.thickest_m
            if what == "thickness":
                thickness *= factor
            else:
                theta[1 if what == "exchange" else 0] = math.log(factor)
            problem = wall(section=Section(Shape.FLAT, thickness))
            return hours_of(simulate(Batch((ensemble_of(problem, theta, 17),), 360_000.0)))[1]

        slope = math.log(opens_at(1.05) / opens_at(0.95)) / math.log(1.05 / 0.95)
        assert slope == pytest.approx(elasticity, abs=0.02)  # regression, earlier kernel
