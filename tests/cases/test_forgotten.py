"""A cupboard that nobody opens for weeks: who hears of it, when, and how often."""

from datetime import timedelta

from moulds.models import Design
from pieces.actions.reminding_forgotten import CAUSE
from pieces.tasks import set_reminders
from studio.domain.ids import uuid7
from studio.models import Reminder


def rounds(yard) -> list[tuple[str, str]]:
    """Return who was told at which wall clock, of what stands with the inkstand."""
    set_reminders()
    rows = Reminder.objects.filter(cause=CAUSE, object_mark="I01").exclude(state="withdrawn")
    return sorted((f"{row.due_at:%d %b %H:%M}", row.person.first_name) for row in rows)


def covered_beside(yard, mark: str, count: int) -> list[str]:
    """Have Odile leave more ware under plastic in the place of the piece; return its numbers."""
    inkstand = yard.piece(mark)
    design = Design.objects.of(yard.demo.studio).get(name="beaker")
    made = yard.tell("odile", "pieces/", design_id=str(design.pk), count=count)["pieces"]
    for piece in made:
        yard.tell("odile", f"pieces/{piece['id']}/parts/", part_id=str(uuid7()), role="beaker")
        yard.tell("odile", f"pieces/{piece['id']}/moves/", place_id=str(inkstand.place_id))
        yard.tell("odile", f"pieces/{piece['id']}/covers/", state="sealed")
    return [piece["mark"] for piece in made]


class TestForgottenCupboard:
    def test_is_told_at_nine_of_one_week_then_two_then_three(self, yard) -> None:
        yard.at("2026-11-01 08:59")
        early = rounds(yard)
        yard.at("2026-11-01 09:00")
        first = rounds(yard)
        yard.at("2026-11-08 09:00")
        second = rounds(yard)
        yard.at("2026-11-15 09:00")
        third = rounds(yard)

        assert early == []
        assert first == [("01 Nov 09:00", "Odile")]
        # Nessa minds Odile's things; on the third Sunday it is the owner's to settle, who is Odile.
        assert set(second) - set(first) == {("08 Nov 09:00", "Nessa")}
        assert ("15 Nov 09:00", "Odile") in third

    def test_is_one_message_however_many_pieces_stand_in_it(self, yard) -> None:
        others = covered_beside(yard, "I01", 3)
        yard.at("2026-11-08 09:00")

        set_reminders()

        rows = Reminder.objects.filter(cause=CAUSE).exclude(state="withdrawn")
        hers = rows.filter(person__first_name="Odile", object_mark="I01")
        assert not rows.filter(object_mark__in=others).exists()
        assert hers.count() == 1
        title = hers.get().title
        assert title.startswith("Under plastic and untouched for 14 days")
        assert all(mark in title for mark in ("I01", *others))

    def test_with_water_inside_goes_by_way_of_the_fault(self, yard) -> None:
        yard.at("2026-11-01 09:30")
        rounds(yard)
        inkstand = yard.whole("I01")
        part = inkstand["parts"][0]["id"]

        yard.clock.now += timedelta(minutes=5)
        yard.tell("odile", f"parts/{part}/events/", kind="cracked", cause="stood in water")

        after = yard.whole("I01")
        words = [row["words"] for row in after["story"][:1]]
        assert any("crack" in said for said in words), words
        assert rounds(yard) == []
