"""Drawing a paper: A4, upright, in ink, clean in print; the same paper is the same bytes."""

from io import BytesIO
from typing import Any, Final

from reportlab.lib.colors import HexColor
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.platypus import (
    Flowable,
    PageBreak,
    Paragraph,
    SimpleDocTemplate,
    Spacer,
)
from reportlab.platypus import Table as Grid

from . import letters
from .blocks import Block, Facts, Heading, Paper, Sheet, Table, Text

MARGIN: Final = 18 * mm
WIDTH: Final = A4[0] - 2 * MARGIN
NAMES: Final = 0.24  # of the width, for the names of facts
INK: Final = HexColor("#10151B")
RULE: Final = HexColor("#78828C")


def _style(name: str, size: float, face: str = letters.REGULAR, **more: Any) -> ParagraphStyle:
    return ParagraphStyle(
        name, fontName=face, fontSize=size, leading=size * 1.3, textColor=INK, **more
    )


TITLE: Final = _style("title", 20, letters.BOLD, spaceAfter=10)
HEADING: Final = _style("heading", 13, letters.BOLD, spaceBefore=10, spaceAfter=4)
BODY: Final = _style("body", 10.5, spaceAfter=5)
STRONG: Final = _style("strong", 11.5, letters.BOLD, spaceAfter=5)
CELL: Final = _style("cell", 9.5)
HEAD: Final = _style("head", 9.5, letters.BOLD)
FOOT_SIZE: Final = 8.5


def drawn(paper: Paper) -> bytes:
    """Return the paper as a PDF."""
    letters.faces()
    held = BytesIO()
    document = SimpleDocTemplate(
        held,
        pagesize=A4,
        leftMargin=MARGIN,
        rightMargin=MARGIN,
        topMargin=MARGIN,
        bottomMargin=MARGIN,
        title=letters.plain(paper.title),
        author="",
        lang="en-GB",
        invariant=1,
    )
    flow: list[Flowable] = []
    for sheet in paper.sheets:
        flow += [*([PageBreak()] if flow else []), *_sheet(sheet)]

    def foot(canvas: Any, page: Any) -> None:
        _foot(canvas, f"{paper.foot} · page {page.page}")

    document.build(flow, onFirstPage=foot, onLaterPages=foot)
    return held.getvalue()


def _sheet(sheet: Sheet) -> list[Flowable]:
    return [_words(sheet.title, TITLE), *(each for block in sheet.blocks for each in _block(block))]


def _block(block: Block) -> list[Flowable]:
    match block:
        case Heading():
            return [_words(block.text, HEADING)]
        case Text():
            return [_words(block.text, STRONG if block.is_strong else BODY)]
        case Facts():
            rows = [[_words(name, HEAD), _words(value, CELL)] for name, value in block.rows]
            return _grid(rows, [WIDTH * NAMES, WIDTH * (1 - NAMES)])
        case Table():
            head = [_words(name, HEAD) for name in block.head]
            rows = [head, *([_words(cell, CELL) for cell in row] for row in block.rows)]
            whole = sum(block.shares)
            return _grid(rows, [WIDTH * share / whole for share in block.shares], heads=1)


def _grid(rows: list[list[Paragraph]], widths: list[float], *, heads: int = 0) -> list[Flowable]:
    if not rows:
        return []
    style: list[tuple[Any, ...]] = [
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (0, -1), 0),
        ("TOPPADDING", (0, 0), (-1, -1), 2),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 3),
        ("LINEBELOW", (0, 0), (-1, -1), 0.4, RULE),
    ]
    if heads:
        style.append(("LINEBELOW", (0, 0), (-1, 0), 1.2, INK))
    return [Grid(rows, widths, repeatRows=heads, splitInRow=1, style=style), Spacer(0, 6)]


def _words(text: str, style: ParagraphStyle) -> Paragraph:
    return Paragraph(letters.marked_up(text, face=style.fontName), style)


def _foot(canvas: Any, text: str) -> None:
    paragraph = Paragraph(letters.marked_up(text), _style("foot", FOOT_SIZE))
    _, height = paragraph.wrap(WIDTH, MARGIN)
    paragraph.drawOn(canvas, MARGIN, MARGIN / 2 - height / 2)
