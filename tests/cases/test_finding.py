"""Something stands on a shelf without a name."""

import io

from PIL import Image

from moulds.models import Design
from studio.domain.ids import uuid7
from studio.models import Place, Reminder
from tests import pictures
from tests.pictures import sent_photo

SLUG = "sallowbeck-yard"


def shelf(yard, name: str) -> str:
    return str(Place.objects.of(yard.demo.studio).get(name=name).pk)


def beaker_of_jun(yard) -> str:
    """Have Jun throw a beaker and leave it on Rack B2, nine days before it is found."""
    design = Design.objects.of(yard.demo.studio).get(name="beaker")
    made = yard.tell("jun", "pieces/", design_id=str(design.pk), count=1)["pieces"][0]
    thrown = {"part_id": str(uuid7()), "role": "beaker"}
    yard.tell("jun", f"pieces/{made['id']}/parts/", **thrown)
    yard.tell("jun", f"pieces/{made['id']}/moves/", place_id=shelf(yard, "Rack B2"))
    mark: str = made["mark"]
    return mark


class TestNamelessBeaker:
    def test_comes_back_to_its_maker_by_its_photo_its_size_and_its_shelf(self, yard) -> None:
        yard.at("2026-10-31 10:00")
        mark = beaker_of_jun(yard)
        yard.at("2026-11-09 16:20")
        snap = pictures.from_a_camera(1600, 1200)
        happened_at = yard.clock.now.isoformat()
        piet = yard.demo.client("piet")
        photo = sent_photo(piet, snap, slug=SLUG, happened_at=happened_at).json()["id"]

        found = yard.tell(
            "piet",
            "found/",
            what="beaker, its tag is gone",
            place_id=shelf(yard, "Rack B2"),
            x_mm=81,
            y_mm=81,
            height_mm=105,
            looks="bone_dry",
            photo_ids=[photo],
        )["found"]
        likely = found["candidates"]
        asked = [row["member"]["id"] for row in likely]
        yard.tell("piet", f"found/{found['id']}/askings/", member_ids=asked)

        assert 1 <= len(likely) <= 3
        juns = next(row for row in likely if row["piece"]["mark"] == mark)
        assert juns["member"]["first_name"] == "Jun"
        assert {"stood there by the records", "its size fits"} <= set(juns["why"])
        reminder = Reminder.objects.get(
            person=yard.demo.member("jun"), cause="is_this_yours", object_id=found["id"]
        )
        assert "beaker" in reminder.title

        seen = yard.get(f"found/{found['id']}/", "jun")["photo_ids"]
        picture = yard.demo.client("jun").get(f"/api/v1/studios/{SLUG}/photos/{seen[0]}/image/")
        assert Image.open(io.BytesIO(picture.content)).size == (1600, 1200)
        assert b"Exif" not in picture.content

        yard.tell("jun", "claims/", found_id=found["id"], piece_id=juns["piece"]["id"])
        given = yard.tell("piet", f"found/{found['id']}/endings/", kind="returned")["found"]
        assert (given["state"], given["returned_to"]["first_name"]) == ("returned", "Jun")
        assert given["photo_ids"] == [photo]
