"""The air that drying is reckoned in; plaster dries in it too, so it lies in `studio`."""

from studio.domain.room_air import HOUR_S, Climate, Reading, climate_from, constant_climate

__all__ = ["HOUR_S", "Climate", "Reading", "climate_from", "constant_climate"]
