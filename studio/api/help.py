"""Help pages: Markdown in `studio/docs`, one style sheet, no script."""

from functools import cache
from pathlib import Path
from typing import Final

import markdown
from django.conf import settings
from django.http import FileResponse, Http404, HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils.safestring import mark_safe
from django.views.decorators.cache import cache_control
from django.views.decorators.http import require_safe

DOCS: Final = Path(__file__).resolve().parents[1] / "docs"
STYLES: Final = Path(settings.ROOT) / "frontend" / "src" / "styles"

#: The pages in the order in which they are offered.
PAGES: Final = {
    "index": "Help",
    "cautions": "Cautions",
    "drying": "Drying",
    "drying-checked": "How well the drying estimates hold",
    "kilns-and-loads": "Kilns and loads",
    "orders-and-found-ware": "Orders and found ware",
    "showing-an-order": "Showing an order to a client",
    "papers-and-test-reports": "Papers and test reports",
    "phone-and-signal": "Phone and signal",
    "climate-readings": "Climate readings",
    "sign-in-and-roles": "Sign-in and roles",
    "operating": "Operating",
    "backups": "Backups",
}


@require_safe
def page(request: HttpRequest, name: str = "index") -> HttpResponse:
    """Show one page of help."""
    if name not in PAGES or request.path == "/help/index/":
        raise Http404
    return render(
        request,
        "studio/page.html",
        {"title": PAGES[name], "text": _text(name), "pages": index(name)},
    )


@require_safe
@cache_control(max_age=3600)
def style(request: HttpRequest) -> HttpResponse:
    """Give the style sheet: the front end's colours, then what these pages add."""
    return HttpResponse(_style(), content_type="text/css; charset=utf-8")


@require_safe
@cache_control(max_age=86_400)
def face(request: HttpRequest) -> FileResponse:
    """Give the type face."""
    file = STYLES / "face" / "natch-sans.woff2"
    if not file.is_file():
        raise Http404
    return FileResponse(file.open("rb"), content_type="font/woff2")


def index(here: str) -> list[dict[str, object]]:
    """Return the pages for the line at the top, with the one shown marked."""
    return [
        {
            "title": title,
            "address": "/help/" if name == "index" else f"/help/{name}/",
            "is_here": name == here,
        }
        for name, title in PAGES.items()
    ]


@cache
def _text(name: str) -> str:
    source = (DOCS / f"{name}.md").read_text(encoding="utf-8")
    html = markdown.markdown(source, extensions=["tables", "fenced_code", "sane_lists"])
    return mark_safe(html)  # noqa: S308  (our own pages, from this repository)


@cache
def _style() -> str:
    colours = STYLES / "tokens.css"
    house = (DOCS / "house.css").read_text(encoding="utf-8")
    return (colours.read_text(encoding="utf-8") if colours.is_file() else "") + house
