"""When parts are leather-hard together, and what brings that about."""

import pytest

from pieces.domain.covering import PartNow, meet
from pieces.domain.drying import Cover, Section, Shape
from tests.pieces.domain.covering.standing import HOUR_S, after, piece

BODY = Section(Shape.FLAT, 0.012)
HANDLE = Section(Shape.ROD, 0.009)
WAYS = (-0.3, 0.0, 0.3, 0.1)


def part(section: Section, cover: Cover | None = Cover.OPEN, hours: int = 0) -> PartNow:
    state = piece(section, cover=cover or Cover.OPEN, exchange=WAYS)
    return PartNow(after(state, hours) if hours else state, cover)


class TestMeet:
    def test_says_when_two_like_parts_are_fit_together(self) -> None:
        found = meet([part(BODY), part(BODY)], 0.0)

        assert found.covers == ()
        assert found.window is not None
        assert found.window.opens.p50_s < found.window.closes.p50_s

    def test_covers_the_thin_handle_that_would_be_too_stiff(self) -> None:
        found = meet([part(BODY), part(HANDLE)], 0.0)

        assert found.window is not None
        ((which, cover),) = found.covers
        assert (which, cover is Cover.OPEN) == (1, False)
        length = found.window.closes.p50_s - found.window.opens.p50_s
        assert length >= 2 * HOUR_S

    def test_opens_the_body_rather_than_change_two_covers(self) -> None:
        slow, quick = part(BODY, Cover.TUCKED), part(HANDLE, Cover.LOOSE)

        found = meet([slow, quick], 0.0)

        assert len(found.covers) == 1
        assert found.covers[0] == (0, Cover.OPEN)

    def test_says_so_when_one_is_too_stiff_already(self) -> None:
        stiff = part(HANDLE, hours=30)

        found = meet([part(BODY), stiff], 30.0 * HOUR_S)

        assert found.window is None
        assert found.covers == ()

    def test_does_not_cover_what_is_in_its_mould(self) -> None:
        found = meet([part(BODY), part(HANDLE, cover=None)], 0.0)

        assert all(which == 0 for which, _ in found.covers)

    def test_refuses_a_part_alone(self) -> None:
        with pytest.raises(ValueError, match="Two parts"):
            meet([part(BODY)], 0.0)
