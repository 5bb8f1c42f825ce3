"""Links to an order: made, opened, revoked. Another one is a revoking and a making."""

from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from typing import Any, Final
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db import transaction

from firings.domain.client_words import ITEMS
from firings.models import Share, ShareOpened
from pieces.actions import approvals, freezing, order_rows
from pieces.models import Approval, ApprovalAnswer, Commission
from pieces.queries import frozen
from studio.actions import journal, keys
from studio.domain.hours import instant
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Missing, Unworkable
from studio.models import Act, FrozenCopy
from studio.queries.people import clockwork

LONGEST: Final = timedelta(days=2 * 366)
QUARTER_MIN: Final = 15


class LinkUnknown(Missing):
    """One answer for what never was, ran out, was revoked, or shows something else."""

    code = "link-unknown"
    title = "There is no such link."


class LinkEndsOddly(Unworkable):
    code = "link-ends-oddly"
    title = "A link opens until a day that is to come, within two years."


class NothingShown(Unworkable):
    code = "nothing-shown"
    title = "Choose something to show."


class LinkRevokedAlready(Conflict):
    code = "link-revoked-already"
    title = "That link was revoked already."


@transaction.atomic
def make(
    *,
    act: Act,
    commission: Commission,
    expires_on: date,
    kind: str = Share.Kind.CLIENT,
    shows: Sequence[str] = (),
    photo_ids: Sequence[UUID] = (),
    people: str = Share.People.INITIALS,
) -> tuple[Share, str]:
    """Make a link to an order, good until the end of a day, and its key, which is shown once.

    A visitor's link shows the history as it was kept last; where none was, it is kept now. Raises
    `LinkEndsOddly`, `NothingShown` and `KeyShownAlready`.
    """
    check(act.written_at, commission, expires_on, kind=kind, shows=shows, photo_ids=photo_ids)
    keys.claim(act)
    copy = _copy(act, commission) if kind == Share.Kind.VISITOR else None
    key = keys.make("")
    share = Share.objects.create(
        id=act.id,
        studio=act.studio,
        commission=commission,
        kind=kind,
        shows=in_order(shows) if copy is None else [],
        photo_ids=[str(pk) for pk in photo_ids] if copy is None else [],
        people=people,
        frozen=copy,
        token_hash=keys.hashed(key),
        made_by=act.member,
        made_at=act.written_at,
        expires_at=ends_at(commission, expires_on),
    )
    facts = {
        "kind": share.kind,
        "shows": share.shows,
        "shown_photos": share.photo_ids,
        "people": share.people,
        "expires_on": expires_on.isoformat(),
    }
    journal.write(act=act, verb="made_link", subjects=_subjects(share), facts=facts)
    return share, key


def check(
    at: datetime,
    commission: Commission,
    expires_on: date,
    *,
    kind: str,
    shows: Sequence[str],
    photo_ids: Sequence[UUID],
) -> None:
    """Raise `LinkEndsOddly` or `NothingShown` where no such link can be made."""
    if not timedelta(0) < ends_at(commission, expires_on) - at <= LONGEST:
        raise LinkEndsOddly(
            "Choose today or a later day, within two years.", pointer="#/expires_on"
        )
    if kind == Share.Kind.CLIENT and not shows and not photo_ids:
        raise NothingShown("Nothing of the order is chosen yet.", pointer="#/shows")


def in_order(shows: Sequence[str]) -> list[str]:
    """Return what was chosen, each once, in the order of the page."""
    return [item for item in ITEMS if item in shows]


def ends_at(commission: Commission, expires_on: date) -> datetime:
    """Return the end of a link's last day on the studio's clock."""
    zone = ZoneInfo(commission.studio.zone)
    return instant(expires_on + timedelta(days=1), time(0), zone)


@transaction.atomic
def revoke(*, act: Act, share: Share) -> Share:
    """End a link; it opens no more for anybody. Raises `LinkRevokedAlready`."""
    order_rows.locked(share.commission)
    share = Share.objects.select_for_update().get(pk=share.pk)
    if share.revoked_at is not None:
        raise LinkRevokedAlready("It opens no more.", revoked_at=share.revoked_at.isoformat())
    share.revoked_at = act.written_at
    share.save(update_fields=["revoked_at"])
    journal.write(act=act, verb="revoked_link", subjects=_subjects(share))
    return share


def at_hand(*, key: str, at: datetime) -> Share:
    """Return what a link shows now. Raises `LinkUnknown`."""
    rows = Share.objects.select_related("commission__studio", "commission__maker", "frozen")
    share = rows.filter(token_hash=keys.hashed(key), revoked_at=None, expires_at__gt=at).first()
    if share is None:
        raise LinkUnknown("Ask whoever sent it for another one.")
    return share


def opened(*, share: Share, at: datetime) -> None:
    """Note that a link was opened in this quarter of an hour; nothing of whom or where from."""
    quarter = at.replace(minute=at.minute - at.minute % QUARTER_MIN, second=0, microsecond=0)
    ShareOpened.objects.get_or_create(studio=share.studio, share=share, opened_at=quarter)


def answer(
    *, share: Share, approval_id: UUID, answer: str, words: str, at: datetime
) -> ApprovalAnswer:
    """Take the client's yes or no through a link that shows what is asked.

    Raises `LinkUnknown`, `ApprovalAnswered` and `ApprovalReplaced`.
    """
    asked: Any = Approval.objects.filter(pk=approval_id, commission=share.commission_id)
    row: Approval | None = asked.select_related("commission__maker__studio").first()
    if row is None or "approvals" not in share.shows:
        raise LinkUnknown("Nothing like that is asked here.")
    member, device = clockwork(share.studio)
    act = Act(uuid7(), share.studio, member, device, happened_at=at, written_at=at, note=words)
    return approvals.answer(
        act=act,
        approval=row,
        answer=answer,
        through=ApprovalAnswer.Through.LINK,
        share_id=share.pk,
    )


def _copy(act: Act, commission: Commission) -> FrozenCopy:
    return frozen.latest_copy(commission) or freezing.freeze_after(act, commission)


def _subjects(share: Share) -> list[journal.Subject]:
    return [("commission", share.commission_id), ("share", share.pk)]
