import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pieces.domain.drying import Quantiles, ReadinessWindows, Stage, Window
from pieces.domain.window_store import restored, stored
from tests.pieces.domain.windows import NEVER, windows

instants = st.floats(0.0, 4e9) | st.just(float("inf"))
quantiles = st.builds(Quantiles, instants, instants, instants, st.floats(0.0, 1.0))
any_windows = st.builds(
    ReadinessWindows,
    demould=st.builds(Window, quantiles, quantiles),
    join=st.builds(Window, quantiles, quantiles),
    shrinkage_ended=quantiles,
    bisque=quantiles,
    not_in_this_room=st.frozensets(st.sampled_from(Stage)),
)


class TestStored:
    @given(any_windows)
    def test_comes_back_as_it_was_through_plain_json(self, its: ReadinessWindows) -> None:
        kept = json.loads(json.dumps(stored(its), allow_nan=False))

        assert restored(kept) == its

    def test_keeps_no_date_for_what_the_room_cannot_do(self) -> None:
        kept = stored(windows(bisque=NEVER, shut=frozenset({Stage.BISQUE})))

        assert kept["bisque"] == {"p10_s": None, "p50_s": None, "p90_s": None, "p_never": 1.0}
        assert kept["not_in_this_room"] == ["bisque"]


class TestRestored:
    def test_refuses_another_form(self) -> None:
        with pytest.raises(KeyError):
            restored({"demould": {}})
