"""Writing down what was refused, where its owner can read it, without letting it be flooded."""

from datetime import datetime, timedelta
from typing import Final

from studio.models import Device, Member, RefusedTry

# The same thing tried again so soon is the same try: a thumb, or a phone that repeats.
SAME_WITHIN: Final = timedelta(minutes=10)
# More than this of one member tells an owner nothing new, and costs room. Common sense, no source.
MOST_AN_HOUR: Final = 60
LONGEST_PATH: Final = 200


def note(
    *,
    member: Member,
    device: Device | None,
    code: str,
    needed: str,
    method: str,
    path: str,
    at: datetime,
) -> RefusedTry | None:
    """Keep that the member tried it, or nothing when that is known or there was enough of it."""
    path = path[:LONGEST_PATH]
    lately = RefusedTry.objects.filter(member=member, tried_at__lte=at)
    same = lately.filter(code=code, needed=needed, method=method, path=path)
    if same.filter(tried_at__gt=at - SAME_WITHIN).exists():
        return None
    if lately.filter(tried_at__gt=at - timedelta(hours=1)).count() >= MOST_AN_HOUR:
        return None
    return RefusedTry.objects.create(
        studio=member.studio,
        member=member,
        device=device,
        code=code,
        needed=needed,
        method=method,
        path=path,
        tried_at=at,
    )
