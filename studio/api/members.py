"""The people of a studio, for each other."""

from typing import Any
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import members
from studio.models import Act, Member
from studio.permissions import P, Role
from studio.queries import people

from .envelopes import ActOut, ChangeIn
from .pages import keyset, paged
from .related import RowField
from .views import Given, StudioView


class MemberChangeIn(ChangeIn):
    roles = serializers.ListField(
        child=serializers.ChoiceField(list(Role)), allow_empty=False, required=False
    )
    helps = serializers.ListField(
        child=RowField(Member), required=False, max_length=100, help_text="Makers by id."
    )


class MemberOut(serializers.ModelSerializer[Member]):
    """A member as the others see them; the e-mail is for owners and for oneself."""

    email = serializers.SerializerMethodField(allow_null=True)
    helps = serializers.SerializerMethodField()
    has_left = serializers.SerializerMethodField()

    class Meta:
        model = Member
        fields = (
            "id",
            "first_name",
            "full_name",
            "initials",
            "email",
            "roles",
            "helps",
            "has_left",
        )

    def get_email(self, member: Member) -> str | None:
        view: StudioView = self.context["view"]
        may_see = P.MANAGE_MEMBERS in view.grants or member.pk == view.member.pk
        return member.email if may_see else None

    def get_helps(self, member: Member) -> list[str]:
        return sorted(str(helped.pk) for helped in member.helps.all())

    def get_has_left(self, member: Member) -> bool:
        return member.left_at is not None


class MemberChangedOut(ActOut):
    member = MemberOut()


class MemberList(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="members_list", responses=paged(MemberOut))
    def get(self, request: Request) -> Response:
        """List who is in the studio now, by first name."""
        rows = people.members(self.studio).prefetch_related("helps")
        page = keyset(rows, request, ("first_name", "id"))
        results = MemberOut(page.rows, many=True, context={"view": self}).data
        return Response({"results": results, "next": page.next})


class MemberDetail(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.MANAGE_MEMBERS}
    in_person = True

    @extend_schema(operation_id="members_read", responses=MemberOut)
    def get(self, request: Request, member_id: UUID) -> Response:
        """Show one person, also one who has left."""
        return Response(self._shown(self.find(Member, id=member_id, user__isnull=False)))

    @extend_schema(
        operation_id="members_change", request=MemberChangeIn, responses=MemberChangedOut
    )
    def patch(self, request: Request, member_id: UUID) -> Response:
        """Give somebody other roles, or other makers to help."""
        member = self.find(Member, id=member_id, user__isnull=False, left_at=None)

        def work(given: Given, act: Act) -> dict[str, object]:
            changed = members.change(
                act=act, member=member, roles=given.get("roles"), helps=given.get("helps")
            )
            return {"member": self._shown(changed)}

        return self.once(MemberChangeIn, work, status=200)

    def _shown(self, member: Member) -> dict[str, Any]:
        return dict(MemberOut(member, context={"view": self}).data)
