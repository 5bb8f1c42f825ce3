"""What becomes of a call by somebody who has left, or on a phone that was signed off.

An act from before is kept for an owner to look at; whatever else is refused.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from io import BytesIO
from uuid import UUID

from django.core.handlers.wsgi import WSGIRequest
from django.urls import resolve
from django.utils import timezone
from django.utils.dateparse import parse_datetime
from rest_framework import exceptions
from rest_framework.request import Request

from studio.actions import held
from studio.actions.devices import DeviceRevoked
from studio.actions.leaving import HasLeft
from studio.domain.refusals import NotAllowed, Refusal
from studio.models import Device, HeldAct, Member

LARGEST_BODY = 64 * 1024


class Gone(exceptions.AuthenticationFailed):
    """Who calls was known once: what they did before may still be sent."""

    def __init__(self, device: Device, member: Member | None) -> None:
        super().__init__()
        self.device = device
        self.member = member


class DeviceSignedOff(Gone):
    """A phone that was good until it was signed off: a shared one's key, or one's own session."""

    default_code = "device-signed-off"
    default_detail = "This phone was signed off. What it had not sent goes to an owner."


class HolderHasLeft(Gone):
    """Somebody who has left is named on a shared phone."""

    default_code = "has-left"
    default_detail = "Who is named has left this studio."


class PhotoNotHeld(NotAllowed):
    """Not a word about the phone, so that what waits behind the photo is still sent."""

    code = "photo-not-held"
    title = "A photo is not kept for an owner."


class KeptForReview(Exception):  # no error: the act is kept
    """The act was kept for an owner; this is its answer."""

    def __init__(self, kept: HeldAct) -> None:
        super().__init__()
        self.answer = {"id": str(kept.pk), "held": True, "why": kept.why, "journal_seq": None}


@dataclass(frozen=True, slots=True)
class ForReview:
    """Stands for a member and a device whose held act an owner takes."""

    device: Device
    member: Member


def after_leaving(request: Request, member: Member, device: Device | None) -> Exception | None:
    """Return what answers somebody who has left; None where they are as any stranger."""
    if request.method != "POST" or device is None:
        return None
    assert member.left_at is not None
    late = HasLeft("Acts from before you left are kept for an owner.", left_at=member.left_at)
    return _kept(request, member, device, HeldAct.Why.LEFT, member.left_at) or late


def when_gone(request: Request, gone: Gone, slug: str) -> Exception:
    """Return what answers somebody who is gone, about the studio at `slug`."""
    if request.method != "POST" or gone.member is None or gone.member.studio.slug != slug:
        return gone
    if isinstance(gone, HolderHasLeft):
        return after_leaving(request, gone.member, gone.device) or gone
    assert gone.device.revoked_at is not None
    why, ended_at = HeldAct.Why.SIGNED_OFF, gone.device.revoked_at
    if gone.member.left_at is not None:
        ended_at = min(ended_at, gone.member.left_at)
    refused = DeviceRevoked("That is from after it was.", device=str(gone.device.pk))
    return _kept(request, gone.member, gone.device, why, ended_at) or refused


def sent_again(kept: HeldAct) -> Mapping[str, object] | None:
    """Carry out a held act as its member, on its device; return the problem when it is refused."""
    assert kept.member.user is not None
    body = json.dumps(kept.body).encode()
    request = WSGIRequest(
        {
            "REQUEST_METHOD": "POST",
            "PATH_INFO": kept.path,
            "CONTENT_TYPE": "application/json",
            "CONTENT_LENGTH": str(len(body)),
            "SERVER_NAME": "localhost",
            "SERVER_PORT": "80",
            "wsgi.input": BytesIO(body),
        }
    )
    # The framework's own way to say who calls; nothing that comes over the wire can set it.
    request._force_auth_user = kept.member.user  # type: ignore[attr-defined]
    request._force_auth_token = ForReview(kept.device, kept.member)  # type: ignore[attr-defined]
    found = resolve(kept.path)
    answer = found.func(request, *found.args, **found.kwargs)
    return answer.data if answer.status_code >= 400 else None


def _kept(
    request: Request, member: Member, device: Device, why: HeldAct.Why, ended_at: datetime
) -> Exception | None:
    """Keep an act from before `ended_at`; None when it is from after, or no act at all."""
    if (request.content_type or "").startswith("multipart/form-data"):
        return PhotoNotHeld("It stays on the phone; what it was taken for goes without it.")
    body = _body(request)
    act_id, happened_at = _id(body.get("id")), _moment(body.get("happened_at"))
    if act_id is None or happened_at is None or happened_at >= ended_at:
        return None
    try:
        return KeptForReview(
            held.hold(
                act_id=act_id,
                member=member,
                device=device,
                why=why,
                path=request.path,
                body=body,
                happened_at=happened_at,
                at=timezone.now(),
            )
        )
    except Refusal as refusal:
        return refusal


def _body(request: Request) -> dict[str, object]:
    if not (request.content_type or "").startswith("application/json"):
        return {}
    raw = request._request.body
    try:
        read = json.loads(raw) if len(raw) <= LARGEST_BODY else None
        # Neither database keeps half a character or an empty one.
        is_whole = "\\u0000" not in json.dumps(read, ensure_ascii=False).encode().decode()
    except (ValueError, RecursionError):
        return {}
    return read if isinstance(read, dict) and is_whole else {}


def _id(value: object) -> UUID | None:
    try:
        return UUID(str(value))
    except ValueError:
        return None


def _moment(value: object) -> datetime | None:
    try:
        moment = parse_datetime(value) if isinstance(value, str) else None
    except ValueError:
        return None
    return moment if moment is not None and moment.tzinfo is not None else None
