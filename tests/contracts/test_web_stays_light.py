"""The web's processes start quickly and stay small: nothing in them imports the compiler."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LOAD = """
import sys
import django
django.setup()
from studio.project import urls, wsgi
from pieces.domain.drying import Batch, BODIES, Face, FaceEvent, Problem, Section, Shape
from pieces.domain.drying import constant_climate, ensemble, simulate
section, event = Section(Shape.FLAT, 0.008), FaceEvent(0.0, Face(0.4), Face(1.0))
air = constant_climate(0, 36000, 20.0, 0.5)
problem = Problem(BODIES["porcelain"], section, (event,), air)
simulate(Batch((ensemble(problem, 2),), 36000))
print(sorted({"numba", "llvmlite"} & set(sys.modules)))
"""


class TestTheWeb:
    def test_leaves_numba_out_even_when_it_reckons(self) -> None:
        done = subprocess.run(
            [sys.executable, "-c", LOAD],
            cwd=ROOT,
            capture_output=True,
            text=True,
            check=True,
        )

        assert done.stdout.strip() == "[]"
