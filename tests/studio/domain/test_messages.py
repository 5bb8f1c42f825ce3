"""The words of an e-mail."""

from studio.domain.messages import SUBJECT_MOST, Item, compose

TILE = Item("T26, tile, in mould 16½ h, past its time. Bench 1.", "Take it out.", "/yard/bench")
JAR = Item("J08, jar, in its window until 11:00. Bench 3.", "", "")


def composed(*items, is_urgent=False):
    return compose(
        items, studio_name="Sand\nYard", address="https://yard.test", is_urgent=is_urgent
    )


class TestCompose:
    def test_says_one_thing_in_the_subject(self):
        message = composed(TILE)

        assert message.subject == TILE.title
        assert message.text.startswith(
            f"{TILE.title}\nTake it out.\nhttps://yard.test/yard/bench\n"
        )

    def test_counts_the_others(self):
        message = composed(TILE, JAR)

        assert message.subject == f"{TILE.title}, and 1 more"
        assert JAR.title in message.text

    def test_keeps_the_subject_on_one_short_line(self):
        long = Item("Line\r\nBcc: everybody@else.test " + "x" * 300, "", "")

        subject = composed(long, is_urgent=True).subject

        assert subject.startswith("Now: Line Bcc:")
        assert len(subject) == SUBJECT_MOST
        assert "\n" not in subject
        assert "Sand Yard" in composed(long).text
