"""Every error as `application/problem+json` (RFC 9457)."""

import logging
from collections.abc import Iterator, Mapping, Sequence
from uuid import UUID

from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpRequest, HttpResponse, JsonResponse
from rest_framework import exceptions
from rest_framework.response import Response
from rest_framework.views import set_rollback

from studio.domain.refusals import (
    Conflict,
    Missing,
    NotAllowed,
    Refusal,
    TooLarge,
    Unworkable,
)

CONTENT_TYPE = "application/problem+json"

STATUS_OF: dict[type[Refusal], int] = {
    NotAllowed: 403,
    Missing: 404,
    Conflict: 409,
    TooLarge: 413,
    Unworkable: 422,
}

# Codes of the framework's own errors, with the fixed title of each.
TITLES: dict[str, str] = {
    "invalid-request": "Something in the request is not of the right form.",
    "not-signed-in": "You are not signed in.",
    "csrf-failed": "The page is out of date; load it again.",
    "not-allowed": "You may not do that.",
    "not-found": "There is no such thing here.",
    "method-not-allowed": "That cannot be done at this address.",
    "not-acceptable": "That form of answer is not to be had.",
    "unsupported-media-type": "That form of request is not read here.",
    "too-many-requests": "Too many tries; wait a little.",
    "precondition-failed": "The row changed since you read it.",
    "server-error": "Something broke here, and has been noted.",
}

logger = logging.getLogger("natch.problems")


class PreconditionFailed(exceptions.APIException):
    """The `If-Match` of a PATCH no longer holds; `current` is the row as it stands."""

    status_code = 412
    default_code = "precondition-failed"

    def __init__(self, current: Mapping[str, object]) -> None:
        super().__init__("Somebody changed it since you read it.")
        self.current = current


class SignInWrong(exceptions.AuthenticationFailed):
    default_code = "wrong-sign-in"
    default_detail = "That name and password do not belong together."


def answer(error: Exception, context: Mapping[str, object]) -> Response | None:
    """Return the problem document for an error raised by a view; None leaves it to Django (500)."""
    match error:
        case Refusal():
            problem = _of_refusal(error)
            if isinstance(error, NotAllowed):
                _note(error, context)
        case exceptions.ValidationError():
            problem = _of_shape(error)
        case PreconditionFailed():
            problem = document(412, "precondition-failed", str(error), current=error.current)
        case exceptions.APIException():
            problem = _of_framework(error)
        case Http404():
            problem = document(404, "not-found", "There is nothing at this address.")
        case PermissionDenied():
            problem = document(403, "not-allowed", "You may not do that.")
        case _:
            return None
    set_rollback()
    return _response(problem, error)


def document(status: int, code: str, detail: str, **facts: object) -> dict[str, object]:
    """Return one problem document."""
    title = facts.pop("title", None) or TITLES.get(code, "That cannot be done.")
    return {
        "type": f"/problems/{code}",
        "title": title,
        "status": status,
        "detail": detail,
        **facts,
    }


def _of_refusal(refusal: Refusal) -> dict[str, object]:
    status = next(number for kind, number in STATUS_OF.items() if isinstance(refusal, kind))
    facts = {**_beside_its_field(refusal), **refusal.facts}
    return document(status, refusal.code, refusal.detail, title=refusal.title, **facts)


def _beside_its_field(refusal: Refusal) -> Mapping[str, object]:
    """Return the error of the one field that a refusal points at, as for a wrong shape."""
    pointer = refusal.facts.get("pointer")
    if pointer is None:
        return {}
    return {"errors": [{"pointer": pointer, "code": refusal.code, "detail": refusal.detail}]}


def _note(refusal: NotAllowed, context: Mapping[str, object]) -> None:
    """Write down who was refused what, by ids: neither names nor addresses, which may hold keys."""
    view, given = context.get("view"), context.get("kwargs")
    ids = {k: v for k, v in given.items() if isinstance(v, UUID)} if isinstance(given, dict) else {}
    logger.info(
        "Refused: %s, %s to member %s by %s of %s",
        refusal.code,
        refusal.facts.get("needed", "-"),
        getattr(getattr(view, "member", None), "pk", None),
        type(view).__name__,
        {name: str(value) for name, value in ids.items()},
    )


def _of_shape(error: exceptions.ValidationError) -> dict[str, object]:
    errors = list(_pointed(error.get_full_details()))
    return document(400, "invalid-request", errors[0]["detail"], errors=errors)


def _pointed(details: object, pointer: str = "#") -> Iterator[dict[str, str]]:
    """Flatten nested field errors into JSON Pointers."""
    match details:
        case {"message": message, "code": code}:
            yield {
                "pointer": pointer,
                "code": str(code).replace("_", "-"),
                "detail": str(message),
            }
        case Mapping():
            for name, inner in details.items():
                own = pointer if name == "non_field_errors" else f"{pointer}/{name}"
                yield from _pointed(inner, own)
        case Sequence():
            is_one_field = all(isinstance(item, Mapping) and "message" in item for item in details)
            for position, inner in enumerate(details):
                yield from _pointed(inner, pointer if is_one_field else f"{pointer}/{position}")


def _of_framework(error: exceptions.APIException) -> dict[str, object]:
    code = {
        "not_authenticated": "not-signed-in",
        "authentication_failed": "not-signed-in",
        "permission_denied": "not-allowed",
        "not_found": "not-found",
        "throttled": "too-many-requests",
        "parse_error": "invalid-request",
        "method_not_allowed": "method-not-allowed",
        "not_acceptable": "not-acceptable",
        "unsupported_media_type": "unsupported-media-type",
    }.get(error.default_code, error.default_code)
    if isinstance(error, SignInWrong):
        title = "That sign-in is not known."
        return document(error.status_code, code, str(error.detail), title=title)
    return document(error.status_code, code, str(error.detail))


def _response(problem: dict[str, object], error: Exception) -> Response:
    status = problem["status"]
    assert isinstance(status, int)
    response = Response(problem, status=status, content_type=CONTENT_TYPE)
    if wait := getattr(error, "wait", None):
        response["Retry-After"] = str(max(1, round(wait)))
    if header := getattr(error, "auth_header", None):
        response["WWW-Authenticate"] = header
    return response


def page_not_found(request: HttpRequest, exception: Exception) -> HttpResponse:
    """Answer an unknown address."""
    return _plain(document(404, "not-found", "There is nothing at this address."))


def server_error(request: HttpRequest) -> HttpResponse:
    """Answer after an error of ours; Django has logged it."""
    return _plain(document(500, "server-error", "It was not your doing. Try again in a minute."))


def bad_request(request: HttpRequest, exception: Exception) -> HttpResponse:
    """Answer a request that cannot be read at all."""
    return _plain(document(400, "invalid-request", "The request cannot be read."))


def permission_denied(request: HttpRequest, exception: Exception) -> HttpResponse:
    """Answer a request that Django itself turned away."""
    return _plain(document(403, "not-allowed", "You may not do that."))


def csrf_failed(request: HttpRequest, reason: str = "") -> HttpResponse:
    """Answer a write whose page is out of date (Django's own check)."""
    return _plain(document(403, "csrf-failed", "Load the page again and repeat."))


def _plain(problem: dict[str, object]) -> HttpResponse:
    status = problem["status"]
    assert isinstance(status, int)
    return JsonResponse(problem, status=status, content_type=CONTENT_TYPE)
