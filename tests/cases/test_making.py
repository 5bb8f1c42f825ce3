"""At the bench: a handle swapped, one mould wanted by two, a mould cast again."""

from pieces.models import Part
from studio.domain.ids import uuid7
from studio.models import Reminder


class TestSwappedHandle:
    def fared(self, yard) -> tuple[dict[str, tuple[int, int]], list[tuple[int, int]]]:
        """Return what was lost of parts by role, and of pieces by step."""
        order = yard.order("C-102")["commission"]["id"]
        seen = yard.get(f"commissions/{order}/outlook/")
        parts = {row["role"]: (row["lost"], row["of"]) for row in seen["parts"]}
        return parts, [(row["lost"], row["entered"]) for row in seen["steps"]]

    def test_leaves_the_boat_its_number_and_begins_its_damp_anew(self, yard) -> None:
        boat = yard.piece("S05")
        cracked = Part.objects.get(piece=boat, role="handle")
        before, lost = yard.presses("M04"), yard.order("C-102")["lines"][0]["counts"]
        fared = self.fared(yard)
        body_joined_at = Part.objects.get(piece=boat, role="body").joined_at
        fresh = str(uuid7())

        yard.tell("odile", f"parts/{cracked.pk}/events/", kind="cracked", cause="joined too dry")
        yard.at("2026-10-31 09:30")
        yard.tell(
            "odile",
            f"mould-sets/{yard.mould('M04').pk}/pressings/",
            casting_id=str(yard.casting("M04").pk),
            mould_part_ids=[str(part.pk) for part in yard.casting("M04").parts.all()],
            parts=[
                {
                    "id": fresh,
                    "role": "handle",
                    "replaces_id": str(cracked.pk),
                    "piece": {"id": str(boat.pk)},
                }
            ],
        )
        apart = yard.whole("S05")
        yard.at("2026-10-31 13:30")
        yard.tell("odile", f"parts/{fresh}/events/", kind="demoulded")
        yard.at("2026-10-31 14:00")
        yard.tell("odile", f"parts/{fresh}/events/", kind="joined")

        whole = yard.whole("S05")
        handles = {
            part["id"]: (part["state"], part["replaces"])
            for part in whole["parts"]
            if part["role"] == "handle"
        }
        assert (apart["piece"]["stage"], apart["piece"]["state"]) == ("assembly", "out")
        assert (whole["piece"]["id"], whole["piece"]["state"]) == (str(boat.pk), "joined")
        assert handles == {
            str(cracked.pk): ("replaced", None),
            fresh: ("joined", str(cracked.pk)),
        }
        assert yard.presses("M04") == {name: count + 1 for name, count in before.items()}
        assert cracked.events.get(kind="cracked").cause == "joined too dry"
        assert yard.order("C-102")["lines"][0]["counts"] == lost
        assert Part.objects.get(piece=boat, role="body").joined_at == body_joined_at
        assert whole["piece"]["since_at"] == "2026-10-31T14:00:00Z"
        (parts_before, pieces_before), (parts, pieces) = fared, self.fared(yard)
        handles_lost, handles_of = parts_before["handle"]
        assert parts["handle"] == (handles_lost + 1, handles_of + 1)
        assert (parts["body"], pieces) == (parts_before["body"], pieces_before)


class TestOneMouldTwoMakers:
    def test_takes_the_press_and_tells_both_once(self, yard) -> None:
        mould = yard.mould("M01")
        booking = yard.tell(
            "jun",
            f"mould-sets/{mould.pk}/bookings/",
            from_at="2026-10-31T14:00:00Z",
            until_at="2026-10-31T17:00:00Z",
        )
        before = yard.presses("M01")
        face = yard.casting("M01").parts.get(name="face")
        mark = {"id": str(uuid7()), "mark": "T40", "design_id": str(mould.makes.design_id)}
        yard.at("2026-10-31 13:10")

        told = yard.tell(
            "bram",
            f"mould-sets/{mould.pk}/pressings/",
            casting_id=str(yard.casting("M01").pk),
            mould_part_ids=[str(face.pk)],
            parts=[{"id": str(uuid7()), "role": "tile", "piece": mark}],
        )

        assert "mould-booked" in {said["code"] for said in told["warnings"]}
        assert yard.presses("M01") == {**before, "face": before["face"] + 1}
        reminders = Reminder.objects.filter(cause="mould_booked")
        assert sorted(row.person.first_name for row in reminders) == ["Bram", "Jun"]
        mine = reminders.get(person__first_name="Jun")
        assert mine.body.startswith("Bram pressed M01 at 13:10. In use")
        kept = next(
            row
            for row in yard.get(f"mould-sets/{mould.pk}/bookings/")["results"]
            if row["id"] == booking["id"]
        )
        assert (kept["from_at"], kept["until_at"]) == (booking["from_at"], booking["until_at"])


