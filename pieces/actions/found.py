"""Ware without a name: found, asked about, claimed, given back or let go.

While it is nobody's no load may take it: `Piece.unclaimed_since` says so where it has a record.
"""

from collections.abc import Iterable, Mapping
from datetime import timedelta
from typing import Any, Final
from zoneinfo import ZoneInfo

from django.db import transaction

from pieces.models import Claim, FoundPiece, Piece
from pieces.queries import found as queries
from studio.actions import journal, reminders
from studio.actions.reminders import About
from studio.domain.refusals import Conflict, NotAllowed
from studio.models import Act, JournalEntry, JournalHead, Member
from studio.permissions import Role
from studio.queries import people

ASKED: Final = "is_this_yours"
CLAIMED_TWICE: Final = "claimed_by_two"


class EndedAlready(Conflict):
    code = "found-ended-already"
    title = "That was given back or let go already."


class NoticeRuns(Conflict):
    code = "notice-runs"
    title = "It is too early to let it go."


class NobodyClaims(Conflict):
    code = "nobody-claims"
    title = "Nobody says that it is theirs."


class ClaimedTwice(NotAllowed):
    code = "claimed-twice"
    title = "Two people say that it is theirs: the owner decides."


class ClaimedAlready(Conflict):
    code = "claimed-already"
    title = "You said that already."


class KnownAlready(Conflict):
    code = "found-already"
    title = "That piece is kept as found already."


@transaction.atomic
def find(*, act: Act, given: dict[str, Any]) -> FoundPiece:
    """Keep that something stood somewhere without a name.

    It is kept for the studio's number of days from when it was told, not from when it was found:
    nobody could claim it before. Raises `KnownAlready`.
    """
    piece: Piece | None = given.get("piece")
    JournalHead.objects.select_for_update().get(studio=act.studio)
    if piece is not None and FoundPiece.objects.filter(piece=piece, state="open").exists():
        raise KnownAlready(f"{piece.shown_mark} is among what was found.")
    told_on = act.written_at.astimezone(ZoneInfo(act.studio.zone)).date()
    days = act.studio.settings.found_notice_days
    made = FoundPiece.objects.create(
        id=act.id,
        studio=act.studio,
        found_at=act.happened_at,
        found_by=act.member,
        notice_date=told_on + timedelta(days=days),
        **given,
    )
    facts = {
        "place": made.place_id,
        "piece": made.piece_id,
        "body": made.body_id,
        "x_mm": made.x_mm,
        "y_mm": made.y_mm,
        "height_mm": made.height_mm,
        "looks": made.looks,
        "notice_date": made.notice_date.isoformat(),
    }
    _write(act, "found_ware", made, facts)
    if piece is not None:
        Piece.objects.filter(pk=piece.pk).update(unclaimed_since=act.happened_at)
    return made


@transaction.atomic
def ask(*, act: Act, found: FoundPiece, whom: Iterable[Member]) -> FoundPiece:
    """Ask people whether it is theirs, each once however often. Raises `EndedAlready`."""
    found = _open_one(found)
    before = queries.asked_of(found)
    asked = [person for person in whom if person.pk not in before]
    where = f", {found.place.name}" if found.place else ""
    for person in asked:
        reminders.set_for(
            studio=act.studio,
            person=person,
            about=About(
                cause=ASKED,
                grade="C",
                kind="found",
                object_id=found.pk,
                mark=found.what,
                title=f"Is this yours? {found.what}{where}.",
                body=f"Say so by {found.notice_date.isoformat()}, or say it is not.",
                link=f"/found/{found.pk}",
            ),
            due_at=act.written_at,
            at=act.written_at,
        )
    _write(act, queries.ASKED, found, {"people": [person.pk for person in asked]})
    return found


@transaction.atomic
def claim(*, act: Act, found: FoundPiece, piece: Piece | None = None) -> Claim:
    """Say that a found thing is mine. Raises `EndedAlready` and `ClaimedAlready`."""
    found = _open_one(found)
    if queries.claims_of([found]).filter(member=act.member).exists():
        raise ClaimedAlready("Wait for it to be given back, or take your word back.")
    facts = {"piece": piece.pk if piece else None}
    entry = _write(act, "claimed_ware", found, facts, *([piece] if piece else []))
    made = Claim.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        found=found,
        member=act.member,
        piece=piece,
    )
    _tell_owners_of_two(act, found)
    return made


