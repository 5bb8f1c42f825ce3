"""Keeping keys that stand in addresses out of the logs."""

import logging
import re
from typing import Final

#: What stands before a key in an address.
_BEFORE_KEY: Final = r"(?:/c|/api/v1/shares|/api/v1/invitations|/join|/calendar)/"
_KEY: Final = re.compile(rf"({_BEFORE_KEY})[^/\s?\"']+")


def redacted(text: str) -> str:
    """Return a text without the keys of the addresses in it."""
    return _KEY.sub(r"\1…", text)


class HideKeys(logging.Filter):
    """Take keys out of what is written of a request, its arguments too."""

    def filter(self, record: logging.LogRecord) -> bool:
        """Let every record through, without its keys."""
        if isinstance(record.msg, str):
            record.msg = redacted(record.msg)
        if isinstance(record.args, tuple):
            record.args = tuple(_without(value) for value in record.args)
        return True


def _without(value: object) -> object:
    return redacted(value) if isinstance(value, str) else value
