"""Invitations: made by an owner, taken by whoever holds the link."""

from datetime import timedelta
from typing import Any
from uuid import UUID

from django.contrib.auth import login
from django.contrib.auth.models import User
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from studio.actions import invitations
from studio.actions.invitations import NewAccount, Newcomer
from studio.models import Act, Invitation
from studio.permissions import P, Role
from studio.queries import people

from .envelopes import ActIn, ActOut
from .me import MeOut, MyStudioOut, me_of
from .pages import keyset, paged
from .views import Given, StudioView

# Long enough for a letter, short enough for a link left lying about: common practice, no source.
DAYS = 7
MOST_DAYS = 30


class InvitationIn(ActIn):
    roles = serializers.ListField(child=serializers.ChoiceField(list(Role)), allow_empty=False)
    email = serializers.EmailField(required=False, allow_blank=True)
    days = serializers.IntegerField(min_value=1, max_value=MOST_DAYS, default=DAYS)


class InvitationOut(serializers.ModelSerializer[Invitation]):
    state = serializers.SerializerMethodField()
    invited_by_id = serializers.UUIDField()
    taken_by_id = serializers.UUIDField(allow_null=True)

    class Meta:
        model = Invitation
        fields: tuple[str, ...] = (
            "id",
            "roles",
            "email",
            "state",
            "invited_by_id",
            "invited_at",
            "expires_at",
            "taken_by_id",
        )

    def get_state(self, invitation: Invitation) -> str:
        if invitation.taken_by_id is not None:
            return "taken"
        if invitation.withdrawn_at is not None:
            return "withdrawn"
        return "open" if invitation.expires_at > timezone.now() else "expired"


class InvitationMadeOut(ActOut, InvitationOut):
    """The new invitation with its link, which is shown this once."""

    token = serializers.CharField()
    link = serializers.CharField(help_text="Where its holder takes it, on this server.")

    class Meta(InvitationOut.Meta):
        fields = (*InvitationOut.Meta.fields, "token", "link", "journal_seq")


class InvitationList(StudioView):
    for_shared_phone = False
    needs = {"GET": P.MANAGE_MEMBERS, "POST": P.MANAGE_MEMBERS}
    in_person = True

    @extend_schema(operation_id="invitations_list", responses=paged(InvitationOut))
    def get(self, request: Request) -> Response:
        """List invitations, newest first."""
        rows = Invitation.objects.of(self.studio)
        return keyset(rows, request, ("-invited_at", "-id")).answer(InvitationOut)

    @extend_schema(
        operation_id="invitations_make", request=InvitationIn, responses={201: InvitationMadeOut}
    )
    def post(self, request: Request) -> Response:
        """Make a link that one person can take once."""
        return self.unkept(InvitationIn, self._invite)

    def _invite(self, given: Given, act: Act) -> dict[str, object]:
        made, token = invitations.invite(
            act=act,
            roles=given["roles"],
            email=given.get("email", ""),
            valid_for=timedelta(days=given["days"]),
        )
        return {**InvitationOut(made).data, "token": token, "link": f"/join/{token}"}


class InvitationDetail(StudioView):
    for_shared_phone = False
    needs = {"DELETE": P.MANAGE_MEMBERS}
    in_person = True

    @extend_schema(operation_id="invitations_withdraw", responses={204: None})
    def delete(self, request: Request, invitation_id: UUID) -> Response:
        """Withdraw an invitation that nobody took."""
        invitation = self.find(Invitation, id=invitation_id)
        invitations.withdraw(act=self.act({}), invitation=invitation)
        return Response(status=204)


class LinkOut(serializers.Serializer[Invitation]):
    """What the holder of a link is told before taking it."""

    studio = MyStudioOut()
    roles = serializers.ListField(child=serializers.CharField())
    expires_at = serializers.DateTimeField()


class NewcomerIn(serializers.Serializer[Any]):
    """Who takes it; a name and a password only from somebody who is not signed in."""

    username = serializers.RegexField(
        r"^[\w.@+-]+\Z", max_length=150, required=False, help_text="Letters, figures and .@+-_"
    )
    password = serializers.CharField(max_length=1000, required=False, trim_whitespace=False)
    first_name = serializers.CharField(max_length=60)
    full_name = serializers.CharField(max_length=120)
    initials = serializers.RegexField(
        r"^\w{1,4}\Z", max_length=4, help_text="One to four letters, cut beside marks."
    )

    def validate_password(self, password: str) -> str:
        try:
            validate_password(password)
        except ValidationError as error:
            raise serializers.ValidationError(error.messages[0], code="weak-password") from error
        return password

    def validate(self, given: Given) -> Given:
        if self.context["is_signed_in"]:
            return given
        for name in ("username", "password"):
            if name not in given:
                detail = "Needed from whoever is not signed in."
                raise serializers.ValidationError({name: [detail]}, code="required")
        return given


class InvitationLink(APIView):
    """Needs no studio: its holder is in none yet."""

    permission_classes = (AllowAny,)

    @extend_schema(operation_id="invitation_link_read", responses=LinkOut)
    def get(self, request: Request, token: str) -> Response:
        """Say which studio invites, and as what."""
        return Response(LinkOut(invitations.at_hand(token=token, at=timezone.now())).data)


class InvitationAcceptance(APIView):
    """Needs no studio: its holder is in none yet."""

    permission_classes = (AllowAny,)

    @extend_schema(
        operation_id="invitation_link_accept", request=NewcomerIn, responses={201: MeOut}
    )
    def post(self, request: Request, token: str) -> Response:
        """Join the studio, with the account signed in or a new one, and be signed in."""
        account = request.user if isinstance(request.user, User) else None
        shape = NewcomerIn(data=request.data, context={"is_signed_in": account is not None})
        shape.is_valid(raise_exception=True)
        given = dict(shape.validated_data)
        username, password = given.pop("username", ""), given.pop("password", "")
        newcomer = Newcomer(account=account or NewAccount(username, password), **given)
        member = invitations.accept(token=token, newcomer=newcomer, at=timezone.now())
        user = people.account_of(member)
        if account is None:
            login(request._request, user)
            request.user, request.auth = user, None
        return Response(me_of(request), status=201)
