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

from pieces.domain import drying_words
from pieces.domain.drying import BODIES, SOURCES, ReadinessWindows
from pieces.models import Piece
from pieces.queries import readiness
from studio.api.views import StudioView
from studio.permissions import Need, Permission
from studio.queries import journal

from .bench_rows import GUESS, iso, shown_quantiles, shown_window
from .bench_shapes import ConfidenceOut, QuantilesOut, WindowOut


class CurveOut(serializers.Serializer[Any]):
    """Water left, 1 as pressed to 0 at rest with the room's air; `now_index` divides past from
    forecast.
    """

    t_at = serializers.ListField(child=serializers.DateTimeField())
    p10 = serializers.ListField(child=serializers.FloatField())
    p50 = serializers.ListField(child=serializers.FloatField())
    p90 = serializers.ListField(child=serializers.FloatField())
    known_points = serializers.IntegerField()


class WindowsOut(serializers.Serializer[Any]):
    demould = WindowOut()
    join = WindowOut()
    shrinkage_ended = QuantilesOut()
    bisque = QuantilesOut()


class EvidenceOut(serializers.Serializer[Any]):
    kind = serializers.ChoiceField(choices=["weighing", "check", "cover", "move"])
    at = serializers.DateTimeField()
    member = serializers.CharField()
    mass_g = serializers.FloatField(required=False)
    words = serializers.CharField(required=False)


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
                "windows": _shown_windows(windows) if windows else None,
                "unreachable": sorted(stage.value for stage in windows.not_in_this_room)
                if windows
                else [],
                "evidence": [_shown_evidence(seen) for seen in drying.evidence],
                "inputs": inputs,
                "assumed": list(drying.assumed),
                "sources": list(SOURCES),
                "confidence": GUESS,
            }
        )


def _shown_figures(body: str) -> list[dict[str, Any]]:
    return [
        {"name": name, "value": value, "unit": unit, "mark": mark.words}
        for name, value, unit, mark in BODIES[body].figures()
    ]


def _shown_windows(windows: ReadinessWindows) -> dict[str, Any]:
    return {
        "demould": shown_window(windows.demould),
        "join": shown_window(windows.join),
        "shrinkage_ended": shown_quantiles(windows.shrinkage_ended),
        "bisque": shown_quantiles(windows.bisque),
    }


def _shown_curve(kept: dict[str, list[list[float]]]) -> dict[str, Any]:
    points = kept["past"] + kept["ahead"]
    return {
        "t_at": [datetime.fromtimestamp(point[0], tz=UTC).isoformat() for point in points],
        "p10": [point[1] for point in points],
        "p50": [point[2] for point in points],
        "p90": [point[3] for point in points],
        "known_points": len(kept["past"]),
    }


def _shown_evidence(seen: readiness.Evidence) -> dict[str, Any]:
    shown: dict[str, Any] = {
        "kind": seen.kind,
        "at": iso(seen.at.timestamp()),
        "member": seen.member,
    }
    if seen.kind == "weighing":
        shown["mass_g"] = seen.value
    else:
        shown["words"] = str(seen.value).replace("_", " ")
    return shown
