"""The papers of an order: where each piece came from, whether one may eat from it, how to keep it.

Natch records and does not certify: what is declared is what somebody signed, in the words below,
and only where a report speaks for every piece.

.. [1] The Materials and Articles in Contact with Food (Wales) Regulations 2012 (WSI 2012/2705),
   part 4: ceramic articles for food go with a written declaration;
   https://legislation.gov.uk/wsi/2012/2705/part/4
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final, Literal

from pieces.domain.order_words import day
from studio.domain.food_contact import HOW_TESTED, JURISDICTION
from studio.domain.sheets import Block, Facts, Heading, Paper, Sheet, Table, Text

State = Literal["display", "not_declared", "declared"]

DISPLAY: Final = "For display only, not for food."
NOT_DECLARED: Final = "Not declared for food."
RECORDS: Final = (
    "Natch keeps what a laboratory wrote and what somebody signed. It does not certify; whoever "
    "sells the ware answers for it, under the law of the place."
)
# Common practice of makers, no source; the maker may say otherwise on the paper.
CARE: Final = (
    "Wash it by hand, with a soft cloth; let it dry before it is put away.",
    "No sudden heat or cold: no boiling water into a cold piece, none from the cold to the oven.",
    "Not for the hob, the oven, the microwave or the dishwasher unless its maker said so.",
    "Do not lift it by its handle or its lid alone when it is full.",
    "Fine cracks in the glaze can come with time. A piece for food that has crazed, chipped or "
    "lost a flake is for display from then on; its maker is glad to hear of it.",
)
CARE_DISPLAY: Final = (
    "For display only: nothing to eat or drink in it or from it.",
    "Dust it with a soft dry cloth; wipe it with a damp one.",
    "Keep it out of frost and off hot plates.",
)
BLANK: Final = "–"


@dataclass(frozen=True, slots=True)
class PieceFacts:
    """One piece as it is told to its owner; every text is ready to be read."""

    mark: str
    what: str
    maker: str
    made: str
    moulds: Sequence[str]
    clay: Sequence[str]
    fired: Sequence[str]
    ended: str
    is_display: bool
    limits: str
    glaze: Sequence[str]
    coverage: str
    is_within: bool


@dataclass(frozen=True, slots=True)
class ReportFacts:
    """What a laboratory wrote, as it wrote it."""

    reported_on: date
    laboratory: str
    about: str
    results: str
    verdict: str


@dataclass(frozen=True, slots=True)
class Signature:
    """Who signed, and whether they declared the ware for food."""

    name: str
    on: date
    is_declared: bool


@dataclass(frozen=True, slots=True)
class OrderFacts:
    """An order as its papers tell it. `later` is what was told after the papers were signed."""

    studio: str
    number: str
    what: str
    client: str
    taken_on: date
    promised_on: date | None
    pieces: Sequence[PieceFacts]
    are_finished: bool
    reports: Sequence[ReportFacts] = ()
    materials: Sequence[tuple[str, str]] = ()
    cautions: Sequence[str] = ()
    later: Sequence[tuple[str, str]] = ()
    is_delivered: bool = False


def wanting(order: OrderFacts) -> list[str]:
    """Return what keeps the ware from being declared for food, each once."""
    said = [] if order.are_finished else ["Nothing of it is finished yet."]
    for piece in order.pieces:
        if not piece.is_display and not piece.is_within:
            said.append(f"{piece.mark}: {piece.coverage}.")
    return said


def state_of(order: OrderFacts, signature: Signature | None) -> State:
    """Return how the ware stands towards food."""
    if order.pieces and all(piece.is_display for piece in order.pieces):
        return "display"
    return "declared" if signature is not None and signature.is_declared else "not_declared"


def written(order: OrderFacts, *, on: date, signature: Signature | None = None) -> Paper:
    """Return the papers of an order; without a signature they are a draft."""
    sheets = [
        Sheet(f"History of {order.number}", _history(order)),
        Sheet("Use with food", _food(order, signature)),
        Sheet("Care", _care(order)),
        Sheet("What is in the colours", _materials(order)),
    ]
    signed = f"signed {day(signature.on)}" if signature else f"draft of {day(on)}, not signed"
    return Paper(f"Papers of {order.number}", sheets, f"{order.studio} · {order.number} · {signed}")


def _history(order: OrderFacts) -> list[Block]:
    facts = [
        ("Order", f"{order.number}: {order.what}"),
        ("For", order.client),
        ("Made at", order.studio),
        ("Taken", day(order.taken_on)),
    ]
    if order.promised_on is not None:
        facts.append(("Promised", day(order.promised_on)))
    rows = [
        (
            piece.mark,
            f"{piece.what}\n{piece.maker}".strip(),
            piece.made,
            _lines(piece.moulds),
            _lines(piece.clay),
            _lines(piece.fired),
            piece.ended,
        )
        for piece in order.pieces
    ]
    head = ("Mark", "What, made by", "Pressed", "Moulds", "Clay", "Firings", "Now")
    told: list[Block] = [
        Facts(facts),
        Text("The mark is cut in the clay and stays with the piece. Generations of a mould count "
             "its castings from one master."),
        Table(head, rows, (8, 18, 12, 18, 18, 24, 14)),
    ]  # fmt: skip
    if order.later:
        since = "After delivery" if order.is_delivered else "Since papers were signed"
        told += [Heading(since), Table(("When", "What was told"), order.later, (1, 4))]
    return told


def _food(order: OrderFacts, signature: Signature | None) -> list[Block]:
    state = state_of(order, signature)
    if state == "display":
        return [Text(DISPLAY, is_strong=True), Text(RECORDS)]
    told: list[Block]
    if state == "declared" and signature is not None:
        told = [Text(declared(order, signature), is_strong=True)]
    else:
        told = [Text(NOT_DECLARED, is_strong=True), *map(Text, wanting(order))]
    rows = [
        (piece.mark, DISPLAY, BLANK, BLANK)
        if piece.is_display
        else (piece.mark, piece.limits, _lines(piece.glaze), piece.coverage)
        for piece in order.pieces
    ]
    head = ("Mark", "Limits it falls under", "Glaze batch", "What reports say")
    told += [Table(head, rows, (1, 4, 2, 5)), Heading("Reports")]
    if order.reports:
        reports = [
            (f"{day(row.reported_on)}\n{row.laboratory}", row.about, row.results, row.verdict)
            for row in order.reports
        ]
        told.append(Table(("Report of", "About", "Results", "Held against"), reports, (3, 4, 4, 4)))
        told.append(Text(f"How such ware is tested: {HOW_TESTED}"))
    else:
        told.append(Text("No report is kept."))
    return [*told, Text(RECORDS), Text(f"Limits: {JURISDICTION}")]


def declared(order: OrderFacts, signature: Signature) -> str:
    """Return the words that a signature stands under."""
    marks = ", ".join(piece.mark for piece in order.pieces if not piece.is_display)
    return (
        f"Declared for food on {day(signature.on)} by {signature.name}, {order.studio}: by the "
        f"reports below, {marks} give off no more lead and cadmium than the limits below."
    )


def _care(order: OrderFacts) -> list[Block]:
    told: list[Block] = []
    for text, is_display in ((CARE, False), (CARE_DISPLAY, True)):
        marks = [piece.mark for piece in order.pieces if piece.is_display is is_display]
        if marks:
            told += [Heading(", ".join(marks)), *(Text(line) for line in text)]
    return [*told, Text("Common practice; where its maker says otherwise, that counts.")]


def _materials(order: OrderFacts) -> list[Block]:
    told: list[Block] = [Text("For whoever makes, mends or grinds such ware.")]
    if order.materials:
        told.append(Table(("Material", "What is known of it"), order.materials, (1, 2)))
    told += [Text(line) for line in order.cautions]
    return [*told, Text("The sheets that came with stains and glaze materials come first.")]


def _lines(texts: Sequence[str]) -> str:
    return "\n".join(texts) or BLANK
