"""Pieces, parts and stories as they are shown."""

from collections.abc import Iterable, Sequence
from typing import Any

from pieces.domain import stages
from pieces.domain.stages import Spot
from pieces.domain.story import Visited
from pieces.models import Part, Piece
from pieces.queries import pieces as queries
from pieces.queries.clashes import ClashNow
from pieces.queries.history import Told
from pieces.queries.stood import stands_on
from studio.models import Member

from .bench_rows import shown_part, shown_person, shown_piece, shown_place

Shown = dict[str, Any]


def shown_briefs(pieces: Iterable[Piece], member: Member) -> list[Shown]:
    """Return pieces (from `queries.listed`) as rows of a list. Four queries."""
    pieces = list(pieces)
    clashes = queries.open_clashes(piece.pk for piece in pieces)
    missing = queries.missing_roles(pieces)
    mine = queries.makers_of(member)
    return [
        {
            **shown_piece(piece),
            "design_id": piece.design_id,
            "place": shown_place(piece.place),
            "maker": shown_person(piece.maker),
            "mine": piece.maker_id in mine,
            "since_at": piece.since_at,
            "touched_at": piece.touched_at,
            "cover": piece.cover,
            "clash_id": clashes.get(piece.pk),
            "is_damaged": piece.is_damaged,
            "missing_roles": missing[piece.pk],
        }
        for piece in pieces
    ]


def shown_whole(piece: Piece, member: Member) -> Shown:
    """Return one piece with all that its row holds."""
    body = piece.body
    return {
        **shown_briefs([piece], member)[0],
        "use": piece.use,
        "grade": piece.grade,
        "body": {"id": body.pk, "code": body.code, "name": body.name} if body else None,
        "has_interrupted_bisque": piece.has_interrupted_bisque,
        "look_again_at": piece.look_again_at,
        "cover_since_at": piece.cover_since_at,
        "stands_on": stands_on(piece),
        "begun_at": piece.begun_at,
    }


def shown_whole_part(part: Part) -> Shown:
    """Return one part, and the mould and the block it came from."""
    pressing = part.pressing
    block = pressing.slab_block if pressing else None
    return {
        **shown_part(part),
        "number": part.number,
        "cover": part.cover,
        "pressed_at": part.pressed_at,
        "out_at": part.out_at,
        "joined_at": part.joined_at,
        "ended_at": part.ended_at,
        "look_again_at": part.look_again_at,
        "mould": {
            "set_id": pressing.casting.mould_set_id,
            "label": pressing.casting.mould_set.label,
            "generation": pressing.casting.generation,
        }
        if pressing
        else None,
        "slab_block": {"id": block.pk, "label": block.label} if block else None,
        "replaces": part.replaces_id,
    }


def shown_spot(spot: Spot) -> Shown:
    """Return a spot of the job with its words."""
    return {"stage": spot.stage, "state": spot.state, "words": stages.words(spot.state)}


def shown_visit(visit: Visited) -> Shown:
    """Return one visit to a spot of the job."""
    return {
        **shown_spot(visit.spot),
        "at": visit.at,
        "reason": visit.reason,
        "occasion_id": visit.occasion_id,
        "occasion_name": visit.occasion_name,
    }


def shown_words(said: Sequence[Any]) -> list[Shown]:
    """Return warnings or cautions."""
    return [{"code": one.code, "detail": one.detail} for one in said]


def shown_told(told: Told) -> Shown:
    """Return one act of a story."""
    entry, back = told.entry, told.taken_back_by
    return {
        "id": entry.pk,
        "verb": entry.verb,
        "words": told.words,
        "happened_at": entry.happened_at,
        "written_at": entry.written_at,
        "is_late": told.is_late,
        "member": shown_person(entry.member),
        "device": entry.device.name,
        "note": told.note,
        "photo_ids": told.photos,
        "corrects": entry.corrects,
        "is_taken_back": back is not None,
        "taken_back_by": shown_person(back.member) if back else None,
        "taken_back_at": back.happened_at if back else None,
        "left_out_by": shown_person(told.left_out_by.member) if told.left_out_by else None,
        "is_also_said": told.is_also_said,
        "is_held": told.is_held,
    }


def shown_clash(now: ClashNow, *, may_answer: bool) -> Shown:
    """Return one clash with its two acts and what each answer comes to."""
    clash, piece = now.clash, now.clash.piece
    return {
        "id": clash.pk,
        "kind": clash.kind,
        "state": clash.state,
        "subject": {
            "kind": "piece",
            "id": piece.pk,
            "mark": piece.shown_mark,
            "noun": piece.design.noun,
        },
        "opened_at": clash.opened_at,
        "stands_meanwhile": {
            "stage": piece.stage,
            "state": piece.state,
            "words": stages.words(piece.state, piece.cover),
            "place": shown_place(piece.place),
        },
        "holds": ["placement"] if clash.state == "open" else [],
        "asked": [shown_person(person) for person in now.asked],
        "may_answer": may_answer,
        "acts": [
            {
                "id": entry.pk,
                "verb": entry.verb,
                "words": words,
                "detail": " ".join(note.text for note in entry.notes.all()),
                "happened_at": entry.happened_at,
                "written_at": entry.written_at,
                "member": shown_person(entry.member),
                "device": entry.device.name,
                "facts": entry.facts,
            }
            for entry, words in now.acts
        ],
        "choices": now.choices,
    }
