"""Will an order be ready in time."""

from datetime import datetime
from typing import Any, Final
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.domain import outlook as reckoning
from firings.domain import outlook_words as words
from firings.domain.survival import ENOUGH_OUTCOMES, SHARED_FATE
from firings.queries.outlook import SHARES, Ground, LineOutlook, Outlook, outlook_of
from firings.queries.step_figures import Known
from pieces.queries import commissions
from studio.api.views import StudioView, UnknownThing
from studio.permissions import P
from studio.queries import journal

from .outlook_shapes import OutlookOut

SOURCES: Final = (
    "Counts are binomial, days by the three-point estimate (Malcolm and others 1959).",
    "Before own figures: a guess that loses about a quarter; makers report 7 to 70 %, and call 15 "
    "to 19 % normal (potters.org, subject 07044).",
)


class CommissionOutlook(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="commissions_outlook", responses=OutlookOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """Say how likely enough is there in time, how many more to press, and by when."""
        row = commissions.all_of(self.studio).filter(pk=commission_id).first()
        if row is None:
            raise UnknownThing("No such order here.")
        at = timezone.now()
        order = commissions.orders_now([row])[0]
        pieces = [piece.pk for line in order.lines for piece in line.pieces]
        seen = outlook_of(order, Ground.of(self.studio, pieces, at=at))
        seq = journal.highest_seq(self.studio)
        return Response(shown_outlook(seen, at=at, journal_seq=seq))


def shown_outlook(seen: Outlook, *, at: datetime, journal_seq: int) -> dict[str, Any]:
    """Return an outlook; a chance in figures only where they are the studio's own."""
    row, is_guess = seen.order.commission, seen.basis == "guess"
    likely_from, likely_until = seen.likely
    return {
        "at": at,
        "journal_seq": journal_seq,
        "commission_id": row.pk,
        "promised_date": row.promised_date,
        "words": seen.words,
        "chance": None if is_guess else round(seen.chance, 3),
        "is_at_risk": seen.is_at_risk,
        "likely_from": likely_from,
        "likely_middle": seen.likely_middle,
        "likely_until": likely_until,
        "basis": seen.basis,
        "basis_words": basis_words(seen.known),
        "outcomes": seen.known.outcomes,
        "lines": [_line(line, seen, is_guess=is_guess) for line in seen.lines],
        "steps": _steps(seen.known),
        "parts": [
            {"role": role, "lost": lost, "of": of, "words": words.parts_lost(role, lost, of)}
            for role, (lost, of) in seen.known.parts_lost.items()
        ],
        "first_time": {
            "good": seen.known.first_time.good,
            "of": seen.known.first_time.of,
            "words": words.first_time(seen.known.first_time),
        },
        "cautions": [{"code": "shared-fate", "words": SHARED_FATE}],
        "sources": list(SOURCES),
    }


def basis_words(known: Known) -> str:
    """Return what the figures rest on."""
    if known.basis == "guess":
        return (
            f"A guess: {known.outcomes} of your own pieces are through or lost; "
            f"from {ENOUGH_OUTCOMES} on there are figures."
        )
    return f"From {known.outcomes} of your own pieces that are through or lost."


def _line(line: LineOutlook, seen: Outlook, *, is_guess: bool) -> dict[str, Any]:
    now, today = line.now, seen.today
    promised = seen.order.commission.promised_date
    said = words.enough(line.chance_in_time, promised, is_all_there=line.is_all_there)
    more = None if line.is_all_there else line.more
    asked = more.by_role if more is not None else {}
    by_role = [{"role": role, "count": count} for role, count in asked.items() if count]
    span = line.span
    return {
        "line_id": now.line.pk,
        "what": now.line.what,
        "wanted_sets": now.line.wanted_sets,
        "still_needed": max(now.line.wanted_sets - now.counts.finished, 0),
        "is_all_there": line.is_all_there,
        "chance": None if is_guess else round(line.chance_in_time, 3),
        "chance_words": said,
        "press": {
            "more": None if line.more is None else sum(row["count"] for row in by_role),
            "by_role": by_role,
            "words": _press_words(line, is_guess=is_guess),
        },
        "latest_press": _latest(line, today),
        "likely_from": reckoning.day_after(today, span.p10) if span else None,
        "likely_until": reckoning.day_after(today, span.p90) if span else None,
        "risks": [{"code": risk.code, "words": risk.words} for risk in line.risks],
    }


def _press_words(line: LineOutlook, *, is_guess: bool) -> str:
    """Return what to press; a chance with it only where the figures are the studio's own."""
    more = line.more
    if line.is_all_there or more is None:
        return words.press({} if line.is_all_there else None)
    if is_guess:
        return words.press(more.by_role)
    return words.press_with(more.by_role, more.chance, more.also)


def _latest(line: LineOutlook, today: Any) -> list[dict[str, Any]]:
    if line.latest is None:
        return []
    days = (line.latest.at_50, line.latest.at_80, line.latest.at_90)
    return [
        {"confidence": share, "date": day, "words": words.latest(day, today, share)}
        for share, day in zip(SHARES, days, strict=True)
    ]


def _steps(known: Known) -> list[dict[str, Any]]:
    return [
        {
            "step": step,
            "words": reckoning.STEP_WORDS[step],
            "lost": known.lost_of[step][0],
            "entered": known.lost_of[step][1],
            "survival_fraction": round(known.figures.survival[step], 4),
            "least_days": round(known.figures.days[step].least, 2),
            "usual_days": round(known.figures.days[step].usual, 2),
            "most_days": round(known.figures.days[step].most, 2),
        }
        for step in reckoning.STEPS
    ]
