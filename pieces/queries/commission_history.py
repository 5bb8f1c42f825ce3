"""The history of an order, from the journal: one query finds its acts, whoever told them.

The acts about a piece come along with it from where it was before, and end where it leaves. What
concerns others' orders too is told for this order's pieces only, and notes and photos of several
orders, or from before a piece came from another one, are kept back: the piece's own story has them.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final, Literal
from uuid import UUID

from django.db.models import Exists, OuterRef, Q, QuerySet

from pieces.domain import order_history as words
from pieces.domain.history_words import LOADS
from pieces.models import Assignment, Commission, PartEvent, Piece, StageEvent
from studio.models import JournalEntry, JournalSubject, PhotoOf
from studio.queries import photos
from studio.queries.journal import is_late

from .history import Names, corrections, left_out

Filter = Literal["all", "losses", "firings", "promises", "clients", "photos"]
FILTERS: Final[tuple[Filter, ...]] = ("all", "losses", "firings", "promises", "clients", "photos")


@dataclass(frozen=True, slots=True)
class Line:
    """What one act meant for some pieces of the order."""

    words: str
    pieces: list[tuple[UUID, str]]


@dataclass(frozen=True, slots=True)
class OrderTold:
    """One act about an order or its pieces. `words` is what it said of the order itself."""

    entry: JournalEntry
    kind: words.Kind
    words: str
    lines: list[Line]
    note: str | None
    has_hidden_note: bool
    photos: list[UUID]
    has_hidden_photos: bool
    is_late: bool
    taken_back_by: JournalEntry | None
    came_from_other_order: bool


def acts_of(commission: Commission, wanted: Filter = "all") -> "QuerySet[JournalEntry]":
    """Return the acts about an order and its pieces, newest first. One query when read."""
    pieces = Piece.objects.filter(line__commission=commission).values("pk")
    own = JournalSubject.objects.filter(Q(subject_id=commission.pk) | Q(subject_id__in=pieces))
    departures = Assignment.objects.filter(came_from__commission=commission)
    later = departures.filter(piece=OuterRef("subject_id"), entry__seq__gte=OuterRef("entry__seq"))
    before = JournalSubject.objects.filter(Exists(later), subject_id__in=departures.values("piece"))
    entries = JournalEntry.objects.filter(
        Q(pk__in=own.values("entry")) | Q(pk__in=before.values("entry")),
        studio=commission.studio_id,
    )
    return (
        _only(entries, commission, wanted)
        .select_related("member", "device")
        .prefetch_related("notes", "photos", "subjects")
        .order_by("-happened_at", "-seq")
    )


def told(commission: Commission, entries: Sequence[JournalEntry]) -> list[OrderTold]:
    """Return the acts in words. Ten queries, however many."""
    name = Names(entries)
    back = corrections(entries)
    about = _About(commission, entries)
    return [
        OrderTold(
            entry=entry,
            kind=words.kind_of(
                entry.verb,
                is_loss=entry.pk in about.losses,
                is_firing=entry.verb in LOADS or entry.pk in about.firings,
            ),
            words=words.tell_order(entry.verb, entry.facts)
            if entry.verb in words.ABOUT_ORDER and entry.verb != "assigned"
            else "",
            lines=about.lines(entry, name),
            note=None if about.is_private(entry) else _note(entry),
            has_hidden_note=about.is_private(entry) and _note(entry) is not None,
            photos=[] if about.is_private(entry) else photos.ids_of(entry),
            has_hidden_photos=about.is_private(entry) and bool(photos.ids_of(entry)),
            is_late=is_late(entry),
            taken_back_by=back.get(entry.pk),
            came_from_other_order=about.is_earlier(entry),
        )
        for entry in entries
    ]


class _About:
    """Which pieces acts are about, of this order and of others. Five queries."""

    def __init__(self, commission: Commission, entries: Sequence[JournalEntry]) -> None:
        self.commission = commission
        self.subjects = {
            entry.pk: [s.subject_id for s in entry.subjects.all() if s.kind == "piece"]
            for entry in entries
        }
        self.orders = {
            entry.pk: {s.subject_id for s in entry.subjects.all() if s.kind == "commission"}
            for entry in entries
        }
        ids = {pk for pks in self.subjects.values() for pk in pks}
        self.came, self.left = _comings(commission, ids)
        rows = Piece.objects.filter(pk__in=ids).order_by("mark_key", "suffix")
        rows = rows.select_related("line").only("mark", "suffix", "line__commission")
        self.marks: dict[UUID, str] = {}
        self.elsewhere: set[UUID] = set()
        for piece in rows:
            is_ours = piece.line is not None and piece.line.commission_id == commission.pk
            if is_ours or piece.pk in self.left:
                self.marks[piece.pk] = piece.shown_mark
            if not is_ours and piece.line is not None:
                self.elsewhere.add(piece.pk)
            if is_ours:
                self.left.pop(piece.pk, None)
        ours = list(self.marks)
        visits = StageEvent.objects.filter(entry__in=entries, piece__in=ours)
        lost = visits.filter(stage="lost").values_list("entry", flat=True)
        broken = PartEvent.objects.filter(
            entry__in=entries, piece__in=ours, kind__in=words.LOST_PARTS
        )
        said = list(broken.values_list("entry", "piece", "kind"))
        self.losses = {*lost, *(entry for entry, _, _ in said)}
        replaced = PartEvent.Kind.REPLACED
        self.not_so = set(left_out(ours, entries))
        self.replaced = {(entry, piece) for entry, piece, kind in said if kind == replaced}
        fired = visits.filter(state__in=words.FIRED_STATES)
        self.firings = set(fired.values_list("entry", flat=True))

    def lines(self, entry: JournalEntry, name: Names) -> list[Line]:
        """Return what the act meant for which pieces of the order."""
        if entry.verb == "assigned":
            said = {
                UUID(move["piece"]): words.tell_assigned(move, str(self.commission.pk))
                for move in entry.facts["moves"]
            }
        else:
            said = {pk: self._words(entry, pk, name) for pk in self.subjects[entry.pk]}
        found: dict[str, list[tuple[UUID, str]]] = defaultdict(list)
        for pk, mark in self.marks.items():
            if pk in said and not self.had_left(pk, entry):
                found[said[pk]].append((pk, mark))
        return [Line(text, pieces) for text, pieces in found.items()]

    def _words(self, entry: JournalEntry, piece: UUID, name: Names) -> str:
        told = name.words(entry, piece)
        is_new_part = (entry.pk, piece) in self.replaced and entry.verb in words.MADE_PARTS
        if (piece, entry.pk) in self.not_so:
            return f"{told}{words.NOT_SO}"
        return f"{told}{words.IN_PLACE_OF}" if is_new_part else told

    def had_left(self, piece: UUID, entry: JournalEntry) -> bool:
        """Say whether a piece was of this order before, but not any more when that was heard."""
        return entry.seq > self.left.get(piece, entry.seq)

    def is_earlier(self, entry: JournalEntry) -> bool:
        """Say whether all it tells of here happened before the pieces came from another order."""
        own = [pk for pk in self.subjects[entry.pk] if pk in self.marks]
        return bool(own) and all(entry.seq < self.came.get(pk, 0) for pk in own)

    def is_private(self, entry: JournalEntry) -> bool:
        """Say whether its words may be about somebody else's order."""
        strange = {
            pk
            for pk in self.elsewhere.intersection(self.subjects[entry.pk])
            if pk not in self.left or self.had_left(pk, entry)
        }
        others = self.orders[entry.pk] - {self.commission.pk}
        return bool(strange or others) or self.is_earlier(entry)


