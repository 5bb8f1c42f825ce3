"""Kilns and programmes."""

from collections.abc import Mapping
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import kilns, programmes
from firings.domain.cautions import BURNS_AND_FUMES, NOT_A_SAFETY_DEVICE
from firings.models import Kiln, KilnEvent, Programme
from firings.queries import kilns as queries
from firings.queries.kilns import KilnNow
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView
from studio.models import Act
from studio.permissions import P
from studio.queries import journal

from .given_kilns import KilnChangeIn, KilnEventIn, KilnIn, ProgrammeChangeIn, ProgrammeIn
from .shapes_kilns import (
    KilnActOut,
    KilnEventOut,
    KilnOut,
    KilnsOut,
    ProgrammeActOut,
    ProgrammeOut,
)
from .shown_kilns import shown_kiln, shown_load_name, shown_programme, shown_words

CAUTIONS = (NOT_A_SAFETY_DEVICE, BURNS_AND_FUMES)


class KilnView(StudioView):
    """What the endpoints about kilns share."""

    def now(self, kiln_id: UUID) -> KilnNow:
        """Return one kiln and what it is doing. Raises `UnknownThing`."""
        self.find(Kiln, id=kiln_id)
        rows = queries.all_of(self.studio).filter(pk=kiln_id)
        return queries.now_of(rows, studio=self.studio, at=timezone.now())[0]


class KilnList(KilnView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.SERVICE_KILNS}

    @extend_schema(operation_id="kilns_list", responses=KilnsOut)
    def get(self, request: Request) -> Response:
        """Show every kiln: what it is doing, till when, who watches."""
        at = timezone.now()
        rows = queries.all_of(self.studio).order_by("number", "id")
        found = queries.now_of(rows, studio=self.studio, at=at)
        return Response(
            {
                "at": at,
                "journal_seq": journal.highest_seq(self.studio),
                "results": [shown_kiln(now) for now in found],
                "cautions": shown_words(CAUTIONS),
            }
        )

    @extend_schema(request=KilnIn, responses={201: KilnActOut})
    def post(self, request: Request) -> Response:
        """Make a kiln with its furniture and its place."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            fields = {name: given[name] for name in kilns.EDITABLE if name in given}
            made = kilns.make(
                act=act,
                fields=fields,
                shelves=given["shelves"],
                posts=given["posts"],
                place=given["place"],
                parent=given["parent"],
            )
            return {"kiln": shown_kiln(self.now(made.pk)), "affected": []}

        return self.once(KilnIn, work)


class KilnOne(KilnView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.SERVICE_KILNS}

    @extend_schema(operation_id="kilns_one", responses=KilnOut)
    def get(self, request: Request, kiln_id: UUID) -> Response:
        """Show one kiln."""
        now = self.now(kiln_id)
        return Response(shown_kiln(now), headers={"ETag": f'"{now.kiln.revision}"'})

    @extend_schema(request=KilnChangeIn, responses=KilnActOut)
    def patch(self, request: Request, kiln_id: UUID) -> Response:
        """Change a kiln; its shelves or posts, where given, stand for all it had."""
        kiln = self.find(Kiln, id=kiln_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.check_match(kiln.revision, shown_kiln(self.now(kiln_id)))
            changes = {name: given[name] for name in kilns.EDITABLE if name in given}
            kilns.edit(
                act=act,
                kiln=kiln,
                changes=changes,
                shelves=given.get("shelves"),
                posts=given.get("posts"),
            )
            return {"kiln": shown_kiln(self.now(kiln_id)), "affected": []}

        answer = self.once(KilnChangeIn, work, status=200)
        if answer.data and "kiln" in answer.data:
            answer["ETag"] = f'"{answer.data["kiln"]["revision"]}"'
        return answer


class KilnEventList(KilnView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.SERVICE_KILNS}

    @extend_schema(operation_id="kiln_events_list", responses=paged(KilnEventOut))
    def get(self, request: Request, kiln_id: UUID) -> Response:
        """List when a kiln went out of use and came back, newest first."""
        rows = KilnEvent.objects.filter(kiln=self.find(Kiln, id=kiln_id)).standing()
        return keyset(rows, request, fields=("-happened_at", "-id")).answer(KilnEventOut)

    @extend_schema(request=KilnEventIn, responses={201: KilnActOut})
    def post(self, request: Request, kiln_id: UUID) -> Response:
        """Take a kiln out of use, or back; answers with the loads that want another kiln."""
        kiln = self.find(Kiln, id=kiln_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            affected = kilns.tell(act=act, kiln=kiln, kind=given["kind"], reason=given["reason"])
            return {
                "kiln": shown_kiln(self.now(kiln_id)),
                "affected": [shown_load_name(load) for load in affected],
            }

        return self.once(KilnEventIn, work)


class ProgrammeList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.PLAN_FIRINGS}

    @extend_schema(operation_id="programmes_list", responses=paged(ProgrammeOut))
    def get(self, request: Request) -> Response:
        """List the programmes, each with what its cone needs at its last rate."""
        rows = Programme.objects.filter(studio=self.studio).prefetch_related("segments")
        page = keyset(rows, request, fields=("name", "id"))
        shown = [shown_programme(programme) for programme in page.rows]
        return Response({"results": shown, "next": page.next})

    @extend_schema(request=ProgrammeIn, responses={201: ProgrammeActOut})
    def post(self, request: Request) -> Response:
        """Make a programme; a cone on the wrong side of zero is asked about."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            fields = {name: given[name] for name in programmes.EDITABLE}
            made = programmes.make(act=act, fields=fields, segments=given["segments"])
            return {"programme": shown_programme(made)}

        return self.once(ProgrammeIn, work)


class ProgrammeOne(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.PLAN_FIRINGS}

    @extend_schema(operation_id="programmes_one", responses=ProgrammeOut)
    def get(self, request: Request, programme_id: UUID) -> Response:
        """Show one programme."""
        row = self.find(Programme, id=programme_id)
        return Response(shown_programme(row), headers={"ETag": f'"{row.revision}"'})

    @extend_schema(request=ProgrammeChangeIn, responses=ProgrammeActOut)
    def patch(self, request: Request, programme_id: UUID) -> Response:
        """Change a programme; segments, where given, stand for all it had."""
        row = self.find(Programme, id=programme_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.check_match(row.revision, shown_programme(row))
            changes = {name: given[name] for name in programmes.EDITABLE if name in given}
            changed = programmes.edit(
                act=act, programme=row, changes=changes, segments=given.get("segments")
            )
            return {"programme": shown_programme(changed)}

        answer = self.once(ProgrammeChangeIn, work, status=200)
        if answer.data and "programme" in answer.data:
            answer["ETag"] = f'"{answer.data["programme"]["revision"]}"'
        return answer
