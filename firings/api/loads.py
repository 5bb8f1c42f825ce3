"""Loads: opening, changing, and what happens to them."""

from collections.abc import Mapping
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import events, loads
from firings.actions.loads import LoadGiven
from firings.domain import cautions
from firings.models import Load, LoadEvent
from firings.queries import loads as queries
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P
from studio.queries import journal

from .base import LoadView
from .given import LoadChangeIn, LoadEventIn, LoadFilterIn, LoadIn
from .shapes import LoadActOut, LoadBriefOut, LoadEventOut, LoadScreenOut
from .shown import shown_briefs
from .shown_kilns import shown_words
from .shown_log import shown_event

MORE = ("reading_every_min", "expected_h")
# What each event asks for beyond logging firings.
ASKS = {
    "settled": P.SETTLE_LOADS,
    "reopened": P.SETTLE_LOADS,
    "called_off": P.SETTLE_LOADS,
    "loading": P.BUILD_LOADS,
}


class LoadList(LoadView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.BUILD_LOADS}

    @extend_schema(
        operation_id="loads_list", parameters=[LoadFilterIn], responses=paged(LoadBriefOut)
    )
    def get(self, request: Request) -> Response:
        """List the loads, the latest start first; `from` keeps what is still going on."""
        wanted = self.given(LoadFilterIn, request.query_params)
        rows = queries.found(
            self.studio,
            states=wanted.get("state", ()),
            kiln=wanted.get("kiln"),
            piece=wanted.get("piece"),
            from_at=wanted.get("from"),
            until_at=wanted.get("until"),
        ).prefetch_related("programme__segments")
        page = keyset(rows, request, fields=("-starts_at", "-id"), size=60)
        shown = shown_briefs(page.rows, queries.placements_of(page.rows))
        return Response({"results": shown, "next": page.next})

    @extend_schema(request=LoadIn, responses={201: LoadActOut})
    def post(self, request: Request) -> Response:
        """Open a load for a slot of a kiln."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            names = ("kiln", "kind", "cone", "starts_at", "cutoff_at", "number", "is_unplanned")
            made = loads.open_load(
                act=act,
                given=LoadGiven(
                    **{name: given[name] for name in names},
                    programme=given.get("programme"),
                    watcher=given.get("watcher"),
                    more={name: given[name] for name in MORE if name in given},
                ),
            )
            said = loads.warnings(made)
            return {"load": self.shown(made), "cautions": shown_words(said)}

        return self.once(LoadIn, work)


class LoadOne(LoadView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.BUILD_LOADS}

    @extend_schema(operation_id="loads_one", responses=LoadScreenOut)
    def get(self, request: Request, load_id: UUID) -> Response:
        """Show one load with its ware and its log."""
        load = self.load(load_id)
        seq = journal.highest_seq(self.studio)
        shown = {"at": timezone.now(), "journal_seq": seq, "load": self.shown(load)}
        return Response(shown, headers={"ETag": f'"{load.revision}"'})

    @extend_schema(request=LoadChangeIn, responses=LoadActOut)
    def patch(self, request: Request, load_id: UUID) -> Response:
        """Change when, where and how it is fired; whoever has ware in it is told."""
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.check_match(load.revision, self.shown(load))
            changed = loads.change(act=act, load=load, changes=given)
            said = loads.warnings(changed)
            return {"load": self.shown(changed), "cautions": shown_words(said)}

        answer = self.once(LoadChangeIn, work, status=200)
        if answer.data and "load" in answer.data:
            answer["ETag"] = f'"{answer.data["load"]["revision"]}"'
        return answer


class LoadEventList(LoadView):
    """Settling, reopening, loading and calling off ask for more than logging a firing."""

    needs = {"GET": P.SEE_STUDIO, "POST": P.RECORD_FIRINGS}

    @extend_schema(operation_id="load_events_list", responses=paged(LoadEventOut))
    def get(self, request: Request, load_id: UUID) -> Response:
        """List what happened to a load and stands, newest first."""
        rows = LoadEvent.objects.filter(load=self.load(load_id)).standing()
        rows = rows.select_related("entry__member").prefetch_related("entry__notes")
        page = keyset(rows, request, fields=("-happened_at", "-id"))
        shown = [shown_event(row, is_taken_back=False, is_misfit=False) for row in page.rows]
        return Response({"results": shown, "next": page.next})

    @extend_schema(request=LoadEventIn, responses={201: LoadActOut})
    def post(self, request: Request, load_id: UUID) -> Response:
        """Say what happened to a load; its ware goes in, comes out or goes back with it."""
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            kind = given["kind"]
            self.must(ASKS.get(kind, P.RECORD_FIRINGS))
            results = [events.Result(**row) for row in given["results"]]
            names = ("kind", "celsius", "outcome", "reason", "place", "is_catching_up")
            told = events.Given(**{name: given[name] for name in names}, results=results)
            events.tell(act=act, load=load, given=told)
            return {
                "load": self.shown(Load.objects.get(pk=load.pk)),
                "cautions": shown_words(cautions.AT[kind]),
            }

        return self.once(LoadEventIn, work)
