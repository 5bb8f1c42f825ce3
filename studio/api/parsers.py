"""Reading what anybody sends: JSON, and forms with a photo in them."""

from collections.abc import Mapping
from typing import IO, Any, Final

import orjson
from rest_framework import parsers
from rest_framework.exceptions import ParseError

from studio.domain import photos

# What a form with a photo holds beside it, generously.
FIELDS_BYTES: Final = 64 * 1024
# How much of a photo that is too large is heard out before the answer.
DRAINED_BYTES: Final = 64 * 1024 * 1024
CHUNK_BYTES: Final = 64 * 1024


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


class PhotoParser(parsers.MultiPartParser):
    """A form with a photo in it, whose length is looked at before any of it is kept."""

    def parse(
        self,
        stream: IO[bytes],
        media_type: str | None = None,
        parser_context: Mapping[str, Any] | None = None,
    ) -> parsers.DataAndFiles:
        length = int(((parser_context or {})["request"].META.get("CONTENT_LENGTH")) or 0)
        if length > photos.BYTES_MOST + FIELDS_BYTES:
            _drain(stream, min(length, DRAINED_BYTES))
            raise photos.too_many_bytes(length)
        return super().parse(stream, media_type, parser_context)


def _drain(stream: IO[bytes], count: int) -> None:
    """Read on to the end: a browser that is cut off while it sends never sees the answer."""
    while count > 0 and (chunk := stream.read(min(count, CHUNK_BYTES))):
        count -= len(chunk)
