"""Long computations: asked once, carried out once, offered again when whoever had them is gone.

The row is the truth; a message in the queue only says "look". The interface asks, enqueues with
`task.delay_on_commit(run_id=…)`, and the task calls `carry_out`.
"""

import hashlib
import json
import time
from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Any, Final
from uuid import UUID

from django.db import transaction
from django.db.models import F, Q

from studio.domain.refusals import Conflict, Refusal
from studio.models import Member, Run, Studio
from studio.queries.chain import plain

# Longer than the hard time limit of any task, so that a run is never free while somebody works.
LEASE: Final = timedelta(minutes=20)
OFFER_AFTER: Final = timedelta(minutes=2)
TRIES_MOST: Final = 3

Tell = Callable[[float], None]
Work = Callable[[Run, Tell], Mapping[str, object]]


class Cancelled(Exception):
    """The run was cancelled, or offered to somebody else: whoever carries it out should stop."""


class AlreadyOver(Conflict):
    code = "run-is-over"
    title = "That run is over already."


@transaction.atomic
def ask(
    *,
    studio: Studio,
    task: str,
    inputs: Mapping[str, object],
    asked_by: Member | None,
    at: datetime,
) -> Run:
    """Return the run that answers this question; the same question is the same run.

    A run that failed or was cancelled is queued anew. Put the version of the model into `inputs`,
    so that a better model is a new question.
    """
    given = plain(inputs)
    run, is_new = Run.objects.get_or_create(
        studio=studio,
        digest=_digest(task, given),
        defaults={"task": task, "inputs": given, "asked_by": asked_by, "asked_at": at},
    )
    if not is_new and run.state in {Run.State.FAILED, Run.State.CANCELLED}:
        Run.objects.filter(pk=run.pk, state=run.state).update(
            state=Run.State.QUEUED,
            progress_fraction=0.0,
            problem=None,
            lease_until=None,
            tries=0,
            done_at=None,
            asked_at=at,
            asked_by=asked_by,
        )
        run.refresh_from_db()
    return run


def carry_out(*, run_id: UUID, work: Work, at: datetime) -> None:
    """Take the run, unless somebody has it, do the work and keep its result.

    `work(run, tell)` returns the result; it may call `tell(fraction)` now and then, which keeps the
    lease alive and raises `Cancelled` when the work is no longer wanted. A `Refusal` is a result;
    any other exception marks the run as failed and goes on up. Runs outside a transaction.
    """
    lease = at + LEASE
    free = Q(state=Run.State.QUEUED) | Q(state=Run.State.RUNNING, lease_until__lt=at)
    taken = Run.objects.filter(free, pk=run_id).update(
        state=Run.State.RUNNING, lease_until=lease, tries=F("tries") + 1
    )
    if not taken:
        return
    hand = _Hand(run_id=run_id, at=at, lease_until=lease)
    try:
        result = work(Run.objects.get(pk=run_id), hand.tell)
    except Cancelled:
        return
    except Refusal as refusal:
        hand.put_down(state=Run.State.REFUSED, problem=_problem(refusal))
    except Exception:
        hand.put_down(state=Run.State.FAILED, problem=BROKEN)
        raise
    else:
        hand.put_down(state=Run.State.DONE, result=plain(result), progress_fraction=1.0)


def cancel(*, run: Run, at: datetime) -> Run:
    """Cancel a run that is not over. Raises `AlreadyOver`."""
    unfinished = Run.objects.filter(pk=run.pk, state__in=[Run.State.QUEUED, Run.State.RUNNING])
    if not unfinished.update(state=Run.State.CANCELLED, done_at=at, lease_until=None):
        run.refresh_from_db()
        raise AlreadyOver(f"It is {run.get_state_display().lower()}.", state=run.state)
    run.refresh_from_db()
    return run


def to_offer(*, at: datetime) -> list[tuple[str, UUID]]:
    """Return (task, run id) of what waits too long or whose worker is gone.

    What has been tried too often is marked as failed instead.
    """
    gone = Q(state=Run.State.RUNNING, lease_until__lt=at)
    Run.objects.filter(gone, tries__gte=TRIES_MOST).update(
        state=Run.State.FAILED, problem=BROKEN, done_at=at, lease_until=None
    )
    waiting = Q(state=Run.State.QUEUED, asked_at__lt=at - OFFER_AFTER)
    return list(
        Run.objects.filter(waiting | gone).order_by("asked_at").values_list("task", "pk")[:100]
    )


class _Hand:
    """The hold that one worker has on a run: it may write only while the lease is its own."""

    def __init__(self, *, run_id: UUID, at: datetime, lease_until: datetime) -> None:
        self.run_id, self.at, self.lease_until = run_id, at, lease_until
        self.began_s = time.monotonic()

    def now(self) -> datetime:
        return self.at + timedelta(seconds=time.monotonic() - self.began_s)

    def tell(self, fraction: float) -> None:
        later = max(self.now() + LEASE, self.lease_until + timedelta(microseconds=1))
        if not self._mine().update(
            progress_fraction=min(max(fraction, 0.0), 1.0), lease_until=later
        ):
            raise Cancelled
        self.lease_until = later

    def put_down(self, **fields: Any) -> None:
        self._mine().update(**fields, done_at=self.now(), lease_until=None)

    def _mine(self) -> Any:
        return Run.objects.filter(
            pk=self.run_id, state=Run.State.RUNNING, lease_until=self.lease_until
        )


BROKEN: Final = {
    "type": "/problems/server-error",
    "title": "Something broke here, and has been noted.",
    "detail": "It was not your doing. Ask again; if it breaks again, tell whoever runs this place.",
}


def _problem(refusal: Refusal) -> dict[str, object]:
    facts = plain(refusal.facts)
    assert isinstance(facts, dict)
    return {
        "type": f"/problems/{refusal.code}",
        "title": refusal.title,
        "detail": refusal.detail,
        **facts,
    }


def _digest(task: str, inputs: object) -> str:
    canonical = json.dumps([task, inputs], sort_keys=True, separators=(",", ":"))
    return hashlib.sha256(canonical.encode()).hexdigest()
