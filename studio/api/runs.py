"""Runs: how far a long computation is, and what came of it."""

from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema, extend_schema_field
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.reverse import reverse

from studio.actions import runs
from studio.models import Run
from studio.permissions import P, Scoped

from .views import StudioView


@extend_schema_field({"type": "object", "additionalProperties": True})
class FactsField(serializers.JSONField):
    """What a run was asked with."""


@extend_schema_field({"type": ["object", "null"], "additionalProperties": True})
class FactsOrNothingField(serializers.JSONField):
    """What came of a run, or nothing yet."""


class RunOut(serializers.ModelSerializer[Run]):
    inputs = FactsField()
    result = FactsOrNothingField()
    problem = FactsOrNothingField()

    class Meta:
        model = Run
        fields = (
            "id",
            "task",
            "state",
            "progress_fraction",
            "inputs",
            "result",
            "problem",
            "asked_at",
            "done_at",
        )


class RunOne(StudioView):
    needs = {
        "GET": P.SEE_STUDIO,
        "DELETE": Scoped(own=P.SEE_STUDIO, any=P.MANAGE_SETTINGS),
    }

    @extend_schema(responses=RunOut)
    def get(self, request: Request, run_id: UUID) -> Response:
        return Response(RunOut(self.find(Run, id=run_id)).data)

    @extend_schema(responses={200: RunOut})
    def delete(self, request: Request, run_id: UUID) -> Response:
        cancelled = runs.cancel(run=self.own(Run, id=run_id), at=timezone.now())
        return Response(RunOut(cancelled).data)


def accepted(run: Run) -> Response:
    """Return 202 with the run and where to ask after it; an answer that is ready comes with it."""
    address = reverse("run", kwargs={"slug": run.studio.slug, "run_id": run.pk})
    return Response(RunOut(run).data, status=202, headers={"Location": address})
