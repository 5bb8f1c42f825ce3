"""What happened, in a few words: one line of a piece's story."""

from collections.abc import Callable, Mapping
from typing import Any, Final

from pieces.domain import refire_words, stages

Facts = Mapping[str, Any]
Name = Callable[[Any], str]

STANDS_ON: Final = {
    "board": ", on a board",
    "bat": ", on a plaster bat",
    "slats": ", on slats, open below",
}
COVERED: Final = {
    "open": "uncovered",
    "loose": "loosely covered",
    "tucked": "tucked in",
    "sealed": "sealed",
}
FELT: Final = {
    "fine": "seen, fine",
    "soft": "feels soft",
    "leather_hard": "feels leather-hard",
    "too_stiff": "feels too stiff to join",
    "bone_dry": "feels bone dry",
}
PART_SAID: Final = {
    "demoulded": "out of its mould",
    "not_yet": "not yet to come out",
    "stuck": "stuck in its mould",
    "joined": "joined",
    "cracked": "cracked",
    "part_scrapped": "scrapped",
    "replaced": "replaced",
}
SETTLED: Final = {
    "first": "two stories settled: the first stands",
    "second": "two stories settled: the second stands",
    "both": "two stories settled: both stand",
}
LOST: Final = {"scrapped": "scrapped", "went_missing": "missing", "let_go": "let go"}

#: What a firing did with a piece in it; the load is opaque here, a number in the facts.
LOADS: Final = {
    "put_on_load": "booked on {}",
    "took_off_load": "taken off {}",
    "shifted_in_load": "shifted in its load",
    "settled_load": "load {} settled",
    "reopened_load": "load {} opened again",
    "loaded_kiln": "in the kiln with {}",
    "lit_kiln": "{} lit",
    "kiln_stopped": "{} stopped",
    "relit_kiln": "{} lit again",
    "ended_firing": "{} ended",
    "opened_kiln": "kiln of {} opened",
    "unloaded_kiln": "{} unloaded",
    "called_off_load": "{} called off",
}


def tell(verb: str, facts: Facts, *, piece: str, name: Name) -> str:
    """Return one act about a piece in words.

    Parameters
    ----------
    verb, facts
        As the journal keeps them.
    piece
        The id of the piece, for acts about several.
    name
        Gives the name of an id that the facts hold: a place, a part's role, a mould set, a glaze.

    Returns
    -------
    A few words, without a full stop. An act that is not known here is told by its verb.
    """
    match verb:
        case "came_to":
            return _came_to(facts, piece, name)
        case _ if verb in LOADS:
            return _fired(verb, facts, piece, name)
        case "became_possible":
            return _became(facts, piece)
        case "settled_load_clash":
            return _settled_load(facts)
        case "pressed":
            return _pressed(facts, piece, name)
        case _ if verb in PART_SAID:
            return _part(verb, facts, name)
        case _ if verb in LOST:
            return _lost(LOST[verb], facts)
        case _:
            return _plain(verb, facts, name)


def _plain(verb: str, facts: Facts, name: Name) -> str:
    match verb:
        case "covered":
            roles = " and ".join(dict.fromkeys(name(part) for part in facts.get("parts", ())))
            said = f"{roles} {COVERED.get(str(facts.get('state')), 'covered')}".strip()
        case "checked":
            said = FELT.get(str(facts.get("feel")), "felt")
            said = f"{name(facts['part'])} {said}" if facts.get("part") else said
        case "moved":
            on = STANDS_ON.get(str(facts.get("stands_on")), "")
            said = f"put on {name(facts.get('place'))}{on}"
        case "weighed":
            said = f"weighed {facts.get('mass_g', 0):g} g"
        case "made_part":
            said = f"{facts.get('role')} {facts.get('method')}"
        case "changed_piece":
            said = "for display only" if facts.get("use") == "display" else "meant for food"
        case "settled_clash":
            said = SETTLED.get(str(facts.get("choice")), "two stories settled")
        case "matched" | "parted":
            gap = facts.get("seat_gap_mm")
            said = f"{verb}{f', seat gap {gap:g} mm' if gap is not None else ''}"
        case "assigned":
            to_order = any(move.get("line") for move in facts.get("moves", ()))
            said = "promised to an order" if to_order else "taken out of its order"
        case "asked_for_cone":
            said = refire_words.ticket(
                str(facts.get("kind")),
                str(facts.get("cone")),
                str(facts.get("fault", "")),
                facts.get("mended", ()),
            )
        case "found_ware":
            said = "found without a name"
        case "returned_ware":
            said = "given back"
        case "took_back":
            said = f"taken back: {str(facts.get('verb')).replace('_', ' ')}"
        case _:
            said = verb.replace("_", " ")
    return said


def _settled_load(facts: Facts) -> str:
    was_in, was_not = facts.get("loads") or ("one load", "the other")
    if facts.get("choice") == "second":
        was_in, was_not = was_not, was_in
    return f"two stories settled: in {was_in}, not in {was_not}"


def _came_to(facts: Facts, piece: str, name: Name) -> str:
    visit = _of_piece(facts.get("visits", ()), "piece", piece)
    words = stages.WORDS.get(str(visit.get("state")), "moved on")
    grade = f", {visit['grade']}" if visit.get("grade") else ""
    glaze = f" in {name(visit['glaze_batch'])}" if visit.get("glaze_batch") else ""
    occasion = f", {visit['occasion_name']}" if visit.get("occasion_name") else ""
    reason = str(visit.get("reason") or "")
    why = ", told afterwards" if reason == stages.CATCHING_UP else f" ({reason})" if reason else ""
    return f"{words}{glaze}{grade}{occasion}{why}"


def _fired(verb: str, facts: Facts, piece: str, name: Name) -> str:
    if _of_piece(facts.get("visits", ()), "piece", piece).get("state"):
        return _came_to(facts, piece, name)
    return LOADS[verb].format(facts.get("load", "a load"))


def _became(facts: Facts, piece: str) -> str:
    state = _of_piece(facts.get("pieces", ()), "id", piece).get("state")
    return stages.WORDS.get(str(state), "can go on")


def _pressed(facts: Facts, piece: str, name: Name) -> str:
    roles = [p["role"] for p in facts.get("parts", ()) if p.get("piece") == piece]
    mould = f"{name(facts.get('mould_set'))} g{facts.get('generation')}"
    return f"{' and '.join(dict.fromkeys(roles)) or 'clay'} pressed in {mould}"


def _part(verb: str, facts: Facts, name: Name) -> str:
    roles = " and ".join(dict.fromkeys(name(part) for part in facts.get("parts", ())))
    why = facts.get("how") or facts.get("cause")
    return f"{roles or 'part'} {PART_SAID[verb]}{f' ({why})' if why else ''}"


def _lost(word: str, facts: Facts) -> str:
    cause = facts.get("cause")
    guess = ", a guess" if facts.get("cause_is_guess") else ""
    return f"{word}: {cause}{guess}" if cause else word


def _of_piece(rows: Any, key: str, piece: str) -> Facts:
    found: Facts = next((row for row in rows if row.get(key) == piece), {})
    return found