def pieces_with_knops() -> list[str]:
    return [part.piece.shown_mark for part in Part.objects.filter(role="knop")]


class TestMouldCastAgain:
    def test_counts_from_nought_and_old_knops_keep_their_own(self, yard) -> None:
        mould, old = yard.mould("M07"), yard.casting("M07")

        chipped = yard.tell(
            "jun", f"mould-parts/{old.parts.get().pk}/events/", kind="chipped", reason="press 58"
        )
        poured = yard.tell(
            "jun",
            f"mould-sets/{mould.pk}/castings/",
            master_id=str(old.master_id),
            parts=[{"name": "face"}],
        )

        for told in (chipped, poured):
            assert sum(row["count"] for row in told["pressings_to_check"]) >= 6
        # Until the new one is pressed, its screen names the pieces of the one before.
        doubtful = yard.get(f"mould-sets/{mould.pk}/crumb-check/")
        marks = [piece["mark"] for row in doubtful["rows"] for piece in row["pieces"]]
        assert (doubtful["generation"], len(marks) >= 6) == (3, True)
        assert set(marks) <= set(pieces_with_knops())
        assert (poured["casting"]["generation"], poured["parts"][0]["presses"]) == (4, 0)
        assert "first-press-may-stick" in {said["code"] for said in poured["warnings"]}
        knop = next(part for part in yard.whole("L01")["parts"] if part["role"] == "knop")
        assert (knop["mould"]["label"], knop["mould"]["generation"]) == ("M07", 3)
        knops = Part.objects.of(yard.demo.studio).filter(role="knop", pressing__isnull=False)
        assert set(knops.values_list("pressing__casting", flat=True)) == {old.pk}

    def test_from_a_fired_knop_is_refused_with_the_sum(self, yard) -> None:
        mould = yard.mould("M07")

        problem = yard.refused(
            "jun", f"mould-sets/{mould.pk}/castings/", made_from="fired_piece", fired_mm=32
        )

        # 32 mm x (1 - 0.116) = 28.3 mm; 32 mm / (1 - 0.116) = 36.2 mm, by hand
        assert (problem["would_become_mm"], problem["model_mm"]) == (28.3, 36.2)
        assert problem["title"] == "A mould taken from a fired piece is not the same mould."
        assert problem["detail"] == (
            "32.0 mm fired would come out 28.3 mm. Enlarge first: 36.2 mm model, as a new master."
        )

    def test_from_an_enlarged_model_begins_a_line_of_its_own(self, yard) -> None:
        mould, old = yard.mould("M07"), yard.casting("M07")
        model = yard.tell(
            "jun",
            "masters/",
            label="MS-9",
            design_id=str(mould.makes.design_id),
            part_id=str(mould.makes_id),
            is_ready=True,
        )

        poured = yard.tell(
            "jun",
            f"mould-sets/{mould.pk}/castings/",
            master_id=model["id"],
            parts=[{"name": "face"}],
        )

        assert (poured["casting"]["generation"], poured["casting"]["master"]["label"]) == (
            1,
            "MS-9",
        )
        assert poured["laid_aside"]["id"] == str(old.pk)
        knop = next(part for part in yard.whole("L01")["parts"] if part["role"] == "knop")
        assert (knop["mould"]["label"], knop["mould"]["generation"]) == ("M07", 3)
