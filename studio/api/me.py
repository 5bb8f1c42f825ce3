"""Who I am, where I belong, and how I like to see things."""

from collections.abc import Mapping
from typing import Any

from django.contrib.auth.models import User
from django.middleware.csrf import get_token
from drf_spectacular.utils import extend_schema, extend_schema_field
from rest_framework import serializers
from rest_framework.permissions import BasePermission
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from studio.actions import members
from studio.models import AccessToken, Device, Member
from studio.queries import people

from .hidden import cut
from .standing import NotInPerson, standing_of
from .views import UnknownThing

LENGTHS = ("mm", "in")
MASSES = ("g", "lb")
TEMPERATURES = ("c", "f")
THEMES = ("sun", "shed", "phone")
TEXTS = (100, 125, 150, 200)


class UnitsOut(serializers.Serializer[Member]):
    length = serializers.ChoiceField(LENGTHS, source="length_unit")
    mass = serializers.ChoiceField(MASSES, source="mass_unit")
    temperature = serializers.ChoiceField(TEMPERATURES, source="temperature_unit")


class MyStudioOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    slug = serializers.CharField()
    name = serializers.CharField()
    zone = serializers.CharField()


class MyselfOut(serializers.Serializer[Member]):
    """The member as they see themselves."""

    id = serializers.UUIDField()
    first_name = serializers.CharField()
    full_name = serializers.CharField()
    initials = serializers.CharField()
    email = serializers.CharField()
    roles = serializers.ListField(child=serializers.CharField())
    grants = serializers.SerializerMethodField()
    units = UnitsOut(source="*")
    left_handed = serializers.BooleanField(source="is_left_handed")
    theme = serializers.ChoiceField(THEMES)
    text = serializers.IntegerField(source="text_percent")
    quiet_from = serializers.TimeField(allow_null=True)
    quiet_until = serializers.TimeField(allow_null=True)
    wants_email = serializers.BooleanField()
    has_pin = serializers.SerializerMethodField()

    def get_grants(self, member: Member) -> list[str]:
        return sorted(standing_of(self.context["request"], member).grants)

    def get_has_pin(self, member: Member) -> bool:
        return bool(member.pin_hash)


class MembershipOut(serializers.Serializer[Member]):
    studio = MyStudioOut()
    member = MyselfOut(source="*")


class HolderOut(serializers.Serializer[Member]):
    """Somebody to pick on a shared phone."""

    id = serializers.UUIDField()
    first_name = serializers.CharField()
    initials = serializers.CharField()
    has_pin = serializers.SerializerMethodField()

    def get_has_pin(self, member: Member) -> bool:
        return bool(member.pin_hash)


class SharedPhoneOut(serializers.Serializer[Device]):
    """The shared phone that asks, and who may pick themselves on it."""

    id = serializers.UUIDField()
    name = serializers.CharField()
    studio = MyStudioOut()
    people = serializers.SerializerMethodField()

    @extend_schema_field(HolderOut(many=True))
    def get_people(self, device: Device) -> list[dict[str, object]]:
        return [dict(HolderOut(m).data) for m in people.members(device.studio)]


class MeOut(serializers.Serializer[Any]):
    username = serializers.CharField(allow_null=True)
    memberships = MembershipOut(many=True)
    device = SharedPhoneOut(allow_null=True, help_text="Only on a shared phone.")


class UnitsIn(serializers.Serializer[Any]):
    length = serializers.ChoiceField(LENGTHS, required=False, source="length_unit")
    mass = serializers.ChoiceField(MASSES, required=False, source="mass_unit")
    temperature = serializers.ChoiceField(TEMPERATURES, required=False, source="temperature_unit")


class MeIn(serializers.Serializer[Any]):
    """What is to change about me; what is left out stays."""

    studio = serializers.SlugField(required=False, help_text="Where; everywhere when left out.")
    units = UnitsIn(required=False)
    left_handed = serializers.BooleanField(required=False, source="is_left_handed")
    theme = serializers.ChoiceField(THEMES, required=False)
    text = serializers.ChoiceField(TEXTS, required=False, source="text_percent")
    quiet_from = serializers.TimeField(required=False, allow_null=True)
    quiet_until = serializers.TimeField(required=False, allow_null=True)
    wants_email = serializers.BooleanField(required=False)
    email = serializers.EmailField(required=False, allow_blank=True)
    pin = serializers.RegexField(
        r"^(\d{4,8})?$",
        required=False,
        allow_blank=True,
        help_text="4 to 8 figures for kiln work on a shared phone; empty takes it away.",
    )


class HasCaller(BasePermission):
    """Somebody signed in, or a shared phone that nobody has picked themselves on yet."""

    def has_permission(self, request: Request, view: APIView) -> bool:
        return bool(request.user and request.user.is_authenticated) or isinstance(
            request.auth, Device
        )


class MeView(APIView):
    """Needs no studio: it says which there are."""

    permission_classes = (HasCaller,)

    @extend_schema(operation_id="me_read", responses=MeOut)
    def get(self, request: Request) -> Response:
        """Say who calls, where they belong and what they may do there."""
        get_token(request._request)  # a page kept on a phone has lost its own by now
        answer = me_of(request)
        return Response(cut(answer) if isinstance(request.auth, Device) else answer)

    @extend_schema(operation_id="me_change", request=MeIn, responses=MeOut)
    def patch(self, request: Request) -> Response:
        """Change how I like to see things, in one studio or in all of mine."""
        if request.auth is not None:
            raise NotInPerson("Sign in with your name and password to do this.")
        shape = MeIn(data=request.data)
        shape.is_valid(raise_exception=True)
        given = dict(shape.validated_data)
        slug = given.pop("studio", None)
        mine = [m for m in memberships(request) if slug is None or m.studio.slug == slug]
        if slug is not None and not mine:
            raise UnknownThing("You are in no such studio.")
        members.prefer(members=mine, choices={**given.pop("units", {}), **given})
        return Response(me_of(request))


def memberships(request: Request) -> list[Member]:
    """Return the caller's memberships; a token or a shared phone knows only its own studio."""
    mine = people.memberships(request.user) if isinstance(request.user, User) else []
    auth = request.auth
    if isinstance(auth, AccessToken | Device):
        return [m for m in mine if m.studio_id == auth.studio_id]
    return list(mine)


def me_of(request: Request) -> Mapping[str, Any]:
    """Return what `me/` answers this caller."""
    is_named = isinstance(request.user, User)
    told = {
        "username": request.user.get_username() if is_named else None,
        "memberships": memberships(request),
        "device": request.auth if isinstance(request.auth, Device) else None,
    }
    return MeOut(told, context={"request": request}).data
