"""The base of every endpoint of a studio: tenant, permission, input, act."""

import json
from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any, ClassVar, TypeVar
from uuid import UUID

from django.http import HttpRequest, HttpResponseBase
from django.utils import timezone
from rest_framework import exceptions, serializers
from rest_framework.permissions import IsAuthenticated
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.utils.encoders import JSONEncoder
from rest_framework.views import APIView

from studio.actions import devices, replays
from studio.domain.ids import uuid7
from studio.domain.refusals import Missing
from studio.models import AccessToken, Act, Device, JournalEntry, Member, Studio, StudioOwned
from studio.permissions import Need, NotPermitted, Permission, Scoped, grants_of, reaches_any

from .envelopes import FUTURE_MOST, ActIn, digest_of
from .problems import PreconditionFailed

Row = TypeVar("Row", bound=StudioOwned)
Given = dict[str, Any]
Work = Callable[[Given, Act], Mapping[str, object]]


class UnknownThing(Missing):
    code = "unknown-thing"
    title = "There is no such thing in this studio."


class StudioView(APIView):
    """An endpoint under /studios/{slug}/: strangers get 404, members what their role includes."""

    permission_classes = (IsAuthenticated,)
    needs: ClassVar[dict[str, Need]] = {}

    studio: Studio
    member: Member
    grants: frozenset[Permission]

    def dispatch(self, request: HttpRequest, *args: object, **kwargs: object) -> HttpResponseBase:
        self.slug = str(kwargs.pop("slug"))
        return super().dispatch(request, *args, **kwargs)

    def initial(self, request: Request, *args: object, **kwargs: object) -> None:
        super().initial(request, *args, **kwargs)
        self.member = self._member(request)
        self.studio = self.member.studio
        self.grants = self._grants(request)
        need = self.needs.get(str(request.method))
        if need is None:
            raise exceptions.MethodNotAllowed(str(request.method))
        self._check(need)

    def find(self, model: type[Row], **lookup: object) -> Row:
        """Return one row of this studio. Raises `UnknownThing`."""
        row = model.objects.of(self.studio).filter(**lookup).first()
        if row is None:
            raise UnknownThing(f"No such {model._meta.verbose_name} here.")
        assert isinstance(row, model)
        return row

    def own(self, model: type[Row], **lookup: object) -> Row:
        """Return one row of this studio that the member may do this to.

        Raises `UnknownThing` and `NotPermitted`.
        """
        row = self.find(model, **lookup)
        self.check_reach(row)
        return row

    def check_reach(self, row: StudioOwned) -> None:
        """Raise `NotPermitted` when the thing is somebody else's and the role does not reach it."""
        need = self.needs[str(self.request.method)]
        if not isinstance(need, Scoped) or self.reaches_any or row.belongs_to(self.member):
            return
        needed = need.any or need.own
        raise NotPermitted("It is somebody else's.", needed=str(needed))

    @property
    def reaches_any(self) -> bool:
        need = self.needs[str(self.request.method)]
        return isinstance(need, Scoped) and reaches_any(
            need, roles=self.member.roles, grants=self.grants
        )

    def given(self, shape: type[serializers.Serializer[Any]], data: object = None) -> Given:
        """Return the request's body (or `data`) in the given shape, or answer 400 with pointers."""
        self.as_typed: dict[str, str] = {}
        serializer = shape(
            data=self.request.data if data is None else data,
            context={"request": self.request, "view": self, "as_typed": self.as_typed},
        )
        serializer.is_valid(raise_exception=True)
        return dict(serializer.validated_data)

    def once(self, shape: type[ActIn], work: Work, *, status: int = 201) -> Response:
        """Carry out an act: read it, do it once, keep the answer, add its journal number."""
        given = self.given(shape)
        act = self.act(given)
        self._check_key(act)

        def carried_out() -> replays.Answer:
            answer = {"id": str(act.id), **work(given, act)}
            entry = JournalEntry.objects.filter(pk=act.id).values_list("seq", flat=True).first()
            return status, _as_json({**answer, "journal_seq": entry})

        (code, answer), is_replay = replays.once(
            act_id=act.id,
            studio=self.studio,
            digest=digest_of(self.request.path, self.request.data),
            written_at=act.written_at,
            work=carried_out,
        )
        response = Response(answer, status=code)
        if is_replay:
            response["Idempotent-Replay"] = "true"
        return response

    def act(self, given: Mapping[str, Any]) -> Act:
        """Build the act of this request; the only place that reads the clock for it."""
        now = timezone.now()
        happened_at = given.get("happened_at") or now
        if happened_at > now + FUTURE_MOST:
            raise serializers.ValidationError(
                {"happened_at": [exceptions.ErrorDetail("That is in the future.", "in-the-future")]}
            )
        sent_at: datetime | None = given.get("sent_at")
        return Act(
            id=given.get("id") or uuid7(),
            studio=self.studio,
            member=self.member,
            device=self.device(now),
            happened_at=happened_at,
            written_at=now,
            clock_offset_s=(sent_at - now).total_seconds() if sent_at else 0.0,
            based_on=given.get("based_on", 0),
            corrects=given.get("corrects"),
            as_typed=self.as_typed,
            note=given.get("note", ""),
        )

    def device(self, now: datetime) -> Device:
        """Return the device this request is written on."""
        auth = self.request.auth
        if isinstance(auth, AccessToken):
            return auth.device
        named = self.request.headers.get("X-Natch-Device")
        if not named:
            return devices.browser_of(member=self.member, at=now)
        try:
            return devices.seen(member=self.member, device_id=UUID(named), at=now)
        except ValueError as error:
            raise exceptions.ParseError("X-Natch-Device is not a UUID.") from error

    def check_match(self, revision: int, current: Mapping[str, object]) -> None:
        """Raise 412 with the current row when the `If-Match` of a PATCH no longer holds."""
        wanted = self.request.headers.get("If-Match")
        if wanted is not None and wanted != f'"{revision}"':
            raise PreconditionFailed(_as_json(dict(current)))

    def _member(self, request: Request) -> Member:
        auth = request.auth
        if isinstance(auth, AccessToken):
            found = Member.objects.filter(pk=auth.member_id, studio__slug=self.slug)
        else:
            found = Member.objects.filter(user=request.user.pk, studio__slug=self.slug)
        member = found.filter(left_at=None).select_related("studio").first()
        if member is None:
            raise UnknownThing("There is no such studio here.")
        return member

    def _grants(self, request: Request) -> frozenset[Permission]:
        granted = grants_of(self.member.roles)
        if isinstance(request.auth, AccessToken):
            return granted & {Permission(name) for name in request.auth.grants}
        return granted

    def _check(self, need: Need) -> None:
        if isinstance(need, Scoped):
            wanted = {need.own} if need.any is None else {need.own, need.any}
        else:
            wanted = {need}
        if not wanted & self.grants:
            needed = need.own if isinstance(need, Scoped) else need
            raise NotPermitted("Your role does not include that.", needed=str(needed))

    def _check_key(self, act: Act) -> None:
        key = self.request.headers.get("Idempotency-Key")
        if key is not None and key.strip('"').lower() != str(act.id):
            raise serializers.ValidationError(
                {"id": [exceptions.ErrorDetail("Idempotency-Key names another id.", "key-differs")]}
            )


def _as_json(value: dict[str, object]) -> dict[str, object]:
    """Return the answer as it reads back from the database, so that a replay is the same answer."""
    loaded: dict[str, object] = json.loads(json.dumps(value, cls=JSONEncoder))
    return loaded
