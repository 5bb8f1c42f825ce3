"""For owners: which backups there are, whether one came back whole, and asking for one now."""

from typing import Any

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio import tasks
from studio.actions import backups as making
from studio.actions import keeping
from studio.models import Act
from studio.permissions import P
from studio.queries import backups
from studio.queries.backups import History, Kept

from .envelopes import ActIn, ActOut
from .views import Given, StudioView

WHATS = ("backup", "drill")


class BackupOut(serializers.Serializer[Any]):
    file = serializers.CharField()
    made_at = serializers.DateTimeField()
    size_bytes = serializers.IntegerField()
    tried_at = serializers.DateTimeField(
        allow_null=True, help_text="When it was last restored for trial."
    )
    is_good = serializers.BooleanField(
        allow_null=True, help_text="Whether it came back whole then."
    )


class BackupTryOut(serializers.Serializer[Any]):
    at = serializers.DateTimeField()
    file = serializers.CharField()
    is_good = serializers.BooleanField()
    words = serializers.CharField(help_text="What was wrong, in words; empty when nothing was.")


class BackupsOut(serializers.Serializer[Any]):
    results = BackupOut(many=True, help_text="Newest first. Each was read back whole when made.")
    last_drill = BackupTryOut(allow_null=True)
    good_drill_at = serializers.DateTimeField(allow_null=True)
    failure = BackupTryOut(
        allow_null=True, help_text="Of the last one, where it could not be made."
    )
    is_old = serializers.BooleanField(help_text="The newest is older than 36 hours.")
    is_drill_old = serializers.BooleanField(help_text="None was tried for more than 35 days.")
    asked = serializers.ListField(
        child=serializers.ChoiceField(WHATS), help_text="Asked for and not done yet."
    )


class BackupAskIn(ActIn):
    what = serializers.ChoiceField(
        WHATS, help_text="`backup`: make one; `drill`: restore the newest for trial."
    )


class BackupAskOut(ActOut):
    what = serializers.ChoiceField(WHATS)


class Backups(StudioView):
    for_shared_phone = False
    needs = {"GET": P.MANAGE_SETTINGS, "POST": P.MANAGE_SETTINGS}
    in_person = True

    @extend_schema(operation_id="backups_list", responses=BackupsOut)
    def get(self, request: Request) -> Response:
        """List the backups, and what came of the last trial."""
        now = timezone.now()
        known = backups.history(self.studio, making.usual_folder(), now)
        shown = {
            "results": [_shown(kept, known) for kept in known.kept],
            "last_drill": known.drills[0] if known.drills else None,
            "good_drill_at": known.good_drill_at,
            "failure": known.failing[0] if known.failing else None,
            "is_old": known.is_old(now),
            "is_drill_old": known.is_drill_old(now),
            "asked": sorted(known.asked),
        }
        return Response(BackupsOut(shown).data)

    @extend_schema(operation_id="backups_ask", request=BackupAskIn, responses={201: BackupAskOut})
    def post(self, request: Request) -> Response:
        """Ask for a backup or a trial out of turn; it is done in the background."""

        def work(given: Given, act: Act) -> dict[str, object]:
            keeping.ask(act=act, what=given["what"])
            return {"what": given["what"]}

        answer = self.once(BackupAskIn, work)
        tasks.ask_for_backups()
        return answer


def _shown(kept: Kept, known: History) -> dict[str, object]:
    tried = next((drill for drill in known.drills if drill.file == kept.file), None)
    return {
        "file": kept.file,
        "made_at": kept.made_at,
        "size_bytes": kept.size_bytes,
        "tried_at": tried.at if tried else None,
        "is_good": tried.is_good if tried else None,
    }
