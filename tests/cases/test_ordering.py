"""Orders: a pair loses its lid, ware without a name, a cupboard that nobody opened."""

from pieces.actions.reminding_forgotten import CAUSE
from pieces.tasks import set_reminders
from studio.domain.ids import uuid7
from studio.models import Reminder


class TestHalfAPair:
    def counts(self, yard) -> tuple[int, int, int]:
        found = yard.order("C-103")["lines"][0]["counts"]
        return found["alive"], found["planned"], found["lost_pieces"]

    def words(self, yard, mark: str) -> str:
        pieces = yard.order("C-103")["lines"][0]["pieces"]
        found: str = next(row["words"] for row in pieces if row["mark"] == mark)
        return found

    def test_falls_by_one_and_is_made_whole_by_the_spare_lid(self, yard) -> None:
        jar, lid, spare = (yard.piece(mark) for mark in ("J06", "L06", "L09"))
        assert self.counts(yard) == (8, 1, 0)

        yard.tell(
            "jun",
            f"pieces/{lid.pk}/stage-events/",
            stage="lost",
            state="scrapped",
            cause="dropped",
            reclaim="mixed",
        )

        # The jar lives on, with no lid that is made; the spare one is its own jar's so far.
        assert self.counts(yard) == (7, 1, 1)
        assert yard.piece("J06").stage == "drying"

        told = yard.tell(
            "jun",
            "matches/",
            kind="matched",
            piece_ids=[str(spare.pk), str(jar.pk)],
            seat_gap_mm=0.4,
        )

        assert self.counts(yard) == (7, 1, 1)
        assert self.words(yard, "L09") == "lid for J06"
        assert yard.piece("L09").pk == spare.pk
        assert "matched-before" in {said["code"] for said in told["warnings"]}

    def test_counts_again_once_the_spare_lid_is_pressed(self, yard) -> None:
        jar, lid, spare = (yard.piece(mark) for mark in ("J06", "L06", "L09"))
        lost = {"stage": "lost", "state": "scrapped", "cause": "dropped"}
        yard.tell("jun", f"pieces/{lid.pk}/stage-events/", **lost)
        pressed = {"id": str(uuid7()), "role": "lid", "piece": {"id": str(spare.pk)}}

        yard.tell(
            "jun",
            f"mould-sets/{yard.mould('M06').pk}/pressings/",
            casting_id=str(yard.casting("M06").pk),
            mould_part_ids=[str(part.pk) for part in yard.casting("M06").parts.all()],
            parts=[pressed],
        )
        before = self.counts(yard)
        yard.tell("jun", "matches/", kind="matched", piece_ids=[str(spare.pk), str(jar.pk)])

        # Its own jar is planned still, so that the lid makes no pair until it is J06's.
        assert before == (7, 1, 1)
        assert self.counts(yard) == (8, 0, 1)

    def test_asks_how_marbled_clay_is_reclaimed(self, yard) -> None:
        boat = yard.whole("S03")

        assert boat["reclaim"] == "mixed"


class TestNobodysBeaker:
    def test_is_fired_by_nobody(self, yard) -> None:
        beaker = yard.piece("P03")
        load = yard.load("F-211")

        problem = yard.refused(
            "piet", f"loads/{load['id']}/placements/", pieces=[{"piece_id": str(beaker.pk)}]
        )

        assert problem["type"] == "/problems/not-placed"
        assert {row["code"] for row in problem["refused"]} == {"unclaimed"}

    def test_waits_for_its_day_and_then_goes_to_who_claims_it(self, yard) -> None:
        found = yard.get("found/?state=open")["results"][0]

        early = yard.refused("odile", f"found/{found['id']}/endings/", kind="disposed")
        yard.tell("bram", "claims/", found_id=found["id"])
        yard.tell("nessa", "claims/", found_id=found["id"])
        by_maker = yard.refused("bram", f"found/{found['id']}/endings/", kind="returned")
        claims = yard.get(f"found/{found['id']}/")["claims"]
        hers = next(row["id"] for row in claims if row["member"]["first_name"] == "Nessa")
        yard.tell("odile", f"found/{found['id']}/endings/", kind="returned", claim_id=hers)

        assert early["type"] == "/problems/notice-runs"
        assert by_maker["type"] == "/problems/claimed-twice"
        beaker = yard.piece("P03")
        assert beaker.maker is not None
        assert (beaker.maker.first_name, beaker.unclaimed_since) == ("Nessa", None)
        assert Reminder.objects.filter(cause="claimed_by_two").count() == 1


class TestForgottenUnderPlastic:
    def told(self, yard) -> list[tuple[str, str]]:
        set_reminders()
        rows = Reminder.objects.filter(cause=CAUSE).exclude(state="withdrawn")
        return sorted((row.person.first_name, row.object_mark) for row in rows)

    def test_tells_the_maker_after_a_week_and_whoever_helps_after_two(self, yard) -> None:
        assert self.told(yard) == []

        yard.at("2026-11-01 09:00")
        assert self.told(yard) == [("Odile", "I01")]

        yard.at("2026-11-08 09:00")
        hers = [row for row in self.told(yard) if row[1] == "I01"]
        assert hers == [("Nessa", "I01"), ("Odile", "I01")]

    def test_is_held_by_who_stands_in_while_the_maker_is_away(self, yard) -> None:
        odile, bram = yard.demo.member("odile"), yard.demo.member("bram")
        yard.tell(
            "odile",
            "away/",
            member_id=str(odile.pk),
            buddy_id=str(bram.pk),
            from_date="2026-10-30",
            until_date="2026-11-20",
        )

        yard.at("2026-11-01 09:00")

        assert self.told(yard) == [("Bram", "I01")]

    def test_begins_anew_with_a_look_and_leaves_the_stage(self, yard) -> None:
        inkstand = yard.piece("I01")
        yard.at("2026-11-01 09:30")
        assert self.told(yard) == [("Odile", "I01")]

        yard.tell("odile", f"pieces/{inkstand.pk}/checks/", feel="fine")

        assert self.told(yard) == []
        after = yard.piece("I01")
        assert (after.stage, after.state, after.since_at) == (
            inkstand.stage,
            inkstand.state,
            inkstand.since_at,
        )
        newest = yard.whole("I01")["story"][0]
        assert newest["words"] == "seen, fine"
