"""The few answers that belong to no app: am I up, am I ready, and the front end's one page."""

from django.conf import settings
from django.db import DatabaseError, connection
from django.http import HttpRequest, HttpResponse
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import ensure_csrf_cookie
from django.views.decorators.http import require_safe


@require_safe
@never_cache
def healthz(request: HttpRequest) -> HttpResponse:
    """Say that this process answers."""
    return HttpResponse("up\n", content_type="text/plain")


@require_safe
@never_cache
def readyz(request: HttpRequest) -> HttpResponse:
    """Say whether the database answers and the front end has been built."""
    try:
        with connection.cursor() as cursor:
            cursor.execute("SELECT 1")
    except DatabaseError:
        return HttpResponse("the database does not answer\n", status=503, content_type="text/plain")
    if not (settings.FRONTEND_DIST / "index.html").is_file():
        return HttpResponse("the front end is not built\n", status=503, content_type="text/plain")
    return HttpResponse("ready\n", content_type="text/plain")


@require_safe
def robots(request: HttpRequest) -> HttpResponse:
    """Keep searching programs out: links to clients are theirs, and the rest is behind sign-in."""
    text = "User-agent: *\nDisallow: /c/\nDisallow: /api/\n"
    return HttpResponse(text, content_type="text/plain")


@require_safe
@never_cache
@ensure_csrf_cookie
def front_end(request: HttpRequest) -> HttpResponse:
    """Give the one page that the front end starts from, whatever its own address."""
    page = settings.FRONTEND_DIST / "index.html"
    try:
        return HttpResponse(page.read_bytes())
    except FileNotFoundError:
        return HttpResponse(
            "The front end is not built; `python3 manage.py up` builds it.\n",
            status=503,
            content_type="text/plain; charset=utf-8",
        )
