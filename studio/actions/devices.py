"""The phones, browsers and scripts that acts are written on."""

from dataclasses import replace
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID

from django.contrib.auth.hashers import check_password
from django.db import transaction
from django.db.models import F

from studio.domain.refusals import Conflict, Missing, NotAllowed
from studio.models import Act, Device, Member

from . import journal, keys

SEEN_EVERY: Final = timedelta(minutes=5)
MOST_WRONG_PINS: Final = 5


class DeviceUnknown(Missing):
    code = "device-unknown"
    title = "That device is not known here."


class DeviceRevoked(NotAllowed):
    code = "device-revoked"
    title = "That device was signed off for good."


class DeviceTaken(Conflict):
    code = "device-taken"
    title = "That device id is taken."


class DeviceLocked(NotAllowed):
    code = "device-locked"
    title = "This phone is locked after too many wrong PINs."


class PinNotSet(NotAllowed):
    code = "pin-not-set"
    title = "You have no PIN yet."


class PinWrong(NotAllowed):
    code = "pin-wrong"
    title = "That PIN is not yours."


def browser_of(*, member: Member, at: datetime) -> Device:
    """Return the device that stands for a browser which named none."""
    device = Device.objects.filter(member=member, name="browser", revoked_at=None).first()
    if device is None:
        device = Device.objects.create(
            studio=member.studio, member=member, name="browser", added_at=at, seen_at=at
        )
    return device


def seen(*, member: Member, device_id: UUID, at: datetime) -> Device:
    """Return the member's device of that id, noting that it was heard.

    Raises `DeviceUnknown` and `DeviceRevoked`.
    """
    device = Device.objects.filter(studio=member.studio, pk=device_id, is_shared=False).first()
    if device is None or device.member_id != member.pk:
        raise DeviceUnknown("Register the device first.", device=str(device_id))
    check_open(device)
    _heard(device, at)
    return device


def named(device_id: str | None, *, of: Member) -> Device | None:
    """Return the member's own device that a call names, as far as it is known."""
    try:
        wanted = UUID(device_id or "")
    except ValueError:
        return None
    return Device.objects.filter(member=of, pk=wanted).first()


def signed_off(*, key_hash: str) -> Device | None:
    """Return the shared phone of that key which an owner has signed off."""
    return Device.objects.filter(
        key_hash=key_hash, is_shared=True, revoked_at__isnull=False
    ).first()


def check_open(device: Device) -> None:
    """Raise `DeviceRevoked` when the device was signed off."""
    if device.revoked_at is not None:
        raise DeviceRevoked("Register this phone anew, with another id.", device=str(device.pk))


def shared(*, key_hash: str, at: datetime) -> Device | None:
    """Return the shared phone of that key, noting that it was heard. Raises `DeviceLocked`."""
    device = (
        Device.objects.filter(key_hash=key_hash, is_shared=True, revoked_at=None)
        .select_related("studio")
        .first()
    )
    if device is None:
        return None
    if device.wrong_pins >= MOST_WRONG_PINS:
        raise DeviceLocked("An owner can unlock it.", device=str(device.pk))
    _heard(device, at)
    return device


def prove(*, device: Device, member: Member, pin: str) -> None:
    """Check the PIN that came with an act from a shared phone.

    A try is counted before it is checked, so that many at once get no more than their number.
    Raises `PinNotSet`, `PinWrong` and `DeviceLocked`.
    """
    if not member.pin_hash:
        raise PinNotSet("Set one on your own phone first.", member=str(member.pk))
    counted = Device.objects.filter(pk=device.pk, wrong_pins__lt=MOST_WRONG_PINS).update(
        wrong_pins=F("wrong_pins") + 1
    )
    if not counted:
        raise DeviceLocked("An owner can unlock it.", device=str(device.pk))
    if not check_password(pin, member.pin_hash):
        device.refresh_from_db(fields=["wrong_pins"])
        left = MOST_WRONG_PINS - device.wrong_pins
        raise PinWrong(f"{left} tries left before this phone locks.", tries_left=left)
    Device.objects.filter(pk=device.pk).update(wrong_pins=0)


@transaction.atomic
def register(*, act: Act, name: str) -> Device:
    """Make the member's own device, named by the act's id; the act counts as written on it.

    Raises `DeviceTaken`.
    """
    if Device.objects.filter(pk=act.id).exists():
        raise DeviceTaken("Make another id for this device.", device=str(act.id))
    device = Device.objects.create(
        id=act.id,
        studio=act.studio,
        member=act.member,
        name=name,
        added_at=act.written_at,
        seen_at=act.written_at,
    )
    subjects = [("device", device.pk)]
    journal.write(act=replace(act, device=device), verb="registered_device", subjects=subjects)
    return device


@transaction.atomic
def share(*, act: Act, name: str) -> tuple[Device, str]:
    """Make a phone that many people use, and its key; each act on it names who holds it.

    Raises `KeyShownAlready`.
    """
    keys.claim(act)
    key = keys.make("nd_")
    device = Device.objects.create(
        id=act.id,
        studio=act.studio,
        name=name,
        is_shared=True,
        key_hash=keys.hashed(key),
        added_at=act.written_at,
    )
    journal.write(act=act, verb="shared_device", subjects=[("device", device.pk)])
    return device, key


@transaction.atomic
def change(*, act: Act, device: Device, name: str | None, unlock: bool) -> Device:
    """Name the device anew, or take off the lock of too many wrong PINs."""
    if name is not None:
        device.name = name
    if unlock:
        device.wrong_pins = 0
    device.save(update_fields=["name", "wrong_pins"])
    facts = {"is_unlocked": unlock, "is_renamed": name is not None}
    journal.write(act=act, verb="changed_device", subjects=[("device", device.pk)], facts=facts)
    return device


@transaction.atomic
def revoke(*, act: Act, device: Device) -> None:
    """Sign the device off for good; doing it twice changes nothing."""
    if device.revoked_at is not None:
        return
    device.revoked_at = act.written_at
    device.save(update_fields=["revoked_at"])
    journal.write(act=act, verb="revoked_device", subjects=[("device", device.pk)])


def _heard(device: Device, at: datetime) -> None:
    if device.seen_at is None or at - device.seen_at > SEEN_EVERY:
        Device.objects.filter(pk=device.pk).update(seen_at=at)
