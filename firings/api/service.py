"""The book of a kiln: what was changed and measured on it, and how old its elements are."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import service
from firings.actions.service import ServiceGiven
from firings.models import Kiln, KilnService
from firings.queries.kiln_health import health_of
from pieces.api.bench_rows import shown_person
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView
from studio.models import Act
from studio.permissions import P

from .service_shapes import ServiceActOut, ServiceIn, ServiceOut
from .shown_kilns import Shown, shown_health

FIELDS = ("kind", "over_new_fraction", "shelf_count", "words")
TITLES = {
    "elements": "elements changed",
    "ohms": "ohms measured",
    "sensor": "sensor changed",
    "vent": "vent seen to",
    "relay": "relay changed",
    "shelves": "shelves counted",
    "note": "noted",
}


class KilnServiceList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.SERVICE_KILNS}

    @extend_schema(operation_id="kiln_service_list", responses=paged(ServiceOut))
    def get(self, request: Request, kiln_id: UUID) -> Response:
        """List what was done to a kiln and found on it, newest first."""
        rows = KilnService.objects.filter(kiln=self.find(Kiln, id=kiln_id)).standing()
        page = keyset(rows.select_related("entry__member"), request, fields=("-happened_at", "-id"))
        return Response({"results": [_shown(row) for row in page.rows], "next": page.next})

    @extend_schema(request=ServiceIn, responses={201: ServiceActOut})
    def post(self, request: Request, kiln_id: UUID) -> Response:
        """Write into its book; answers with the health of the kiln as it is then."""
        kiln = self.find(Kiln, id=kiln_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            told = ServiceGiven(**{name: given[name] for name in FIELDS})
            row = service.record(act=act, kiln=kiln, given=told)
            health = health_of([kiln])[kiln.pk]
            return {"service": _shown(row), "health": shown_health(kiln, health)}

        return self.once(ServiceIn, work)


def _shown(row: KilnService) -> Shown:
    return {
        "id": row.pk,
        "happened_at": row.happened_at,
        "member": shown_person(row.entry.member),
        "title": TITLES[row.kind],
        **{name: getattr(row, name) for name in FIELDS},
    }
