"""The pages behind a link: plain HTML, no script, nothing that was not chosen to be shown.

A form here is not guarded by a cookie: without a referrer the browser names no origin, which the
usual check refuses. Whoever can post it knows the link already; the form's own token, made for one
question of one link, says that it was that page which asked.
"""

from collections.abc import Callable
from functools import wraps
from uuid import UUID

from django.core import signing
from django.http import HttpRequest, HttpResponse, HttpResponseBase, HttpResponseRedirect
from django.template.loader import render_to_string
from django.utils import timezone
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_POST, require_safe
from rest_framework.exceptions import Throttled

from firings.actions import shares
from firings.actions.shares import LinkUnknown
from firings.models import Share
from firings.queries.client_view import Shown, copy_of, signed_papers, view_of
from firings.queries.shares import shown_photos
from studio.api.photos import picture
from studio.domain.refusals import Refusal
from studio.domain.text import clean_note
from studio.models import PhotoSize

from .link_guard import guarded, hushed

WORDS_MOST = 500
Page = Callable[..., HttpResponseBase]


def _behind_link(page: Page) -> Page:
    """Give a page what every link has: the same "not here" whatever the reason, and its headers."""

    @wraps(page)
    def looked_at(request: HttpRequest, **named: object) -> HttpResponseBase:
        try:
            with guarded(request):
                return hushed(page(request, **named))
        except LinkUnknown:
            return hushed(HttpResponse(render_to_string("studio/client_gone.html"), status=404))
        except Throttled as slow:
            answer = HttpResponse(render_to_string("studio/client_wait.html"), status=429)
            answer["Retry-After"] = str(max(1, round(getattr(slow, "wait", None) or 1)))
            return hushed(answer)

    return looked_at


@require_safe
@_behind_link
def shown(request: HttpRequest, token: str) -> HttpResponse:
    """Show what was chosen of an order."""
    share = shares.at_hand(key=token, at=timezone.now())
    if request.method == "GET" and not request.user.is_authenticated:
        shares.opened(share=share, at=timezone.now())
    return HttpResponse(html(share, base=f"/c/{token}"))


@csrf_exempt
@require_POST
@_behind_link
def answered(request: HttpRequest, token: str) -> HttpResponse:
    """Take a yes or a no; what was typed is shown again where it is not taken."""
    share = shares.at_hand(key=token, at=timezone.now())
    approval_id = _asked(share, request.POST.get("form", ""))
    said, typed = request.POST.get("answer", ""), request.POST.get("words", "")
    try:
        words = clean_note(typed, most=WORDS_MOST)
        if said not in ("yes", "no"):
            return HttpResponse(
                html(share, base=f"/c/{token}", wrong="Choose yes or no.", typed=typed), status=400
            )
        shares.answer(
            share=share, approval_id=approval_id, answer=said, words=words, at=timezone.now()
        )
    except LinkUnknown:
        raise
    except Refusal as refusal:
        wrong = f"{refusal.title} {refusal.detail}"
        return HttpResponse(html(share, base=f"/c/{token}", wrong=wrong, typed=typed), status=409)
    return HttpResponseRedirect(f"/c/{token}", status=303)


@require_safe
@_behind_link
def photo(
    request: HttpRequest, token: str, photo_id: UUID, size: PhotoSize = PhotoSize.IMAGE
) -> HttpResponse:
    """Give a photo that was chosen; any other is not here."""
    share = shares.at_hand(key=token, at=timezone.now())
    found = next((one for one in shown_photos(share) if one.pk == photo_id), None)
    if found is None:
        raise LinkUnknown("It is not shown by this link.")
    return picture(found, size)


@require_safe
@_behind_link
def history(request: HttpRequest, token: str) -> HttpResponse:
    """Give the history as it was kept, to the letter, so that its digest can be checked."""
    body = copy_of(shares.at_hand(key=token, at=timezone.now()))
    if body is None:
        raise LinkUnknown("It is not shown by this link.")
    return HttpResponse(body, content_type="application/json")


@require_safe
@_behind_link
def papers(request: HttpRequest, token: str) -> HttpResponse:
    """Give the papers that were signed last, byte for byte."""
    copy = signed_papers(shares.at_hand(key=token, at=timezone.now()))
    if copy is None:
        raise LinkUnknown("They are not shown by this link.")
    return HttpResponse(bytes(copy.body), content_type=copy.media_type)


@csrf_exempt
@_behind_link
def nothing(request: HttpRequest, **named: object) -> HttpResponse:
    """Answer any other address under a link as one that is not there."""
    raise LinkUnknown("There is nothing there.")


def html(
    share: Share,
    *,
    base: str,
    wrong: str = "",
    typed: str = "",
    photo_base: str | None = None,
) -> str:
    """Return the page of a link; in a preview its photos are found under `photo_base`."""
    view: Shown = view_of(share, at=timezone.now())
    for asked in view.get("approvals", ()):
        asked["form"] = _signer(share).sign(asked["id"])
    for one in view.get("photos", ()):
        one["at"] = f"{photo_base or base}/photos/{one['id']}"
    given = {"view": view, "base": base, "wrong": wrong, "typed": typed}
    return render_to_string("studio/client.html", given)


def _asked(share: Share, form: str) -> UUID:
    """Return the approval whose form this is. Raises `LinkUnknown`."""
    try:
        return UUID(_signer(share).unsign(form))
    except (signing.BadSignature, ValueError) as error:
        raise LinkUnknown("That is no form of this page.") from error


def _signer(share: Share) -> signing.Signer:
    return signing.Signer(salt=f"link {share.pk}")
