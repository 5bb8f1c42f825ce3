"""Names of the clay bodies whose drying figures Natch starts from.

The figures live with the drying model, which sits above this app; a clay names one of these.
"""

from typing import Final

NAMES: Final = (
    "red_earthenware",
    "white_earthenware",
    "grogged_stoneware",
    "smooth_stoneware",
    "porcelain",
    "terracotta_crank",
)
