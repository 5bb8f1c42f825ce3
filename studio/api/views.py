"""The base of every endpoint of a studio: tenant, permission, input, act."""

import json
from collections.abc import Callable, Mapping
from datetime import datetime
from types import MappingProxyType
from typing import Any, ClassVar, NoReturn, TypeVar
from uuid import UUID

from django.http import HttpRequest, HttpResponseBase
from django.utils import timezone
from rest_framework import exceptions, serializers
from rest_framework.permissions import SAFE_METHODS, IsAuthenticated
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.utils.encoders import JSONEncoder
from rest_framework.views import APIView

from studio.actions import devices, refused, replays
from studio.domain.ids import uuid7
from studio.domain.refusals import Missing, NotAllowed
from studio.models import AccessToken, Act, Device, JournalEntry, Member, Studio, StudioOwned
from studio.permissions import Need, NotPermitted, Permission, Scoped, Standing
from studio.queries import private

from .envelopes import FUTURE_MOST, ActIn, digest_of
from .hidden import cut
from .late import (
    DeviceSignedOff,
    ForReview,
    Gone,
    KeptForReview,
    after_leaving,
    when_gone,
)
from .problems import PreconditionFailed
from .standing import NotInPerson, NotOnSharedPhone, PinNeeded, device_of, standing_of

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
    # Writes that only a signed-in person may make, never a token or a shared phone.
    in_person: ClassVar[bool] = False
    # Whether a shared phone is answered at all; not where it is about clients, papers or keys.
    for_shared_phone: ClassVar[bool] = True

    studio: Studio
    member: Member
    standing: Standing
    grants: frozenset[Permission]
    is_on_shared_phone = False
    as_typed: Mapping[str, str] = MappingProxyType({})

    def dispatch(self, request: HttpRequest, *args: object, **kwargs: object) -> HttpResponseBase:
        self.slug = str(kwargs.pop("slug"))
        return super().dispatch(request, *args, **kwargs)

    def initial(self, request: Request, *args: object, **kwargs: object) -> None:
        super().initial(request, *args, **kwargs)
        self.member = self._member(request)
        self.studio = self.member.studio
        self.is_on_shared_phone = isinstance(request.auth, Device)
        self.standing = standing_of(request, self.member)
        self.grants = self.standing.grants
        need = self.needs.get(str(request.method))
        if need is None:
            raise exceptions.MethodNotAllowed(str(request.method))
        if self.in_person and request.auth is not None and request.method not in SAFE_METHODS:
            raise NotInPerson("Sign in with your name and password to do this.")
        if self.is_on_shared_phone and not self.for_shared_phone:
            raise NotOnSharedPhone("Sign in by name on a phone of your own.")
        self._check(need)

    def permission_denied(
        self, request: Request, message: str | None = None, code: str | None = None
    ) -> NoReturn:
        if isinstance(request.auth, Device):
            raise exceptions.NotAuthenticated("Say who holds the phone, in X-Natch-Member.")
        super().permission_denied(request, message, code)

    def handle_exception(self, exc: Exception) -> Response:
        gone = exc if isinstance(exc, Gone) else None
        if gone is not None:
            exc = when_gone(self.request, gone, self.slug)
        if isinstance(exc, KeptForReview):
            return Response(exc.answer, status=202)
        if isinstance(exc, NotAllowed | exceptions.MethodNotAllowed):
            self._note_refused(exc, gone)
        return super().handle_exception(exc)

    def finalize_response(
        self, request: Request, response: Response, *args: object, **kwargs: object
    ) -> Response:
        response = super().finalize_response(request, response, *args, **kwargs)
        if self.is_on_shared_phone and isinstance(response, Response):
            studio = getattr(self, "studio", None)
            words = private.words_about_others(studio) if studio is not None else frozenset()
            response.data = cut(response.data, words)
        return response

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
        is_owner_unproved = set(self.member.roles) > self.standing.roles
        self._refuse(need.any or need.own, "It is somebody else's.", may_prove=is_owner_unproved)

    @property
    def reaches_any(self) -> bool:
        need = self.needs[str(self.request.method)]
        return isinstance(need, Scoped) and self.standing.reaches_any(need)

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
            digest=digest_of(self.member.pk, self.request.path, self.request.data),
            written_at=act.written_at,
            work=carried_out,
        )
        response = Response(answer, status=code)
        if is_replay:
            response["Idempotent-Replay"] = "true"
        return response

    def unkept(self, shape: type[ActIn], work: Work) -> Response:
        """Carry out an act whose answer shows a key: once, so it is not kept to be given again."""
        given = self.given(shape)
        act = self.act(given)
        self._check_key(act)
        answer = {"id": str(act.id), **work(given, act)}
        entry = JournalEntry.objects.filter(pk=act.id).values_list("seq", flat=True).first()
        return Response({**answer, "journal_seq": entry}, status=201)

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
            photos=given.get("photo_ids", ()),
        )

    def device(self, now: datetime) -> Device:
        """Return the device this request is written on."""
        auth = self.request.auth
        if isinstance(auth, AccessToken | ForReview):
            return auth.device
        if isinstance(auth, Device):
            return auth
        named = self.request.headers.get("X-Natch-Device")
        if not named:
            return devices.browser_of(member=self.member, at=now)
        try:
            return devices.seen(member=self.member, device_id=UUID(named), at=now)
        except ValueError as error:
            raise exceptions.ParseError("X-Natch-Device is not a UUID.") from error
        except devices.DeviceRevoked as revoked:
            gone = devices.named(named, of=self.member)
            assert gone is not None
            raise DeviceSignedOff(gone, self.member) from revoked

    def _note_refused(
        self, exc: NotAllowed | exceptions.MethodNotAllowed, gone: Gone | None
    ) -> None:
        """Write down what a member of the studio tried; a PIN still to come is no try."""
        member = gone.member if gone is not None else getattr(self, "member", None)
        if member is None or isinstance(exc, PinNeeded):
            return
        facts = getattr(exc, "facts", {})
        refused.note(
            member=member,
            device=gone.device if gone is not None else device_of(self.request, member),
            code=getattr(exc, "code", "method-not-allowed"),
            needed=str(facts.get("needed", "")),
            method=str(self.request.method),
            path=self.request.path,
            at=timezone.now(),
        )

    def check_match(self, revision: int, current: Mapping[str, object]) -> None:
        """Raise 412 with the current row when the `If-Match` of a PATCH no longer holds."""
        wanted = self.request.headers.get("If-Match")
        if wanted is not None and wanted != f'"{revision}"':
            raise PreconditionFailed(_as_json(dict(current)))

    def _member(self, request: Request) -> Member:
        auth = request.auth
        found = Member.objects.filter(user=request.user.pk, studio__slug=self.slug)
        if isinstance(auth, AccessToken | Device):
            found = found.filter(studio=auth.studio_id)
        member = found.select_related("studio").first()
        if member is not None and (member.left_at is None or isinstance(auth, ForReview)):
            return member
        if member is not None and auth is None:
            late = after_leaving(
                request, member, devices.named(request.headers.get("X-Natch-Device"), of=member)
            )
            if late is not None:
                self.member = member
                raise late
        raise UnknownThing("There is no such studio here.")

    def _check(self, need: Need) -> None:
        if isinstance(need, Scoped):
            wanted = {need.own} if need.any is None else {need.own, need.any}
        else:
            wanted = {need}
        if not wanted & self.grants:
            self._refuse(need.own if isinstance(need, Scoped) else need, "Ask an owner for it.")

    def _refuse(self, needed: Permission, detail: str, *, may_prove: bool = False) -> NoReturn:
        if needed in self.standing.after_pin or may_prove:
            raise PinNeeded("Send the act again with your PIN.", needed=str(needed))
        raise NotPermitted(detail, needed=str(needed))

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
