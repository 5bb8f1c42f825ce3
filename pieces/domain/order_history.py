"""What happened about an order, in a few words. Acts about its pieces: see `history_words`."""

from collections.abc import Callable, Mapping
from datetime import date
from typing import Any, Final, Literal

from . import approval_words, stages
from .order_words import day

Facts = Mapping[str, Any]
Kind = Literal["loss", "firing", "promise", "client", "making"]

PROMISES: Final = (
    "took_commission",
    "promised",
    "added_line",
    "changed_line",
    "changed_recipe",
    "assigned",
    "handed_over",
    "closed_commission",
    "cancelled_commission",
    "reopened_commission",
)
CLIENTS: Final = (
    "took_commission",
    "changed_commission",
    "promised",
    "handed_over",
    "recorded_report",
    "signed_papers",
    "asked_approval",
    "answered_approval",
    "made_link",
    "revoked_link",
    "froze_history",
    "cancelled_commission",
    "reopened_commission",
)
ABOUT_ORDER: Final = frozenset(PROMISES) | frozenset(CLIENTS)
LOSSES: Final = ("scrapped", "went_missing", "let_go", "part_scrapped", "cracked", "replaced")
#: A pressing that makes a part anew tells of the one that was lost, too.
MADE_PARTS: Final = ("pressed", "made_part")
IN_PLACE_OF: Final = ", in the place of the one before"
#: What somebody settled not to have happened to a piece, of an act that is about others too.
NOT_SO: Final = ", which was not so: two stories settled"
LOST_PARTS: Final = ("cracked", "scrapped", "replaced")
FIRED_STATES: Final = (
    stages.IN_BISQUE.state,
    stages.BISQUED.state,
    stages.IN_GLAZE.state,
    stages.GLAZE_FIRED.state,
)
FIELDS: Final = {
    "client_name": "the client's name",
    "client_contact": "how to reach the client",
    "maker": "its maker",
    "what": "what it is",
    "use": "its use",
}
USES: Final = {"food": "for food", "display": "for display only"}
PLAIN: Final = {
    "handed_over": "handed over",
    "closed_commission": "order closed",
    "cancelled_commission": "order cancelled",
    "reopened_commission": "order opened again",
    "changed_recipe": "what makes a set was changed",
    "revoked_link": "a link was revoked",
    "froze_history": "the history was kept as it stood",
}


def kind_of(verb: str, *, is_loss: bool, is_firing: bool) -> Kind:
    """Return what kind of act a line of the history is."""
    if is_loss:
        return "loss"
    if is_firing:
        return "firing"
    if verb in PROMISES:
        return "promise"
    return "client" if verb in CLIENTS else "making"


def tell_order(verb: str, facts: Facts) -> str:
    """Return what an act about an order itself said, without a full stop."""
    if verb in _TELLS:
        return _TELLS[verb](facts)
    return PLAIN.get(verb, verb.replace("_", " "))


def tell_assigned(move: Facts, commission: str) -> str:
    """Return what an assignment meant for one of the two orders; the other is not named."""
    came_from, line = move.get("from_commission"), move.get("commission")
    if line == commission:
        if came_from is None:
            return "promised to this order"
        return "moved to another line" if came_from == commission else "came from another order"
    return "left for another order" if line is not None else "taken out of this order"


def _taken(facts: Facts) -> str:
    said = f"order {facts['number']} taken, {USES.get(facts.get('use', ''), 'for food')}"
    promised = facts.get("promised_date")
    return f"{said}, promised for {_day(promised)}" if promised else said


def _line_changed(facts: Facts) -> str:
    was, now = facts["was"], facts["wanted_sets"]
    return f"{now} wanted instead of {was}" if was != now else "a line was reworded"


def _link_made(facts: Facts) -> str:
    whom = "a visitor" if facts["kind"] == "visitor" else "the client"
    return f"a link was made for {whom}, until {_day(facts['expires_on'])}"


def _promised(was: str | None, now: str | None) -> str:
    if now is None:
        return f"no day promised any more; it was {_day(was)}" if was else "no day promised"
    if was is None:
        return f"promised for {_day(now)}"
    days = (date.fromisoformat(now) - date.fromisoformat(was)).days
    moved = f"{abs(days)} day{'s' if abs(days) != 1 else ''} {'later' if days > 0 else 'earlier'}"
    return f"promised for {_day(now)} instead of {_day(was)}{f', {moved}' if days else ''}"


def _changed(facts: Facts) -> str:
    names = [FIELDS.get(name, name) for name in facts.get("changed", ())]
    said = f"changed: {', '.join(names)}" if names else "nothing changed"
    use = facts.get("use")
    return f"{said} ({USES.get(use, use)})" if use else said


def report(facts: Facts) -> str:
    """Return what a laboratory wrote, in figures."""
    unit = {"mg_per_l": "mg/l", "mg_per_dm2": "mg/dm²"}.get(facts["unit"], facts["unit"])
    lead = f"{'< ' if facts['lead_is_below'] else ''}{facts['lead_value']:g} {unit}"
    cadmium = f"{'< ' if facts['cadmium_is_below'] else ''}{facts['cadmium_value']:g} {unit}"
    return f"report of {_day(facts['reported_on'])}: lead {lead}, cadmium {cadmium}"


def _day(text: str | None) -> str:
    return day(date.fromisoformat(text)) if text else "no day"


_TELLS: Final[Mapping[str, Callable[[Facts], str]]] = {
    "took_commission": _taken,
    "promised": lambda facts: _promised(facts.get("was"), facts.get("promised_date")),
    "changed_commission": _changed,
    "added_line": lambda facts: f"a line was added: {facts['wanted_sets']} wanted",
    "changed_line": _line_changed,
    "recorded_report": report,
    "signed_papers": lambda facts: (
        f"papers signed{', declared for food' if facts.get('declares') else ''}"
    ),
    "asked_approval": lambda facts: approval_words.asked(facts["about"], facts["due_date"]),
    "answered_approval": lambda facts: approval_words.answered(
        facts["about"], facts["answer"], facts["through"]
    ),
    "made_link": _link_made,
}
