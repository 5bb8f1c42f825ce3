"""Reading JSON from anybody."""

from collections.abc import Mapping
from typing import IO, Any

import orjson
from rest_framework import parsers
from rest_framework.exceptions import ParseError


class JSONParser(parsers.JSONParser):
    """JSON as RFC 8259 has it.

    Python's own reader takes NaN, halves of characters that cannot be written again, and nesting
    until the stack is full; this one refuses all three.
    """

    def parse(
        self,
        stream: IO[bytes],
        media_type: str | None = None,
        parser_context: Mapping[str, Any] | None = None,
    ) -> dict[str, Any]:
        try:
            read: dict[str, Any] = orjson.loads(stream.read())
        except orjson.JSONDecodeError as error:
            raise ParseError(f"That is not JSON: {error}") from error
        return read
