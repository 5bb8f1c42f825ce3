"""A sauce boat whose handle is out of its mould hours before its body: made to meet, or missed."""

from datetime import datetime

import pytest

from pieces.actions import forecasts
from studio.domain.ids import uuid7
from studio.models import Place


def pressed(yard, label: str, role: str, piece: dict[str, str]) -> str:
    """Press one part of a boat in all of its mould; return the part's id."""
    part, casting = str(uuid7()), yard.casting(label)
    yard.tell(
        "odile",
        f"mould-sets/{yard.mould(label).pk}/pressings/",
        casting_id=str(casting.pk),
        mould_part_ids=[str(mould_part.pk) for mould_part in casting.parts.all()],
        parts=[{"id": part, "role": role, "piece": piece}],
    )
    return part


@pytest.fixture
def boat(yard) -> dict[str, str]:
    """A boat pressed in the morning: its handle out at two and in the open, its body out at five.

    The handle is a rod of 12 mm with air all round it and a waist of 9 mm; the body a wall of
    11 mm, one side of which lies in its own shelter.
    """
    piece = str(uuid7())
    yard.at("2026-10-31 09:00")
    new = {"id": piece, "mark": "S40", "design_id": str(yard.mould("M04").makes.design_id)}
    handle = pressed(yard, "M04", "handle", new)
    yard.at("2026-10-31 10:00")
    body = pressed(yard, "M03", "body", {"id": piece})
    yard.at("2026-10-31 14:00")
    yard.tell("odile", f"parts/{handle}/events/", kind="demoulded")
    rack = Place.objects.get(studio=yard.demo.studio, name="Rack A")
    yard.tell("odile", f"pieces/{piece}/moves/", place_id=str(rack.pk))
    yard.at("2026-10-31 17:00")
    yard.tell("odile", f"parts/{body}/events/", kind="demoulded")
    return {"id": piece, "handle": handle, "body": body}


def covering(yard, boat):
    """Return what is advised, once what was written has been reckoned with."""
    forecasts.refresh(studio=yard.demo.studio, at=yard.clock.now, piece_id=boat["id"])
    return yard.get(f"pieces/{boat['id']}/drying/")["covering"]


def to_join(yard):
    """Return the boat's row among those to join."""
    rows = yard.get("bench/")["join_today"]
    return next(row for row in rows if row["piece"]["mark"] == "S40")


def instant(said: str) -> datetime:
    return datetime.fromisoformat(said)


class TestAHandleThatIsAhead:
    def test_is_wrapped_so_that_both_are_leather_hard_at_once(self, yard, boat) -> None:
        five = yard.clock.now
        apart, row = covering(yard, boat), to_join(yard)
        (step,) = apart["steps"]
        yard.tell(
            "odile",
            f"pieces/{boat['id']}/covers/",
            state=step["cover"],
            part_ids=step["part_ids"],
        )
        yard.at("2026-10-31 18:00")
        wrapped, row_wrapped = covering(yard, boat), to_join(yard)

        # Out first, and drying all round: the handle closes first, so it is the one to cover.
        assert step["part_ids"] == [boat["handle"]]
        assert step["words"] == "wrap the handle"
        assert (
            apart["meeting"]["words"]
            == "Wrap the handle now, so that they come to leather-hard together."
        )
        assert row["cover_next"] == step
        assert row["verdict"] == "now"
        # Left open they part within two hours; wrapped there is the evening to join them.
        opens, closes = (instant(apart["meeting"][end]) for end in ("opens", "closes"))
        left_open = instant(row["window"]["closes"]["p50"])
        assert opens < five
        assert (left_open - five).total_seconds() < 2 * 3600
        assert (closes - five).total_seconds() > 2 * 3600
        # Once it is done it is told as it stands, and the bench says the same until when.
        assert wrapped["meeting"]["words"] == "Leather-hard together as they stand."
        assert wrapped["steps"] == [] or wrapped["steps"][0]["part_ids"] != [boat["handle"]]
        assert instant(row_wrapped["window"]["closes"]["p50"]) > left_open
        # The waist is thinner than 4/5 of the rod, and gone before the rod as a whole.
        assert apart["thin"]["thinnest_mm"] == 9.0
        assert instant(apart["thin"]["closes"]) < left_open

    def test_is_not_to_be_wrapped_now_when_it_has_gone_too_stiff_meanwhile(
        self, yard, boat
    ) -> None:
        covering(yard, boat)
        yard.at("2026-10-31 21:00")

        late, row = covering(yard, boat), to_join(yard)

        said = "The parts do not come to leather-hard together: feel them before you join."
        assert late["meeting"] == {"opens": None, "closes": None, "words": said}
        assert (row["verdict"], row["reason"]) == ("too_stiff", said)
