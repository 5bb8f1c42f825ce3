"""What a studio decides for itself: limits, tariff, hours, who is away."""

from collections.abc import Iterable, Mapping

from django.db import transaction

from studio.domain.refusals import Conflict, Unworkable
from studio.models import (
    Act,
    Away,
    ClosedDay,
    JournalHead,
    OpeningHours,
    Studio,
    StudioSettings,
)

from . import journal


class LimitsCross(Unworkable):
    code = "limits-cross"
    title = "A mould that is dry must be usable too."


class AwayAlready(Conflict):
    code = "away-already"
    title = "That member is away then already."


class MindsOwnThings(Unworkable):
    code = "minds-own-things"
    title = "Somebody who is away cannot mind their own things."


def locked(studio: Studio) -> StudioSettings:
    """Return the settings, held until the caller's transaction ends."""
    return StudioSettings.objects.select_for_update().get(studio=studio)


@transaction.atomic
def change(*, act: Act, held: StudioSettings, changes: Mapping[str, object]) -> StudioSettings:
    """Change some settings and count the revision up. Raises `LimitsCross`."""
    for name, value in changes.items():
        setattr(held, name, value)
    if held.mould_dry_below_fraction >= held.mould_usable_below_fraction:
        raise LimitsCross(
            "Set mould_dry_below_fraction below mould_usable_below_fraction.",
            mould_dry_below_fraction=held.mould_dry_below_fraction,
            mould_usable_below_fraction=held.mould_usable_below_fraction,
        )
    held.revision += 1
    held.save()
    facts = {name: _plain(value) for name, value in changes.items()}
    subjects = [("studio", act.studio.pk)]
    journal.write(act=act, verb="changed_settings", subjects=subjects, facts=facts)
    return held


@transaction.atomic
def open_at(
    *,
    act: Act,
    held: StudioSettings,
    weekly: Iterable[Mapping[str, object]] | None,
    closed_days: Iterable[Mapping[str, object]] | None,
) -> StudioSettings:
    """Put other weekly hours, or other closed days, in the place of those before; None stays."""
    facts: dict[str, object] = {}
    if weekly is not None:
        OpeningHours.objects.of(act.studio).delete()
        rows = [OpeningHours(studio=act.studio, **hours) for hours in weekly]
        OpeningHours.objects.bulk_create(rows)
        facts["weekly"] = [[r.weekday, _plain(r.opens), _plain(r.closes)] for r in rows]
    if closed_days is not None:
        ClosedDay.objects.of(act.studio).delete()
        days = [ClosedDay(studio=act.studio, **day) for day in closed_days]
        ClosedDay.objects.bulk_create(days)
        facts["closed_days"] = [_plain(day.date) for day in days]
    held.revision += 1
    held.save(update_fields=["revision"])
    subjects = [("studio", act.studio.pk)]
    journal.write(act=act, verb="changed_opening", subjects=subjects, facts=facts)
    return held


@transaction.atomic
def go_away(*, act: Act, away: Away) -> Away:
    """Keep that a member is away, first and last day included, and who minds their things.

    Raises `AwayAlready` and `MindsOwnThings`.
    """
    member, buddy = away.member, away.buddy
    if buddy == member:
        raise MindsOwnThings("Name somebody else, or nobody.", buddy=str(member.pk))
    JournalHead.objects.select_for_update().get(studio=act.studio)
    overlapping = Away.objects.filter(
        member=member,
        called_off_at=None,
        from_date__lte=away.until_date,
        until_date__gte=away.from_date,
    ).first()
    if overlapping is not None:
        days = f"From {overlapping.from_date} until {overlapping.until_date}."
        raise AwayAlready(days, away=str(overlapping.pk))
    away.save(force_insert=True)
    facts = {
        "from_date": away.from_date.isoformat(),
        "until_date": away.until_date.isoformat(),
        "buddy": buddy.pk if buddy else None,
    }
    journal.write(act=act, verb="goes_away", subjects=[("member", member.pk)], facts=facts)
    return away


@transaction.atomic
def call_off(*, act: Act, away: Away) -> None:
    """Say that the member is not away after all; doing it twice changes nothing."""
    if away.called_off_at is not None:
        return
    Away.objects.filter(pk=away.pk).update(called_off_at=act.written_at)
    subjects = [("member", away.member_id)]
    journal.write(act=act, verb="stays_here", subjects=subjects, facts={"away": away.pk})


def _plain(value: object) -> object:
    return value.isoformat() if hasattr(value, "isoformat") else value
