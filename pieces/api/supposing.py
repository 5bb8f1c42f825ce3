"""What if: a piece in another place, under another cover or of another thickness."""

from __future__ import annotations

from datetime import datetime
from typing import Any, ClassVar
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions.learning import groups_to_be, lore_of
from pieces.actions.supposing import Supposal, suppose
from pieces.domain.drying import Cover
from pieces.domain.supposing_words import rests_on, rests_on_like
from pieces.domain.what_if import no_estimate, too_thick, unreached, unsound_air, what_if
from pieces.models import Piece
from studio.api.fields import QuantityField
from studio.api.views import Given, StudioView
from studio.domain import moist_air
from studio.models import Place
from studio.permissions import Need, Permission

from .bench_rows import confidence, shown_windows
from .bench_shapes import ConfidenceOut, CurveOut, WindowsOut
from .moments import iso
from .sum_shapes import DryingSumHereIn, DryingSumHereOut, SumWarningOut
from .sums import asked_of, shown_line, shown_sum, shown_unreached, shown_warnings


class SupposedIn(serializers.Serializer[Any]):
    """What is changed from now on; a thickness, from the pressing on. What is left out stays."""

    place_id = serializers.UUIDField(required=False, allow_null=True)
    cover = serializers.ChoiceField([cover.value for cover in Cover], required=False)
    thickest_mm = QuantityField(unit="mm", least=1.0, most=80.0, required=False)


class SupposedOut(serializers.Serializer[Any]):
    """The piece's own dates, and those if so: null where no estimate would be sound."""

    at = serializers.DateTimeField()
    as_it_is = WindowsOut(allow_null=True)
    windows = WindowsOut(allow_null=True)
    curve = CurveOut(allow_null=True, help_text="Of the part that is last to dry, from now on.")
    unreachable = serializers.ListField(child=serializers.CharField())
    confidence = ConfidenceOut()
    rests_on = serializers.ListField(child=serializers.CharField())
    warnings = SumWarningOut(many=True)


class WhatIf(StudioView):
    """How a piece would dry; a question, of which nothing is kept."""

    needs: ClassVar[dict[str, Need]] = {"POST": Permission.SEE_STUDIO}

    @extend_schema(operation_id="pieces_what_if", request=SupposedIn, responses=SupposedOut)
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Reckon with what this studio has learned, from where the piece stands now."""
        piece = self.find(Piece, id=piece_id)
        given = self.given(SupposedIn)
        place_id = given.get("place_id")
        place = self.find(Place, id=place_id) if place_id is not None else None
        now = timezone.now()
        supposal = suppose(
            piece=piece,
            at=now,
            place_id=place_id,
            cover=Cover(given["cover"]) if "cover" in given else None,
            thickest_mm=given.get("thickest_mm"),
        )
        if supposal is None:
            return Response(_nothing_wet(now))
        return Response(_shown(supposal, given, place, now))


class DryingSumHere(StudioView):
    """How long a section takes to dry, by what this studio learned of such clay in such a room."""

    needs: ClassVar[dict[str, Need]] = {"POST": Permission.SEE_STUDIO}

    @extend_schema(
        operation_id="sums_drying_here", request=DryingSumHereIn, responses=DryingSumHereOut
    )
    def post(self, request: Request) -> Response:
        """Reckon a section in given air, under given covers; nothing is kept."""
        given = self.given(DryingSumHereIn)
        place_id = given.get("place_id")
        place = self.find(Place, id=place_id) if place_id is not None else None
        lore = lore_of(self.studio)
        groups = groups_to_be(self.studio, given["clay"], place_id, lore)
        asked = asked_of(given, lore.belief.of_piece(groups))
        checks = lore.checks.get(groups.body, 0)
        rests = rests_on_like(
            checks=checks,
            room=place.name if place is not None else "",
            is_room_learned=lore.knows_room(groups),
        )
        return Response({**shown_sum(asked, what_if(asked), checks=checks), "rests_on": rests})


def _nothing_wet(now: datetime) -> dict[str, Any]:
    return {
        "at": iso(now.timestamp()),
        "as_it_is": None,
        "windows": None,
        "curve": None,
        "unreachable": [],
        "confidence": confidence(0),
        "rests_on": [],
        "warnings": shown_warnings([("nothing-wet", "Nothing of it is drying any more.")]),
    }


def _shown(supposal: Supposal, given: Given, place: Place | None, now: datetime) -> dict[str, Any]:
    windows = supposal.windows
    doubts = _doubts(supposal, given, place)
    warnings = [no_estimate(doubts)] if doubts else unreached(windows)
    return {
        "at": iso(now.timestamp()),
        "as_it_is": shown_windows(supposal.as_it_is),
        "windows": None if doubts else shown_windows(windows),
        "curve": None if doubts else shown_line(supposal.line),
        "unreachable": [] if doubts else shown_unreached(windows),
        "confidence": confidence(supposal.checks),
        "rests_on": rests_on(
            checks=supposal.checks,
            looks=supposal.looks,
            is_thickness_other="thickest_mm" in given,
            room=supposal.room,
            is_room_learned=supposal.is_room_learned,
        ),
        "warnings": shown_warnings(warnings),
    }


def _doubts(supposal: Supposal, given: Given, place: Place | None) -> list[str]:
    """Return why what was changed allows of no sound estimate; what is as it is has its dates."""
    found: list[str] = []
    if place is not None:
        climate = supposal.question.problem.climate
        air_c, vapour_kg_m3 = climate.air_c[-1], climate.vapour_kg_m3[-1]
        found += unsound_air(float(air_c), float(moist_air.humidity_fraction(air_c, vapour_kg_m3)))
    if "thickest_mm" in given:
        found += too_thick(supposal.question.part.section)
    return found
