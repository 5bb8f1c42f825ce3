"""Reading JSON from anybody."""

from collections.abc import Mapping
from typing import IO, Any

from rest_framework import parsers
from rest_framework.exceptions import ParseError


class JSONParser(parsers.JSONParser):
    """JSON; what is nested beyond reason is as unreadable as what is no JSON."""

    def parse(
        self,
        stream: IO[bytes],
        media_type: str | None = None,
        parser_context: Mapping[str, Any] | None = None,
    ) -> dict[str, Any]:
        try:
            return super().parse(stream, media_type, parser_context)
        except RecursionError as error:
            raise ParseError("That is nested too deep.") from error
