"""Named keys for scripts and sensors."""

from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import tokens
from studio.models import AccessToken, Act
from studio.permissions import P, Permission, Scoped
from studio.queries import people

from .envelopes import ActIn, ActOut
from .pages import keyset, paged
from .views import Given, StudioView


class TokenIn(ActIn):
    name = serializers.CharField(max_length=80)
    grants = serializers.ListField(
        child=serializers.ChoiceField(list(Permission)),
        allow_empty=False,
        help_text="Some of your own; a sensor needs `record_climate` only.",
    )


class TokenOut(serializers.ModelSerializer[AccessToken]):
    member_id = serializers.UUIDField()
    device_id = serializers.UUIDField()

    class Meta:
        model = AccessToken
        fields = (
            "id",
            "name",
            "prefix",
            "grants",
            "member_id",
            "device_id",
            "made_at",
            "used_at",
            "revoked_at",
        )


class TokenMadeOut(ActOut):
    token = TokenOut()
    key = serializers.CharField(help_text="`Authorization: Token <key>`; shown this once.")


class TokenList(StudioView):
    for_shared_phone = False
    needs = {"GET": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS), "POST": P.SEE_STUDIO}
    in_person = True

    @extend_schema(operation_id="tokens_list", responses=paged(TokenOut))
    def get(self, request: Request) -> Response:
        """List my tokens; for an owner, everybody's."""
        rows = people.tokens(self.studio, of=None if self.reaches_any else self.member)
        return keyset(rows, request, ("made_at", "id")).answer(TokenOut)

    @extend_schema(operation_id="tokens_make", request=TokenIn, responses={201: TokenMadeOut})
    def post(self, request: Request) -> Response:
        """Make a token that can do some of what I can; its key is shown this once."""
        return self.unkept(TokenIn, self._make)

    def _make(self, given: Given, act: Act) -> dict[str, object]:
        token, key = tokens.make(
            act=act,
            name=given["name"],
            grants=[Permission(name) for name in given["grants"]],
            held=self.grants,
        )
        return {"token": TokenOut(token).data, "key": key}


class TokenDetail(StudioView):
    for_shared_phone = False
    needs = {"DELETE": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_MEMBERS)}
    in_person = True

    @extend_schema(operation_id="tokens_revoke", responses={204: None})
    def delete(self, request: Request, token_id: UUID) -> Response:
        """Revoke a token; what was written with it stays."""
        tokens.revoke(act=self.act({}), token=self.own(AccessToken, id=token_id))
        return Response(status=204)
