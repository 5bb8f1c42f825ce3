"""The OpenAPI document of everything under /api/v1/, and a page to read it on."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe
from drf_spectacular.extensions import OpenApiAuthenticationExtension
from drf_spectacular.generators import SchemaGenerator
from drf_spectacular.views import SpectacularJSONAPIView
from rest_framework.permissions import AllowAny

from .help import index as help_index

METHODS = ("get", "post", "patch", "put", "delete")
BASE = "/api/v1/"
STUDIO = "/api/v1/studios/{slug}/"
TIME_OF_DAY = r"^\d{2}:\d{2}(:\d{2}(\.\d{1,6})?)?$"

PROBLEM: dict[str, Any] = {
    "type": "object",
    "description": "RFC 9457: what went wrong, and what to do about it.",
    "properties": {
        "type": {"type": "string", "description": "/problems/ and the code of the problem."},
        "title": {"type": "string"},
        "status": {"type": "integer"},
        "detail": {"type": "string"},
        "errors": {
            "type": "array",
            "description": "Where the request has the wrong form (400).",
            "items": {
                "type": "object",
                "properties": {
                    "pointer": {"type": "string", "description": "JSON Pointer, as #/wall_mm."},
                    "code": {"type": "string"},
                    "detail": {"type": "string"},
                },
                "required": ["pointer", "code", "detail"],
            },
        },
    },
    "required": ["type", "title", "status", "detail"],
    "additionalProperties": True,
}


class TokenScheme(OpenApiAuthenticationExtension):
    """A script's or a sensor's key."""

    target_class = "studio.api.authentication.TokenAuthentication"
    name = "token"

    def get_security_definition(self, auto_schema: Any) -> dict[str, str]:
        return {
            "type": "apiKey",
            "in": "header",
            "name": "Authorization",
            "description": "`Token` and the key, as in `Authorization: Token …`.",
        }


class DeviceScheme(OpenApiAuthenticationExtension):
    """A shared phone, which names who holds it in `X-Natch-Member`."""

    target_class = "studio.api.authentication.DeviceAuthentication"
    name = "device"

    def get_security_definition(self, auto_schema: Any) -> dict[str, str]:
        return {
            "type": "apiKey",
            "in": "header",
            "name": "Authorization",
            "description": "`Device` and the phone's key; `X-Natch-Member` names who holds it.",
        }


class SessionScheme(OpenApiAuthenticationExtension):
    """A browser that signed in; writes carry `X-CSRFToken` too."""

    target_class = "studio.api.authentication.SessionAuthentication"
    name = "session"

    def get_security_definition(self, auto_schema: Any) -> dict[str, str]:
        return {"type": "apiKey", "in": "cookie", "name": "sessionid"}


class SchemaView(SpectacularJSONAPIView):
    """The OpenAPI 3.1 document."""

    permission_classes = (AllowAny,)


def tell_plain_times(result: dict[str, Any], **_: object) -> dict[str, Any]:
    """Say of times of day what they are: of the studio's clock, so without the offset of `time`."""
    for part in _parts(result):
        if part.get("type") in ("string", ["string", "null"]) and part.get("format") == "time":
            del part["format"]
            part["pattern"] = TIME_OF_DAY
    return result


def _parts(found: object) -> Iterator[dict[str, Any]]:
    """Yield every object of a document."""
    if isinstance(found, dict):
        yield found
        for inner in list(found.values()):
            yield from _parts(inner)
    elif isinstance(found, list):
        for inner in found:
            yield from _parts(inner)


def add_problems(result: dict[str, Any], **_: object) -> dict[str, Any]:
    """Say once for every call how errors look."""
    result.setdefault("components", {}).setdefault("schemas", {})["Problem"] = PROBLEM
    answer = {
        "description": "What went wrong.",
        "content": {
            "application/problem+json": {"schema": {"$ref": "#/components/schemas/Problem"}}
        },
    }
    for operations in result["paths"].values():
        for method in METHODS:
            if method in operations:
                operations[method]["responses"]["default"] = answer
    return result


@require_safe
def docs(request: HttpRequest) -> HttpResponse:
    """Show every call on one page, without a script."""
    shown = {"title": "Every call", "groups": _groups(), "pages": help_index("calls")}
    return render(request, "studio/calls.html", shown)


@cache
def _groups() -> list[dict[str, Any]]:
    """Return the calls by their first word, in the order of the alphabet."""
    document = SchemaGenerator().get_schema(request=None, public=True)
    shapes = document.get("components", {}).get("schemas", {})
    groups: defaultdict[str, list[dict[str, Any]]] = defaultdict(list)
    for path, operations in sorted(document["paths"].items()):
        word = path.removeprefix(STUDIO).removeprefix(BASE).partition("/")[0]
        for method in METHODS:
            if method in operations:
                groups[word].append(_call(path, method, operations[method], shapes))
    return [{"word": word, "calls": calls} for word, calls in sorted(groups.items())]


def _call(
    path: str, method: str, operation: Mapping[str, Any], shapes: Mapping[str, Any]
) -> dict[str, Any]:
    queries = [each for each in operation.get("parameters", ()) if each["in"] == "query"]
    return {
        "short": path.replace(STUDIO, "S/"),
        "method": method.upper(),
        "says": operation.get("description", ""),
        "queries": [{**_kind(each["schema"]), **_said(each)} for each in queries],
        "takes": _fields(operation.get("requestBody", {}), shapes),
        "answers": _answers(operation["responses"], shapes),
    }


def _answers(responses: Mapping[str, Any], shapes: Mapping[str, Any]) -> list[dict[str, Any]]:
    return [
        {"status": status, "fields": _fields(response, shapes)}
        for status, response in responses.items()
        if status != "default"
    ]


def _fields(body: Mapping[str, Any], shapes: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Return the fields of a body; where it may be one of several shapes, those of all."""
    content = body.get("content", {}).get("application/json", {}).get("schema", {})
    found: dict[str, dict[str, Any]] = {}
    for choice in content.get("oneOf", [content]):
        shape = shapes.get(choice.get("$ref", "").rpartition("/")[2], choice)
        if "oneOf" in shape:
            found |= {row["name"]: row for row in _fields(_body(shape), shapes)}
        needed = set(shape.get("required", ()))
        for name, field in shape.get("properties", {}).items():
            found[name] = {"name": name, "is_needed": name in needed, **_kind(field)}
    return list(found.values())


def _body(shape: Mapping[str, Any]) -> dict[str, Any]:
    return {"content": {"application/json": {"schema": shape}}}


def _said(parameter: Mapping[str, Any]) -> dict[str, str]:
    return {"name": parameter["name"], "says": parameter.get("description", "")}


def _kind(field: Mapping[str, Any]) -> dict[str, str]:
    """Return a field's type and words as the page shows them."""
    ref = field.get("$ref") or next((one.get("$ref") for one in field.get("allOf", ())), None)
    kind = ref.rpartition("/")[2] if ref else field.get("format") or field.get("type", "")
    if kind == "array":
        inner = field.get("items", {})
        kind = f"list of {(inner.get('$ref') or inner.get('type', 'anything')).rpartition('/')[2]}"
    if isinstance(kind, list):
        kind = " or ".join(kind)
    if "enum" in field:
        kind = " | ".join(str(one) for one in field["enum"] if one is not None)
    return {"kind": str(kind), "says": field.get("description", "")}