@transaction.atomic
def give_back(*, act: Act, found: FoundPiece, claim: Claim | None, may_settle: bool) -> FoundPiece:
    """Give it back to who claims it. Where two do, only who may settle that decides between them.

    Raises `EndedAlready`, `NobodyClaims` and `ClaimedTwice`.
    """
    found = _open_one(found)
    claims = list(queries.claims_of([found]))
    if not claims:
        raise NobodyClaims("Ask whose it is first.")
    if len(claims) > 1 and (claim is None or not may_settle):
        said = [row.member.first_name for row in claims]
        raise ClaimedTwice(f"{' and '.join(said)} say so.", claims=[str(row.pk) for row in claims])
    chosen = claims[0] if claim is None else next((c for c in claims if c.pk == claim.pk), None)
    if chosen is None:
        raise NobodyClaims("That claim is not about this.")
    found.returned_to = chosen.member
    facts = {"claim": chosen.pk, "returned_to": chosen.member_id}
    _end(act, found, FoundPiece.State.RETURNED, "returned_ware", facts)
    if found.piece_id is not None:
        own = Piece.objects.filter(pk=found.piece_id)
        own.filter(maker=None).update(maker=chosen.member)
        own.update(unclaimed_since=None)
    return found


@transaction.atomic
def dispose(*, act: Act, found: FoundPiece) -> FoundPiece:
    """Let it go, once its time has passed. Raises `EndedAlready` and `NoticeRuns`."""
    found = _open_one(found)
    today = act.written_at.astimezone(ZoneInfo(act.studio.zone)).date()
    if today <= found.notice_date:
        raise NoticeRuns(
            f"It is kept until the end of {found.notice_date.isoformat()}.",
            notice_date=found.notice_date.isoformat(),
        )
    facts = {"notice_date": found.notice_date.isoformat()}
    _end(act, found, FoundPiece.State.DISPOSED, "disposed_of_ware", facts)
    return found


def _tell_owners_of_two(act: Act, found: FoundPiece) -> None:
    claims = list(queries.claims_of([found]))
    if len(claims) < 2:
        return
    names = " and ".join(f"{row.member.first_name} ({row.member.initials})" for row in claims)
    about = About(
        cause=CLAIMED_TWICE,
        grade="C",
        kind="found",
        object_id=found.pk,
        mark=found.what,
        title=f"{names} both say that it is theirs: {found.what}.",
        body="Hear both, then say whose it is.",
        link=f"/found/{found.pk}",
    )
    for owner in people.with_role(act.studio, Role.OWNER):
        reminders.set_for(
            studio=act.studio, person=owner, about=about, due_at=act.written_at, at=act.written_at
        )


def _end(act: Act, found: FoundPiece, state: str, verb: str, facts: Mapping[str, object]) -> None:
    found.state, found.ended_at = state, act.happened_at
    found.save(update_fields=["state", "ended_at", "returned_to"])
    _write(act, verb, found, facts)
    reminders.withdraw(studio=act.studio, object_id=found.pk, causes=[ASKED, CLAIMED_TWICE])


def _open_one(found: FoundPiece) -> FoundPiece:
    JournalHead.objects.select_for_update().get(studio=found.studio_id)
    rows = FoundPiece.objects.select_related("place").select_for_update(of=("self",))
    now: FoundPiece = rows.get(pk=found.pk)
    if now.state != FoundPiece.State.OPEN:
        raise EndedAlready(f"It was {now.get_state_display().lower()}.", state=now.state)
    return now


def _write(
    act: Act, verb: str, found: FoundPiece, facts: Mapping[str, object], *pieces: Piece
) -> JournalEntry:
    named = [found.piece_id] if found.piece_id else []
    about = {("piece", pk) for pk in (*named, *(piece.pk for piece in pieces))}
    return journal.write(
        act=act, verb=verb, subjects=[("found", found.pk), *sorted(about)], facts=facts
    )
