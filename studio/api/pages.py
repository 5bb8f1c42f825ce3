"""Lists by pages: each page begins after the last row of the one before (keyset paging).

Unlike counting rows, this costs the same on every page, and a row added meanwhile moves none.
"""

import base64
import binascii
import json
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from django.core.exceptions import FieldDoesNotExist, ValidationError
from django.db.models import Q, QuerySet
from django.http import QueryDict
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.utils.encoders import JSONEncoder

PARAMETER = "cursor"


@dataclass(frozen=True, slots=True)
class Page:
    """Some rows of a list, and the address of those after them."""

    rows: list[Any]
    next: str | None

    def answer(self, shape: type[serializers.Serializer[Any]] | None = None) -> Response:
        """Return the page as the API gives it, each row in `shape` (as it is where None)."""
        results = shape(self.rows, many=True).data if shape else self.rows
        return Response({"results": results, "next": self.next})


def keyset(
    queryset: "QuerySet[Any, Any]",
    request: Request,
    fields: Sequence[str] = ("happened_at", "id"),
    size: int = 100,
) -> Page:
    """Return the page of `queryset` that the request's `cursor` names, the first without one.

    `fields` order the list, "-" for falling; together they must be unique and none of them empty.
    Rows may be models or dicts (`values()`). Raises a 400 when the cursor cannot be read.
    """
    after = _read(request.query_params.get(PARAMETER), queryset=queryset, fields=fields)
    if after is not None:
        queryset = queryset.filter(_beyond(fields, after))
    rows = list(queryset.order_by(*fields)[: size + 1])
    if len(rows) <= size:
        return Page(rows=rows, next=None)
    rows = rows[:size]
    query: QueryDict = request.query_params.copy()
    query[PARAMETER] = _write(rows[-1], fields)
    return Page(rows=rows, next=f"{request.path}?{query.urlencode()}")


@cache
def paged(shape: type[serializers.Serializer[Any]]) -> type[serializers.Serializer[Any]]:
    """Return the shape of a page of `shape`, for the schema."""
    name = f"{shape.__name__}Page"
    fields = {
        "__doc__": f"Some {shape.__name__} rows, and where the next ones are.",
        "results": shape(many=True),
        "next": serializers.CharField(allow_null=True, help_text="Address of the next page."),
    }
    return type(name, (serializers.Serializer,), fields)


def _beyond(fields: Sequence[str], after: Sequence[object]) -> Q:
    """Return what makes a row come later in the order than the values `after`."""
    beyond = Q()
    same = Q()
    for field, value in zip(fields, after, strict=True):
        name = field.removeprefix("-")
        towards = "lt" if field.startswith("-") else "gt"
        beyond |= same & Q(**{f"{name}__{towards}": value})
        same &= Q(**{name: value})
    return beyond


def _write(row: object, fields: Sequence[str]) -> str:
    values = [_value(row, field.removeprefix("-")) for field in fields]
    text = json.dumps(values, cls=_Exact, separators=(",", ":"))
    return base64.urlsafe_b64encode(text.encode()).decode().rstrip("=")


def _value(row: object, name: str) -> object:
    if isinstance(row, dict):
        return row[name]
    for step in name.split("__"):
        row = getattr(row, step)
    return row


def _read(
    cursor: str | None, *, queryset: "QuerySet[Any, Any]", fields: Sequence[str]
) -> list[object] | None:
    if not cursor:
        return None
    try:
        padded = cursor + "=" * (-len(cursor) % 4)
        values = json.loads(base64.urlsafe_b64decode(padded.encode()))
        if not isinstance(values, list) or len(values) != len(fields) or None in values:
            raise ValueError(cursor)
        return [_typed(queryset, name, value) for name, value in zip(fields, values, strict=True)]
    except (ValueError, TypeError, ValidationError, binascii.Error) as error:
        detail = ErrorDetail("That page cannot be found; start again.", "bad-cursor")
        raise serializers.ValidationError({PARAMETER: [detail]}) from error


def _typed(queryset: "QuerySet[Any, Any]", name: str, value: object) -> object:
    """Return the value as its column holds it; an annotation's value is taken as it is."""
    if not isinstance(value, str | int | float):
        raise TypeError(name)
    model = queryset.model
    *path, last = name.removeprefix("-").split("__")
    try:
        for step in path:
            related = model._meta.get_field(step).related_model
            if related is None or isinstance(related, str):
                return value
            model = related
        field = model._meta.get_field(last)
    except FieldDoesNotExist:
        return value
    typed: object = field.to_python(value)
    return typed


class _Exact(JSONEncoder):
    """JSON in which an instant keeps its microseconds, else rows of one millisecond go missing."""

    def default(self, obj: Any) -> Any:
        return obj.isoformat() if hasattr(obj, "isoformat") else super().default(obj)
