"""What a link shows: built from what was chosen, and from nothing else."""

import json
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any, Final
from zoneinfo import ZoneInfo

from firings.domain import client_words as words
from firings.models import Share
from pieces.domain import approval_words, order_history
from pieces.domain.order_words import day
from pieces.models import Commission, Use
from pieces.queries import approvals, frozen
from pieces.queries.approvals import ApprovalNow
from pieces.queries.commissions import OrderNow, orders_now, reports_of
from pieces.queries.story import stories
from studio.models import FrozenCopy, JournalEntry, JournalSubject, Member, Photo
from studio.queries.frozen import copies_of

from .outlook import Ground, outlook_of
from .papers import KIND as PAPERS
from .shares import shown_photos

Shown = dict[str, Any]

#: Acts about the order itself that a client may read of.
TOLD_VERBS: Final = ("took_commission", "promised", "handed_over")

A_MOMENT: Final = timedelta(microseconds=1)


@dataclass(frozen=True, slots=True)
class _Seen:
    """An order seen through a link at an instant."""

    share: Share
    order: OrderNow
    at: datetime
    zone: ZoneInfo

    @property
    def commission(self) -> Commission:
        return self.share.commission

    def day_of(self, at: datetime) -> date:
        return at.astimezone(self.zone).date()

    def name(self, member: Member) -> str:
        """Return a person as it was agreed to name them to this reader."""
        if member.is_clockwork or self.share.people == Share.People.NOBODY:
            return ""
        named = self.share.people == Share.People.FIRST_NAME
        return member.first_name if named else member.initials


def view_of(share: Share, *, at: datetime) -> Shown:
    """Return everything that the holder of a link sees; what was not chosen is not in it."""
    zone = ZoneInfo(share.commission.studio.zone)
    if share.kind == Share.Kind.VISITOR:
        return _visitors(share, zone)
    order = orders_now([share.commission])[0]
    seen = _Seen(share, order, at, zone)
    row = share.commission
    shown: Shown = {
        **_head(share, zone),
        "use": words.DISPLAY if _is_for_display(order) else words.FOOD,
        "maker": seen.name(row.maker),
        "photos": [_photo(photo, seen) for photo in shown_photos(share)],
    }
    if (signed := signed_papers(share)) is not None:
        shown["signed_on"] = day(seen.day_of(signed.happened_at))
    for item in share.shows:
        if item in _SECTIONS:
            shown[item] = _SECTIONS[item](seen)
    return shown


def copy_of(share: Share) -> bytes | None:
    """Return the history a visitor sees, to the letter."""
    return bytes(share.frozen.body) if share.frozen is not None else None


def signed_papers(share: Share) -> FrozenCopy | None:
    """Return the papers of the order that were signed last, where the link shows papers."""
    if "papers" not in share.shows:
        return None
    return copies_of(share.studio, share.commission_id, kind=PAPERS).first()


def _head(share: Share, zone: ZoneInfo) -> Shown:
    row = share.commission
    return {
        "kind": share.kind,
        "studio": row.studio.name,
        "number": row.number,
        "what": row.what,
        # It ends with its last day, at the midnight after it.
        "until": day((share.expires_at - A_MOMENT).astimezone(zone).date()),
    }


def _visitors(share: Share, zone: ZoneInfo) -> Shown:
    copy = share.frozen
    assert copy is not None  # a visitor's link is made with one
    kept: Shown = json.loads(bytes(copy.body))
    acts = [_act(act, zone) for act in kept["acts"]]
    return {
        **_head(share, zone),
        "use": words.DISPLAY if kept["use"] == Use.DISPLAY else words.FOOD,
        "kept_on": day(copy.happened_at.astimezone(zone).date()),
        "sha256": copy.sha256,
        "pieces": [{"mark": one["mark"], "words": one["stage"]} for one in kept["pieces"]],
        "acts": acts,
        "later": [_act(act, zone) for act in frozen.later(share.commission, copy)],
    }


def _act(act: Shown, zone: ZoneInfo) -> Shown:
    at = datetime.fromisoformat(act["happened_at"]).astimezone(zone)
    lines = [f"{', '.join(line['marks'])}: {line['words']}" for line in act["pieces"]]
    return {
        "on": day(at.date()),
        "by": act["by"],
        "words": [*([act["words"]] if act["words"] else []), *lines],
        "is_taken_back": act["is_taken_back"],
        "is_late": act["is_late"],
    }


