"""What clients of the demo are shown and asked, as tables. Keys are made at random each time."""

from typing import Final, NamedTuple


class LinkRow(NamedTuple):
    """A link that was made; `revoked` is when it was taken back, empty where it was not."""

    number: str
    who: str
    made: str
    last_day: str
    shows: tuple[str, ...]
    revoked: str = ""


class ApprovalRow(NamedTuple):
    """What a client is asked, by which day."""

    number: str
    who: str
    asked: str
    about: str
    waits: str
    due: str
    question: str


LINKS: Final = (
    LinkRow(
        "C-105", "piet", "2026-09-16 09:10", "2026-11-30",
        ("counts", "delivery", "stages", "history"),
    ),
    LinkRow(
        "C-102", "odile", "2026-10-05 17:00", "2026-12-18",
        ("counts", "delivery", "approvals", "stages", "history", "losses"),
        revoked="2026-10-24 18:05",
    ),
    LinkRow(
        "C-102", "odile", "2026-10-24 18:07", "2026-12-18",
        ("counts", "delivery", "approvals", "stages", "history"),
    ),
)  # fmt: skip

APPROVALS: Final = (
    ApprovalRow(
        "C-102", "odile", "2026-10-29 17:20", "colour", "glazing", "2026-11-06",
        "Is this the brown you want, before the first boat is glazed?",
    ),
)  # fmt: skip
