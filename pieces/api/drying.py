"""The drying of one piece: curve, windows, evidence, and what it all rests on."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any, ClassVar
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.domain import drying_words, weighing_curve
from pieces.domain.drying import BODIES, SOURCES
from pieces.models import Piece
from pieces.queries import readiness
from pieces.queries.readiness import Drying, Evidence
from studio.api.views import StudioView
from studio.permissions import Need, Permission
from studio.queries import journal

from .bench_rows import confidence, shown_windows
from .bench_shapes import ConfidenceOut, CurveOut, WindowsOut
from .covering_shown import CoveringOut, shown_covering
from .moments import iso


class EvidenceOut(serializers.Serializer[Any]):
    kind = serializers.ChoiceField(choices=["weighing", "check", "cover", "move"])
    at = serializers.DateTimeField()
    member = serializers.CharField()
    mass_g = serializers.FloatField(required=False)
    water_left = serializers.FloatField(required=False, allow_null=True)
    words = serializers.CharField(required=False)


class WeighedOut(serializers.Serializer[Any]):
    """What the weighings say: water left at the last one, and whether the weight is steady."""

    words = serializers.CharField()
    water_left = serializers.ListField(
        child=serializers.FloatField(), allow_null=True, help_text="p10, p50, p90"
    )
    is_steady = serializers.BooleanField(allow_null=True)


class DryingOut(serializers.Serializer[Any]):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    computed_at = serializers.DateTimeField(allow_null=True)
    verdict = serializers.CharField()
    sentence = serializers.CharField()
    curve = CurveOut(allow_null=True)
    windows = WindowsOut(allow_null=True)
    unreachable = serializers.ListField(child=serializers.CharField())
    evidence = EvidenceOut(many=True)
    weighed = WeighedOut(allow_null=True)
    covering = CoveringOut()
    inputs = serializers.DictField()
    assumed = serializers.ListField(child=serializers.CharField())
    sources = serializers.ListField(child=serializers.CharField())
    confidence = ConfidenceOut()


class PieceDrying(StudioView):
    """How a piece dries, as last reckoned."""

    needs: ClassVar[dict[str, Need]] = {"GET": Permission.SEE_STUDIO}

    @extend_schema(responses=DryingOut)
    def get(self, request: Request, piece_id: UUID) -> Response:
        piece = self.find(Piece, id=piece_id)
        drying = readiness.drying_of(piece)
        now = timezone.now()
        windows = drying.windows
        scale = _Scale(drying)
        inputs = dict(drying.dampest.inputs) if drying.dampest else {}
        if inputs:
            inputs["body_figures"] = _shown_figures(inputs["body"])
        return Response(
            {
                "at": iso(now.timestamp()),
                "journal_seq": journal.highest_seq(self.studio),
                "computed_at": drying.computed_at and iso(drying.computed_at.timestamp()),
                "verdict": drying_words.verdict(
                    windows, is_bone_dry=piece.state == "bone_dry", now_s=now.timestamp()
                ),
                "sentence": drying_words.sentence(windows),
                "curve": _shown_curve(drying.dampest.curve) if drying.dampest else None,
                "windows": shown_windows(windows) if windows else None,
                "unreachable": sorted(stage.value for stage in windows.not_in_this_room)
                if windows
                else [],
                "evidence": [_shown_evidence(seen, left) for seen, left in scale.beside()],
                "weighed": scale.shown(),
                "inputs": inputs,
                "assumed": list(drying.assumed),
                "sources": list(SOURCES),
                "covering": shown_covering(drying.covering),
                "confidence": confidence(drying.checks),
            }
        )


def _shown_figures(body: str) -> list[dict[str, Any]]:
    return [
        {"name": name, "value": value, "unit": unit, "mark": mark.words}
        for name, value, unit, mark in BODIES[body].figures()
    ]


def _points(kept: dict[str, list[list[float]]]) -> list[list[float]]:
    return kept["past"] + kept["ahead"]


def _shown_curve(kept: dict[str, list[list[float]]]) -> dict[str, Any]:
    points = _points(kept)
    return {
        "t_at": [datetime.fromtimestamp(point[0], tz=UTC).isoformat() for point in points],
        "p10": [point[1] for point in points],
        "p50": [point[2] for point in points],
        "p90": [point[3] for point in points],
        "known_points": len(kept["past"]),
    }


class _Scale:
    """The weighings of a piece since it was joined, beside the curve of its dampest part."""

    def __init__(self, drying: Drying) -> None:
        self.evidence = drying.evidence
        forecast = drying.dampest
        kept = forecast.curve if forecast is not None else {"past": [], "ahead": []}
        self.points = [(at, low, middle, high) for at, low, middle, high in _points(kept)]
        inputs = forecast.inputs if forecast is not None else {}
        self.rest = inputs.get("at_rest_kg_per_kg")
        self.body = BODIES[inputs["body"]] if inputs else None
        self.weighings = [
            (seen.at.timestamp(), float(seen.value))
            for seen in drying.evidence
            if seen.kind == "weighing" and seen.is_of_all
        ]

    def beside(self) -> list[tuple[Evidence, float | None]]:
        """Return each piece of evidence with the water left by the scale, where it is one."""
        left: dict[float, float | None] = {}
        if self.rest is not None and self.body is not None:
            found = weighing_curve.weighed_left(
                self.weighings,
                self.points,
                pressed_kg_per_kg=self.body.pressed_kg_per_kg,
                at_rest_kg_per_kg=self.rest,
            )
            left = dict(zip(sorted(at for at, _ in self.weighings), found, strict=True))
        return [(seen, left.get(seen.at.timestamp())) for seen in self.evidence]

    def shown(self) -> dict[str, Any] | None:
        """Return what two or more weighings say; None before there are two."""
        if len(self.weighings) < 2:
            return None
        left = weighing_curve.left_at(self.points, max(at for at, _ in self.weighings))
        last = weighing_curve.change(self.weighings)
        return {
            "words": weighing_curve.words(left, last),
            "water_left": list(left) if left is not None else None,
            "is_steady": last.is_steady if last is not None else None,
        }


def _shown_evidence(seen: Evidence, water_left: float | None) -> dict[str, Any]:
    shown: dict[str, Any] = {
        "kind": seen.kind,
        "at": iso(seen.at.timestamp()),
        "member": seen.member,
    }
    if seen.kind == "weighing":
        shown["mass_g"] = seen.value
        shown["water_left"] = water_left
    else:
        shown["words"] = str(seen.value).replace("_", " ")
    return shown
