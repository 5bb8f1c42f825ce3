"""The phones, browsers and scripts that acts are written on."""

from datetime import datetime, timedelta
from uuid import UUID

from studio.domain.refusals import Missing, NotAllowed
from studio.models import Device, Member

SEEN_EVERY = timedelta(minutes=5)


class DeviceUnknown(Missing):
    code = "device-unknown"
    title = "That device is not known here."


class DeviceRevoked(NotAllowed):
    code = "device-revoked"
    title = "That device was signed off for good."


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
    device = Device.objects.filter(studio=member.studio, pk=device_id).first()
    if device is None or not (device.is_shared or device.member_id == member.pk):
        raise DeviceUnknown("Register the device first.", device=str(device_id))
    if device.revoked_at is not None:
        raise DeviceRevoked("An owner signed it off.", device=str(device_id))
    if device.seen_at is None or at - device.seen_at > SEEN_EVERY:
        Device.objects.filter(pk=device.pk).update(seen_at=at)
    return device
