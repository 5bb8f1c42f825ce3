"""Sums about clay that belong to no studio: anybody signed in may ask."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any, Final

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.permissions import IsAuthenticated
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from pieces.domain.drying import (
    BODIES,
    Belief,
    Body,
    Cover,
    Curve,
    ReadinessWindows,
    Section,
    Shape,
)
from pieces.domain.drying.belief import FIRST_BELIEF
from pieces.domain.drying.bodies import Mark
from pieces.domain.drying.sections import BOARD_FACTOR, HOLLOW_FACTOR
from pieces.domain.what_if import SOURCE, AirFrom, Asked, CoverFrom, Mould, Told, what_if

from .bench_rows import confidence, shown_windows
from .sum_shapes import DryingSumIn, DryingSumOut

INSIDE_FACTORS: Final = {"hollow": HOLLOW_FACTOR, "board": BOARD_FACTOR, "free": 1.0, "shut": 0.0}


class DryingSum(APIView):
    """How long a section takes to dry, by the model alone."""

    permission_classes = (IsAuthenticated,)

    @extend_schema(operation_id="sums_drying", request=DryingSumIn, responses=DryingSumOut)
    def post(self, request: Request) -> Response:
        """Reckon a section in given air, under given covers; nothing is kept."""
        shape = DryingSumIn(data=request.data, context={"as_typed": {}})
        shape.is_valid(raise_exception=True)
        asked = asked_of(shape.validated_data, FIRST_BELIEF)
        return Response(shown_sum(asked, what_if(asked), checks=0))


def asked_of(given: Mapping[str, Any], belief: Belief) -> Asked:
    """Return what is asked, to be drawn from that belief. Raises on moistures out of order."""
    air = given.get("air_series") or [{"from_h": 0.0, **given["air"]}]
    covers = given.get("covers") or []
    if "cover" in given:
        covers = [{"from_h": 0.0, "state": given["cover"]}]
    mould = given.get("mould")
    begins_at = given.get("begins_at") or timezone.now()
    return Asked(
        begins_s=round(begins_at.timestamp()),
        section=Section(
            Shape(given["shape"]), given["thickest_mm"] / 1000.0, INSIDE_FACTORS[given["inside"]]
        ),
        body=_body(BODIES[given["clay"]], given.get("moistures") or {}),
        air=[AirFrom(**row) for row in air],
        covers=[CoverFrom(row["from_h"], Cover(row["state"])) for row in covers],
        mould=None if mould is None else Mould(**mould),
        air_m_s=given["air_m_s"],
        belief=belief,
    )


def _body(body: Body, moistures: Mapping[str, float]) -> Body:
    """Return the body with somebody's own figures for some of its moistures."""
    own: dict[str, Any] = {f"{name}_kg_per_kg": value for name, value in moistures.items()}
    try:
        changed = replace(body, **own, marks={**body.marks, **dict.fromkeys(own, Mark.OWN)})
    except ValueError as error:
        raise serializers.ValidationError(
            {"moistures": [ErrorDetail(str(error), "out-of-order")]}
        ) from error
    if changed.pressed_kg_per_kg <= changed.demould_kg_per_kg:
        detail = ErrorDetail("Clay is pressed wetter than it leaves its mould.", "out-of-order")
        raise serializers.ValidationError({"moistures": [detail]})
    return changed


def shown_sum(asked: Asked, told: Told, *, checks: int) -> dict[str, Any]:
    """Return what is told, and on how many looks at such clay it rests."""
    windows = told.windows
    return {
        "begins_at": _instant(asked.begins_s),
        "windows": windows and shown_windows(windows),
        "curve": shown_line(told.curve) if told.curve is not None else None,
        "unreachable": shown_unreached(windows) if windows else [],
        "confidence": confidence(checks),
        "working": list(told.working),
        "warnings": shown_warnings(told.warnings),
        "source": SOURCE,
    }


def shown_unreached(windows: ReadinessWindows) -> list[str]:
    """Return the stages that the air cannot bring about."""
    return sorted(stage.value for stage in windows.not_in_this_room)


def shown_warnings(said: Iterable[tuple[str, str]]) -> list[dict[str, str]]:
    """Return what to mind, each with its code."""
    return [{"code": code, "detail": detail} for code, detail in said]


def shown_line(line: Curve) -> dict[str, Any]:
    """Return water left over time, of which nothing but its beginning is known."""
    return {
        "t_at": [_instant(at_s) for at_s in line.at_s.tolist()],
        "p10": line.p10.tolist(),
        "p50": line.p50.tolist(),
        "p90": line.p90.tolist(),
        "known_points": 1,
    }


def _instant(at_s: float) -> str:
    return datetime.fromtimestamp(at_s, tz=UTC).isoformat()
