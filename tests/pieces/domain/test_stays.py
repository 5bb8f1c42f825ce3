import numpy as np
import pytest

from pieces.domain.drying import Climate, Reading, climate_from, constant_climate
from pieces.domain.stays import air_along
from tests.pieces.domain.windows import HOUR_S

DAY_S = 24 * HOUR_S
WARM = constant_climate(0, DAY_S, 20.0, 0.5)
COLD = constant_climate(0, DAY_S, 5.0, 0.9)


def read_at(*hours: float, air_c: float) -> Climate:
    readings = [Reading(hour * HOUR_S, air_c, 0.6) for hour in hours]
    return climate_from(readings, 0, DAY_S)


class TestAirAlong:
    def test_is_that_of_each_place_while_the_piece_stood_there(self) -> None:
        found = air_along([(0, WARM), (5 * HOUR_S, COLD), (8 * HOUR_S, WARM)], from_s=0)

        assert found.air_c.tolist() == [20.0] * 5 + [5.0] * 3 + [20.0] * 16
        assert np.all(found.vapour_kg_m3[5:8] == COLD.vapour_kg_m3[0])

    @pytest.mark.parametrize(("moved_at_h", "cold_hours"), [(5.4, 19), (5.6, 18)])
    def test_gives_an_hour_to_where_it_stood_in_the_middle(self, moved_at_h, cold_hours) -> None:
        found = air_along([(0, WARM), (moved_at_h * HOUR_S, COLD)], from_s=0)

        assert int(np.sum(found.air_c == 5.0)) == cold_hours

    def test_begins_with_the_hour_of_the_piece(self) -> None:
        found = air_along([(3.5 * HOUR_S, WARM)], from_s=3.5 * HOUR_S)

        assert (found.start_s, found.end_s) == (3 * HOUR_S, DAY_S)

    def test_never_mixes_in_what_a_later_place_was_like_before(self) -> None:
        cellar = read_at(2, 6, 14, air_c=5.0)  # looked at while the piece stood elsewhere

        found = air_along([(0, WARM), (10 * HOUR_S, cellar)], from_s=0)

        assert np.all(found.air_c[:10] == 20.0)
        assert np.all(found.air_c[10:] == 5.0)

    @pytest.mark.parametrize(
        ("hours", "measured_to_h"),
        [
            ([(4,), (2,)], 4),  # not looked at since it stands there
            ([(4,), (12,)], 12),
            ([(15,), (2,)], 10),  # looked at after it left
        ],
    )
    def test_is_known_up_to_the_last_look_where_it_stood(self, hours, measured_to_h) -> None:
        first, second = (read_at(*each, air_c=10.0) for each in hours)

        found = air_along([(0, first), (10 * HOUR_S, second)], from_s=0)

        assert found.measured_to_s == measured_to_h * HOUR_S

    def test_is_not_known_without_a_meter(self) -> None:
        assert air_along([(0, WARM)], from_s=0).measured_to_s is None

    @pytest.mark.parametrize(
        ("stays", "from_s", "says"),
        [
            ([], 0.0, "stands somewhere"),
            ([(0, WARM), (1, constant_climate(0, 2 * DAY_S, 5.0, 0.9))], 0.0, "the same hours"),
            ([(0, WARM)], -1.0, "cover from_s"),
            ([(0, WARM)], DAY_S, "cover from_s"),
        ],
    )
    def test_refuses_what_does_not_fit_together(self, stays, from_s, says) -> None:
        with pytest.raises(ValueError, match=says):
            air_along(stays, from_s=from_s)