def _is_for_display(order: OrderNow) -> bool:
    """Say whether any of it is for display only: that is never left out, whatever was chosen."""
    pieces = [piece for line in order.lines for piece in line.pieces if piece.stage != "lost"]
    is_so = any(piece.use == Use.DISPLAY for piece in pieces)
    return is_so or order.commission.use == Use.DISPLAY


def _counts(seen: _Seen) -> list[str]:
    lines = [(line.line.what, line.line.wanted_sets, line.counts) for line in seen.order.lines]
    return words.stood(lines, with_losses="losses" in seen.share.shows)


def _delivery(seen: _Seen) -> list[str]:
    row = seen.commission
    if row.state != "open":
        return ["Handed over." if row.state == "closed" else "Called off."]
    pieces = [piece.pk for line in seen.order.lines for piece in line.pieces]
    found = outlook_of(seen.order, Ground.of(row.studio, pieces, at=seen.at))
    return words.expected(found.likely, row.promised_date)


def _stages(seen: _Seen) -> list[Shown]:
    pieces = [piece for line in seen.order.lines for piece in line.pieces]
    states = [piece.state for piece in pieces if not piece.has_clash]
    return [{"count": count, "words": text} for text, count in words.staged(states)]


def _approvals(seen: _Seen) -> list[Shown]:
    found = approvals.approvals_of(seen.commission)
    clocks = approvals.clocks(seen.commission, found)
    return [_approval(one, clocks.get(one.approval.pk, ""), seen) for one in found]


def _approval(one: ApprovalNow, clock: str, seen: _Seen) -> Shown:
    row, said = one.approval, one.answer
    return {
        "id": str(row.pk),
        "title": approval_words.title(row.about),
        "question": row.question,
        "waits": approval_words.WAITS[row.waits],
        "by": day(row.due_date),
        "clock": clock,
        "answer": approval_words.to_client(said.answer, said.through) if said else "",
        "answered_on": day(seen.day_of(said.happened_at)) if said else "",
        "client_words": one.client_words,
    }


def _photo(photo: Photo, seen: _Seen) -> Shown:
    return {"id": str(photo.pk), "on": day(seen.day_of(photo.happened_at))}


def _papers(seen: _Seen) -> list[str]:
    """Return what laboratories wrote, in figures: a record, which declares nothing."""
    rows = reports_of(seen.commission)
    return [f"{row.laboratory}: {order_history.report(row.entry.facts)}" for row in rows]


def _history(seen: _Seen) -> list[Shown]:
    """Return what happened, newest first: one row for what was told alike of a day."""
    found: dict[tuple[date, str, str], list[str]] = defaultdict(list)
    for at, text, by, mark in sorted(_happened(seen), key=lambda row: row[0], reverse=True):
        marks = found[seen.day_of(at), text, by]
        if mark and mark not in marks:
            marks.append(mark)
    return [
        {"on": day(on), "words": text, "by": by, "marks": ", ".join(sorted(marks))}
        for (on, text, by), marks in found.items()
    ]


def _happened(seen: _Seen) -> Iterator[tuple[datetime, str, str, str]]:
    yield from _made(seen)
    own = JournalSubject.objects.filter(subject_id=seen.commission.pk).values("entry")
    acts = JournalEntry.objects.filter(pk__in=own, verb__in=TOLD_VERBS).select_related("member")
    back = JournalEntry.objects.filter(corrects__in=acts.values("pk")).values("corrects")
    for entry in acts.exclude(pk__in=back):
        text = order_history.tell_order(entry.verb, entry.facts)
        yield entry.happened_at, text, seen.name(entry.member), ""


def _made(seen: _Seen) -> Iterator[tuple[datetime, str, str, str]]:
    """Yield how far each piece came; what two stories are told of waits until one stands.

    Where losses are not shown, a piece that was lost is told of nowhere.
    """
    with_losses = "losses" in seen.share.shows
    pieces = [
        piece
        for line in seen.order.lines
        for piece in line.pieces
        if not piece.has_clash and (with_losses or piece.stage != "lost")
    ]
    told = [
        (piece, visit)
        for piece, story in zip(pieces, stories(pieces).values(), strict=True)
        for visit in words.worth_telling(story.visits, with_losses=with_losses)
    ]
    entries = JournalEntry.objects.select_related("member").in_bulk([v.act for _, v in told])
    for piece, visit in told:
        by = seen.name(entries[visit.act].member) if visit.act in entries else ""
        text = words.EVENTS.get(visit.spot.state, words.LOST)
        yield visit.at, text, by, piece.shown_mark


_SECTIONS = {
    "counts": _counts,
    "delivery": _delivery,
    "approvals": _approvals,
    "stages": _stages,
    "history": _history,
    "papers": _papers,
}
