"""What a laboratory wrote about lead and cadmium is kept; nothing is concluded from it here."""

from collections.abc import Mapping
from typing import Any, Final

from django.db import transaction

from pieces.models import TestReport
from studio.actions import journal
from studio.models import Act

FIGURES: Final = (
    "lead_value",
    "lead_is_below",
    "cadmium_value",
    "cadmium_is_below",
    "unit",
    "contact",
    "depth_mm",
    "volume_ml",
    "area_dm2",
    "lid_lead_mg",
    "lid_lead_is_below",
    "lid_cadmium_mg",
    "lid_cadmium_is_below",
    "occasion_id",
)
ABOUT: Final = ("commission", "piece", "glaze_batch")


@transaction.atomic
def record(*, act: Act, given: Mapping[str, Any]) -> TestReport:
    """Keep what a laboratory wrote, as it wrote it; `act.corrects` names a report it stands for."""
    about = [(name, given[name].pk) for name in ABOUT if given.get(name)]
    figures = {name: given[name] for name in FIGURES if given.get(name) is not None}
    entry = journal.write(
        act=act,
        verb="recorded_report",
        subjects=[*about, ("report", act.id)],
        facts={**figures, "reported_on": given["reported_on"].isoformat()},
    )
    return TestReport.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        is_lid_tested=given.get("lid_lead_mg") is not None,
        **given,
    )
