"""Papers for print: sheets of headings, facts and tables, drawn as one PDF.

    paper = Paper("C-102", [Sheet("History", [Facts([("Client", "Dr E. Wainfleet")])])], "draft")
    pdf = drawn(paper)

Texts are plain text: whatever is in them is printed as it is, and never read as markup.
"""

from .blocks import Block, Facts, Heading, Paper, Sheet, Table, Text
from .pdf import drawn

__all__ = ["Block", "Facts", "Heading", "Paper", "Sheet", "Table", "Text", "drawn"]
