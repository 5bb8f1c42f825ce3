"""Every endpoint of the API, found by walking the addresses."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

from django.urls import URLPattern, URLResolver, get_resolver
from drf_spectacular.generators import SchemaGenerator

from studio.domain.ids import uuid7

METHODS = ("get", "post", "put", "patch", "delete")
PARAMETER = re.compile(r"<(?:(\w+):)?(\w+)>")


@dataclass(frozen=True)
class Endpoint:
    """One method at one address."""

    route: str
    view: Any
    method: str

    def __str__(self) -> str:
        return f"{self.method.upper()} {self.route}"

    def path(self, **known: object) -> str:
        """Return an address to call: ids that are not `known` are of nothing there is."""

        def value(found: re.Match[str]) -> str:
            kind, name = found.groups()
            if name in known:
                return str(known[name])
            return str(uuid7()) if kind == "uuid" else "yard" if name == "slug" else "nothing"

        return "/" + PARAMETER.sub(value, self.route)


def all_of_them() -> list[Endpoint]:
    """Return every endpoint under `api/v1/`, of all apps."""
    return [
        Endpoint(route, view, method)
        for route, view in _views(get_resolver().url_patterns, "")
        if route.startswith("api/v1/")
        for method in METHODS
        if hasattr(view, method)
    ]


def _views(patterns: list[Any], prefix: str) -> Iterator[tuple[str, Any]]:
    for pattern in patterns:
        route = prefix + str(pattern.pattern)
        if isinstance(pattern, URLResolver):
            yield from _views(pattern.url_patterns, route)
        elif isinstance(pattern, URLPattern):
            yield route, getattr(pattern.callback, "cls", pattern.callback)


@cache
def schema() -> dict[str, Any]:
    return SchemaGenerator().get_schema(request=None, public=True)


def operation_of(endpoint: Endpoint) -> dict[str, Any]:
    """Return what the schema says of an endpoint; nothing where it is left out of the schema."""
    path = "/" + PARAMETER.sub(r"{\2}", endpoint.route)
    return schema()["paths"].get(path, {}).get(endpoint.method, {})


def fields_of(endpoint: Endpoint) -> list[str]:
    """Return the names in the body that an endpoint reads."""
    content = operation_of(endpoint).get("requestBody", {}).get("content", {})
    reference = content.get("application/json", {}).get("schema", {}).get("$ref", "")
    component = schema()["components"]["schemas"].get(reference.rpartition("/")[2], {})
    return sorted(component.get("properties", {}))


def queries_of(endpoint: Endpoint) -> list[str]:
    """Return the names in the query that an endpoint reads."""
    parameters = operation_of(endpoint).get("parameters", [])
    return [p["name"] for p in parameters if p["in"] == "query"] + ["cursor"]
