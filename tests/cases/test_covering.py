"""A sauce boat with a thin handle: covered at the handle alone, and opened again with the rest."""

from pieces.actions import forecasts
from pieces.models import Forecast, Part
from studio.models import Place

HANDLE_LEADS = "dries ahead of the body"


def drying(yard, piece):
    """Return what is told of its drying, once what was written has been reckoned with."""
    forecasts.refresh(studio=yard.demo.studio, at=yard.clock.now, piece_id=piece.pk)
    return yard.get(f"pieces/{piece.pk}/drying/")


def middle_dry_s(part):
    """Return when the middle guess has a part dry enough to fire. [s since 1970]"""
    return Forecast.objects.get(part=part).windows["bisque"]["p50_s"]


class TestAThinHandle:
    def test_is_covered_by_itself_and_told_again_once_all_is_opened(self, yard) -> None:
        yard.at("2026-10-31 09:00")
        boat = yard.piece("S05")
        handle = Part.objects.get(piece=boat, role="handle")
        rack = Place.objects.get(studio=yard.demo.studio, name="Rack A")
        yard.tell("odile", f"pieces/{boat.pk}/moves/", place_id=str(rack.pk))

        before = drying(yard, boat)
        (row,) = [row for row in yard.get("bench/")["drying"] if row["piece"]["mark"] == "S05"]
        step = before["covering"]["steps"][0]
        covered = {"state": step["cover"], "part_ids": step["part_ids"]}
        yard.tell("odile", f"pieces/{boat.pk}/covers/", **covered)
        yard.at("2026-10-31 10:00")
        dry_s = [middle_dry_s(handle)]
        after = drying(yard, boat)
        dry_s.append(middle_dry_s(handle))
        yard.tell("odile", f"pieces/{boat.pk}/covers/", state="open")

        assert before["covering"]["cracking"]["peak"] in ("watch", "high")
        assert HANDLE_LEADS in before["covering"]["cracking"]["reason"]
        assert step["words"] == "cover the handle loosely"
        assert step["part_ids"] == [str(handle.pk)]
        assert row["cover_next"] == step
        assert before["covering"]["meeting"] is None  # it is joined
        first = after["covering"]["steps"][:1]
        assert [found for found in first if found["words"] == step["words"]] == []
        assert HANDLE_LEADS not in after["covering"]["cracking"]["reason"]
        parts = {part["role"]: part["cover"] for part in yard.whole("S05")["parts"]}
        assert parts["handle"] == ""
        assert dry_s[1] > dry_s[0] + 3600.0
        # The piece is as damp as its dampest part, the body, whose cover did not change.
        assert after["windows"]["bisque"] == before["windows"]["bisque"]
        opened = drying(yard, boat)
        assert opened["covering"]["steps"][0]["words"] == step["words"]