def _comings(
    commission: Commission, pieces: Iterable[UUID]
) -> tuple[dict[UUID, int], dict[UUID, int]]:
    """Return when, by journal number, pieces came here from another order, and left it last."""
    came: dict[UUID, int] = {}
    left: dict[UUID, int] = {}
    rows = Assignment.objects.filter(
        Q(line__commission=commission) | Q(came_from__commission=commission), piece__in=pieces
    )
    told = rows.order_by("entry__seq").values_list(
        "piece", "entry__seq", "came_from__commission", "line__commission"
    )
    for piece, seq, was, now in told:
        if was == commission.pk and now != commission.pk:
            left[piece] = seq
        elif was is not None and was != commission.pk:
            came[piece] = seq
    return came, left


def _only(
    entries: "QuerySet[JournalEntry]", commission: Commission, wanted: Filter
) -> "QuerySet[JournalEntry]":
    left = Assignment.objects.filter(came_from__commission=commission).values("piece")
    ours = Piece.objects.filter(Q(line__commission=commission) | Q(pk__in=left)).values("pk")
    visits = StageEvent.objects.filter(entry=OuterRef("pk"), piece__in=ours)
    match wanted:
        case "losses":
            parts = PartEvent.objects.filter(
                entry=OuterRef("pk"), piece__in=ours, kind__in=words.LOST_PARTS
            )
            return entries.filter(Exists(visits.filter(stage="lost")) | Exists(parts))
        case "firings":
            fired = Exists(visits.filter(state__in=words.FIRED_STATES))
            return entries.filter(Q(fired) | Q(verb__in=LOADS))
        case "promises":
            return entries.filter(verb__in=words.PROMISES)
        case "clients":
            return entries.filter(verb__in=words.CLIENTS)
        case "photos":
            return entries.filter(Exists(PhotoOf.objects.filter(entry=OuterRef("pk"))))
        case _:
            return entries


def _note(entry: JournalEntry) -> str | None:
    return next((note.text for note in entry.notes.all() if note.text), None)
