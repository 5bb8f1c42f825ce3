"""How moving air takes heat and vapour from a surface.

Air along a flat plate, laminar: Nu = 0.664 Re^1/2 Pr^1/3 (E. Pohlhausen 1921, in any textbook of
heat transfer; from memory). Air at 20 °C; a plate as long as a mug is high.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from pieces.domain.drying.problem import STILL_AIR, Exchange

PLATE_M: Final = 0.15
AIR_VISCOSITY_M2_S: Final = 1.51e-5
AIR_CONDUCTIVITY_W_M_K: Final = 0.0257
PRANDTL: Final = 0.71


def exchange_in(air_m_s: float) -> Exchange:
    """Return the exchange with air that moves at `air_m_s`, from 0 to 5; never less than still."""
    reynolds = air_m_s * PLATE_M / AIR_VISCOSITY_M2_S
    nusselt = 0.664 * float(np.sqrt(reynolds) * np.cbrt(PRANDTL))
    moved_w_m2_k = nusselt * AIR_CONDUCTIVITY_W_M_K / PLATE_M
    return Exchange(max(STILL_AIR.convection_w_m2_k, moved_w_m2_k))
