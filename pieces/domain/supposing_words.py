"""On what a piece's dates would rest if something were changed, in plain words."""

from __future__ import annotations


def rests_on(
    *, checks: int, looks: int, is_thickness_other: bool, room: str, is_room_learned: bool
) -> list[str]:
    """Return the sentences, the first of the studio, then of the piece and of another place.

    Parameters
    ----------
    checks, looks
        How many looks of the studio at this clay, and how many of them at this piece, count.
    is_thickness_other
        Whether it is asked of another thickness.
    room
        Another room that it would stand in; nothing where it stays in its own.
    is_room_learned
        Whether the studio learned anything of the air in that room.
    """
    found = [_studio(checks)]
    if is_thickness_other:
        found.append(
            "Pressed otherwise it is another piece: what was seen of this one is left out."
        )
    elif looks:
        times = "once" if looks == 1 else f"{looks} times"
        found.append(f"This piece itself was looked at {times}, which counts too.")
    return [*found, *_in_room(room, is_room_learned=is_room_learned)]


def rests_on_like(*, checks: int, room: str, is_room_learned: bool) -> list[str]:
    """Return the same of such clay in that room, where there is no piece yet."""
    of = "1 check" if checks == 1 else f"{checks} checks"
    studio = (
        f"It goes by what this studio learned, from {of} of such clay."
        if checks
        else "Nobody has checked such clay here yet: the clay’s starting figures."
    )
    return [studio, *_in_room(room, is_room_learned=is_room_learned)]


def _in_room(room: str, *, is_room_learned: bool) -> list[str]:
    if not room:
        return []
    if is_room_learned:
        return [f"In {room} it goes by what was learned there."]
    return [f"Nothing was learned in {room} yet: a guess of how its air takes water."]


def _studio(checks: int) -> str:
    if checks == 0:
        return "Nobody has checked this clay yet: its starting figures, as for its own dates."
    of = "1 check" if checks == 1 else f"{checks} checks"
    return f"It goes by what this studio learned, from {of} of this clay, as its own dates do."
