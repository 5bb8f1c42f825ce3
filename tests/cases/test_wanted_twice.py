"""One mould that two people want on one afternoon: what the one who booked it is told."""

from typing import Any

from pieces.models import Part
from studio.domain.ids import uuid7
from studio.models import Reminder


def said_to_jun(yard) -> str:
    """Have Bram press what Jun booked, with another mould of the same tile free and dry."""
    mould, other = yard.mould("M01"), yard.mould("M02")
    owner = yard.demo.client("odile")
    address = f"/api/v1/studios/{yard.demo.studio.slug}/mould-sets/{mould.pk}/"
    told = {"id": str(uuid7()), "happened_at": yard.clock.now.isoformat(), "release_h": 3.0}
    assert owner.patch(address, told, format="json").status_code == 200
    in_it = Part.objects.get(piece__mark="T26", role="tile")
    yard.at("2026-10-31 12:00")
    yard.tell("odile", f"parts/{in_it.pk}/events/", kind="demoulded")
    yard.tell("odile", f"mould-sets/{other.pk}/weighings/", mass_g=2280)
    hours = {"from_at": "2026-10-31T14:00:00Z", "until_at": "2026-10-31T17:00:00Z"}
    yard.tell("jun", f"mould-sets/{mould.pk}/bookings/", **hours)
    yard.at("2026-10-31 13:10")
    casting = yard.casting("M01")
    mark = {"id": str(uuid7()), "mark": "T40", "design_id": str(mould.makes.design_id)}
    pressed: dict[str, Any] = {
        "casting_id": str(casting.pk),
        "mould_part_ids": [str(casting.parts.get(name="face").pk)],
        "parts": [{"id": str(uuid7()), "role": "tile", "piece": mark}],
    }
    yard.tell("bram", f"mould-sets/{mould.pk}/pressings/", **pressed)
    row = Reminder.objects.get(cause="mould_booked", person__first_name="Jun")
    return row.body


class TestBooker:
    def test_is_told_till_when_it_is_in_use_and_which_one_is_dry(self, yard) -> None:
        body = said_to_jun(yard)

        # The third press since dry takes a third longer than the first: 3 h x 4/3 = 4 h, by hand
        assert body == (
            "Bram pressed M01 at 13:10. In use till about 17:10, then wet: M02 g2 is dry."
        )
