"""The log of a load as it is shown: events, readings, cones, what a stopped one may become."""

from firings.domain.cones import hand_words
from firings.domain.firing_times import STOPPED_CAUTION
from firings.models import KilnReading, Load, LoadEvent, WitnessCone
from firings.queries.firing import LoadWhole
from pieces.api.bench_rows import shown_person
from studio.domain.hours import elapsed_h

from .shown_kilns import Shown

EVENT_WORDS = {
    "settled": "settled",
    "reopened": "open again",
    "loading": "loaded",
    "started": "lit",
    "stopped": "went out",
    "resumed": "lit again",
    "ended": "ended",
    "opened": "opened",
    "unloaded": "unloaded",
    "called_off": "called off",
}


def shown_event(row: LoadEvent, *, is_taken_back: bool, is_misfit: bool) -> Shown:
    notes = [note.text for note in row.entry.notes.all() if note.text]
    return {
        "id": row.pk,
        "kind": row.kind,
        "words": EVENT_WORDS[row.kind],
        "happened_at": row.happened_at,
        "written_at": row.entry.written_at,
        "member": shown_person(row.entry.member),
        "celsius": row.celsius,
        "outcome": row.outcome,
        "reason": row.reason,
        "note": notes[0] if notes else None,
        "is_taken_back": is_taken_back,
        "is_misfit": is_misfit,
    }


def shown_reading(row: KilnReading, load: Load) -> Shown:
    started_at = load.started_at
    return {
        "id": row.pk,
        "act_id": row.entry_id,
        "taken_at": row.happened_at,
        "elapsed_h": elapsed_h(started_at, row.happened_at) if started_at else None,
        "reading_c": row.reading_c,
        "set_c": row.set_c,
        "words": row.words,
        "use": row.use,
        "why": row.why,
        "instead_c": row.instead_c,
        "member": shown_person(row.entry.member),
    }


def shown_cone(row: WitnessCone) -> Shown:
    return {
        "id": row.pk,
        "level": row.level,
        "role": row.role,
        "cone": row.cone,
        "clock_hand": row.clock_hand,
        "hand_words": hand_words(row.clock_hand),
        "words": row.words,
        "happened_at": row.happened_at,
    }


def shown_stopped(whole: LoadWhole) -> Shown | None:
    if whole.stopped is None:
        return None
    facts, found = whole.stopped
    names = ("highest_c", "highest_at", "above_600_h", "gap_h", "last_c", "last_at")
    return {
        "facts": {name: getattr(facts, name) for name in names},
        "caution": STOPPED_CAUTION,
        "choices": [
            {
                "code": one.code,
                "kind": str(one.kind),
                "outcome": one.outcome,
                "words": one.words,
                "is_backed": one.is_backed,
            }
            for one in found
        ],
    }
