"""Numbers cut in the clay: lent in blocks, never given twice."""

from typing import Final

from django.db import transaction

from studio.models import Act, NumberBlock, NumberSeries, Studio

from . import journal

BLOCK: Final = 20


@transaction.atomic
def lease(*, act: Act, letters: str, size: int = BLOCK) -> NumberBlock:
    """Lend the next `size` numbers of a series to the device of the act, for ever."""
    series = _locked(act.studio, letters)
    block = NumberBlock.objects.create(
        id=act.id,
        studio=act.studio,
        device=act.device,
        letters=letters,
        first=series.next_number,
        last=series.next_number + size - 1,
        leased_at=act.written_at,
    )
    NumberSeries.objects.filter(pk=series.pk).update(next_number=block.last + 1)
    facts = {"series": letters, "first": block.first, "last": block.last}
    subjects = [("device", act.device.pk)]
    journal.write(act=act, verb="leased_numbers", subjects=subjects, facts=facts)
    return block


@transaction.atomic
def take(*, studio: Studio, letters: str) -> int:
    """Return the next number of a series for something made on the server."""
    series = _locked(studio, letters)
    NumberSeries.objects.filter(pk=series.pk).update(next_number=series.next_number + 1)
    return series.next_number


@transaction.atomic
def pass_over(*, studio: Studio, letters: str, number: int) -> None:
    """See to it that `number`, cut in some clay already, and those below it are never lent."""
    series = _locked(studio, letters)
    if series.next_number <= number:
        NumberSeries.objects.filter(pk=series.pk).update(next_number=number + 1)


def _locked(studio: Studio, letters: str) -> NumberSeries:
    NumberSeries.objects.get_or_create(studio=studio, letters=letters)
    return NumberSeries.objects.select_for_update().get(studio=studio, letters=letters)
