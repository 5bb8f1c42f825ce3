"""What is advised on covering, as it is shown: words and instants, never the numbers."""

from __future__ import annotations

from typing import Any

from rest_framework import serializers

from pieces.domain.covering import Level
from pieces.domain.covering.words import CALIBRATED
from pieces.domain.drying import Cover
from pieces.queries.covering import Covering

from .moments import instant

Shown = dict[str, Any]


class CrackingOut(serializers.Serializer[Any]):
    now = serializers.ChoiceField(choices=[level.value for level in Level])
    peak = serializers.ChoiceField(
        choices=[level.value for level in Level], help_text="at its worst if nothing is changed"
    )
    reason = serializers.CharField()
    note = serializers.CharField()


class CoverStepOut(serializers.Serializer[Any]):
    at = serializers.DateTimeField()
    cover = serializers.ChoiceField(choices=[cover.value for cover in Cover])
    part_ids = serializers.ListField(
        child=serializers.UUIDField(), help_text="the parts it is about; none: the whole piece"
    )
    words = serializers.CharField()


class MeetingOut(serializers.Serializer[Any]):
    opens = serializers.DateTimeField(allow_null=True)
    closes = serializers.DateTimeField(allow_null=True)
    words = serializers.CharField()


class ThinOut(serializers.Serializer[Any]):
    """The thinnest section of an uneven part: too stiff to join before the rest of it."""

    thinnest_mm = serializers.FloatField()
    closes = serializers.DateTimeField()


class CoveringOut(serializers.Serializer[Any]):
    """What is advised on covering a piece; no `cracking` while none of it stands in the air."""

    cracking = CrackingOut(allow_null=True)
    steps = CoverStepOut(many=True)
    meeting = MeetingOut(allow_null=True)
    thin = ThinOut(allow_null=True)


def shown_covering(covering: Covering) -> Shown:
    """Return all that is told of covering a piece."""
    return {
        "cracking": {
            "now": covering.now.value,
            "peak": covering.peak.value,
            "reason": covering.reason,
            "note": CALIBRATED,
        }
        if covering.now is not None and covering.peak is not None
        else None,
        "steps": [
            {
                "at": instant(step.at_s),
                "cover": step.cover.value,
                "part_ids": [str(part) for part, _ in step.parts],
                "words": step.words,
            }
            for step in covering.steps
        ],
        "meeting": {
            "opens": instant(covering.meeting.opens_s),
            "closes": instant(covering.meeting.closes_s),
            "words": covering.meeting_words,
        }
        if covering.meeting is not None
        else None,
        "thin": {"thinnest_mm": covering.thin[0], "closes": instant(covering.thin[1])}
        if covering.thin is not None
        else None,
    }
