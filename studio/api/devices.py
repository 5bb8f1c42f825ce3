"""Phones and browsers: one's own, and the one shared in the shed."""

from datetime import datetime
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import devices
from studio.models import Act, Device
from studio.permissions import NotPermitted, P, Scoped
from studio.queries import people

from .authentication import SESSION_DEVICE
from .envelopes import ActIn, ActOut, ChangeIn
from .pages import keyset, paged
from .views import Given, StudioView


class DeviceIn(ActIn):
    """The id is the device's own; from then on it goes into `X-Natch-Device`."""

    name = serializers.CharField(max_length=80)
    is_shared = serializers.BooleanField(
        default=False, help_text="A phone for everybody, made by an owner; its key is shown once."
    )


class DeviceChangeIn(ChangeIn):
    name = serializers.CharField(max_length=80, required=False)
    is_locked = serializers.ChoiceField(
        [False], required=False, help_text="Takes off the lock of too many wrong PINs."
    )


class DeviceOut(serializers.ModelSerializer[Device]):
    member_id = serializers.UUIDField(allow_null=True)
    is_locked = serializers.SerializerMethodField()

    class Meta:
        model = Device
        fields = (
            "id",
            "name",
            "member_id",
            "is_shared",
            "is_locked",
            "added_at",
            "seen_at",
            "revoked_at",
        )

    def get_is_locked(self, device: Device) -> bool:
        return device.wrong_pins >= devices.MOST_WRONG_PINS


class DeviceChangedOut(ActOut):
    device = DeviceOut()
    key = serializers.CharField(
        required=False, help_text="Of a new shared phone: `Authorization: Device <key>`."
    )


class DeviceList(StudioView):
    needs = {
        "GET": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS),
        "POST": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS),
    }
    in_person = True

    @extend_schema(operation_id="devices_list", responses=paged(DeviceOut))
    def get(self, request: Request) -> Response:
        """List my devices; for an owner, everybody's."""
        rows = people.devices(self.studio, of=None if self.reaches_any else self.member)
        return keyset(rows, request, ("added_at", "id")).answer(DeviceOut)

    @extend_schema(operation_id="devices_make", request=DeviceIn, responses={201: DeviceChangedOut})
    def post(self, request: Request) -> Response:
        """Register this device as mine; an owner may make a shared phone instead."""
        given = self.given(DeviceIn)
        self.is_shared = given["is_shared"]
        if self.is_shared:
            if not self.reaches_any:
                raise NotPermitted("Ask an owner for a shared phone.", needed=P.MANAGE_MEMBERS)
            return self.unkept(DeviceIn, self._share)
        response = self._known(given["id"]) or self.once(DeviceIn, self._register)
        request._request.session[SESSION_DEVICE] = str(given["id"])
        return response

    def device(self, now: datetime) -> Device:
        """Return a device not kept: the one being made is not known yet, and is what counts."""
        if self.is_shared:
            return super().device(now)
        return Device(studio=self.studio, member=self.member, added_at=now)

    def _known(self, device_id: UUID) -> Response | None:
        """Answer a device that registers again, as after signing in anew."""
        device = people.devices(self.studio, of=self.member).filter(pk=device_id).first()
        if device is None:
            return None
        devices.check_open(device)
        return Response({"id": str(device.pk), "device": DeviceOut(device).data})

    def _register(self, given: Given, act: Act) -> dict[str, object]:
        return {"device": DeviceOut(devices.register(act=act, name=given["name"])).data}

    def _share(self, given: Given, act: Act) -> dict[str, object]:
        device, key = devices.share(act=act, name=given["name"])
        return {"device": DeviceOut(device).data, "key": key}


class DeviceDetail(StudioView):
    needs = {
        "GET": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS),
        "PATCH": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS),
        "DELETE": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS),
    }
    in_person = True

    @extend_schema(operation_id="devices_read", responses=DeviceOut)
    def get(self, request: Request, device_id: UUID) -> Response:
        """Show one device."""
        return Response(DeviceOut(self.own(Device, id=device_id)).data)

    @extend_schema(
        operation_id="devices_change", request=DeviceChangeIn, responses=DeviceChangedOut
    )
    def patch(self, request: Request, device_id: UUID) -> Response:
        """Name a device anew, or unlock it."""
        device = self.own(Device, id=device_id, revoked_at=None)

        def work(given: Given, act: Act) -> dict[str, object]:
            changed = devices.change(
                act=act, device=device, name=given.get("name"), unlock="is_locked" in given
            )
            return {"device": DeviceOut(changed).data}

        return self.once(DeviceChangeIn, work, status=200)

    @extend_schema(operation_id="devices_revoke", responses={204: None})
    def delete(self, request: Request, device_id: UUID) -> Response:
        """Sign a device off for good: its session ends, its acts stay."""
        devices.revoke(act=self.act({}), device=self.own(Device, id=device_id))
        return Response(status=204)
