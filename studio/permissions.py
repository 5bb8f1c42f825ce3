"""Who may do what: roles, permissions and the one table of grants."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum, auto

from studio.domain.refusals import NotAllowed


class Permission(StrEnum):
    """One thing a person may do; `_OWN` is about their own pieces and those they help with."""

    SEE_STUDIO = auto()
    RECORD_CLIMATE = auto()
    REPORT_DAMAGE = auto()
    MOVE_PLACE = auto()
    ADD_PHOTO = auto()
    PUT_ON_LOAD = auto()
    PRESS_OWN = auto()
    CHECK_OWN = auto()
    COVER_OWN = auto()
    ADVANCE_OWN = auto()
    ADVANCE_ANY = auto()
    SETTLE_CLASHES_ANY = auto()
    MERGE_PIECES = auto()
    SCRAP_OWN = auto()
    PLAN_PIECES = auto()
    BOOK_MOULDS = auto()
    EDIT_OWN_MOULDS = auto()
    PROMISE_OWN = auto()
    SHARE_OWN = auto()
    SEE_OWN_PRICES = auto()
    BUILD_LOADS = auto()
    SETTLE_LOADS = auto()
    RECORD_FIRINGS = auto()
    PLAN_FIRINGS = auto()
    OVERRIDE_DRYNESS = auto()
    SERVICE_KILNS = auto()
    MANAGE_MEMBERS = auto()
    MANAGE_SETTINGS = auto()
    SET_FEES = auto()
    SEE_ALL_PRICES = auto()
    LIFT_DISPLAY_ONLY = auto()
    SIGN_PAPERS = auto()
    READ_EVERYTHING = auto()
    ERASE_PERSON = auto()


class Role(StrEnum):
    """What somebody is in a studio; a member has a set of them."""

    OWNER = auto()
    MAKER = auto()
    HELPER = auto()
    TECHNICIAN = auto()


P = Permission

_EVERYONE = frozenset(
    {
        P.SEE_STUDIO,
        P.RECORD_CLIMATE,
        P.REPORT_DAMAGE,
        P.MOVE_PLACE,
        P.ADD_PHOTO,
        P.PUT_ON_LOAD,
    }
)
_HANDS = frozenset({P.PRESS_OWN, P.CHECK_OWN, P.COVER_OWN, P.ADVANCE_OWN})
_MAKING = frozenset(
    {
        P.SCRAP_OWN,
        P.PLAN_PIECES,
        P.BOOK_MOULDS,
        P.EDIT_OWN_MOULDS,
        P.PROMISE_OWN,
        P.SHARE_OWN,
        P.SEE_OWN_PRICES,
    }
)
_KILNS = frozenset(
    {
        P.BUILD_LOADS,
        P.SETTLE_LOADS,
        P.RECORD_FIRINGS,
        P.PLAN_FIRINGS,
        P.OVERRIDE_DRYNESS,
        P.SERVICE_KILNS,
    }
)

GRANTS: dict[Role, frozenset[Permission]] = {
    Role.OWNER: frozenset(Permission),
    Role.MAKER: _EVERYONE | _HANDS | _MAKING,
    Role.HELPER: _EVERYONE | _HANDS,
    Role.TECHNICIAN: _EVERYONE | _KILNS,
}

# What a shared phone is for: work, never people, papers or prices.
ON_SHARED_PHONE = (
    _EVERYONE | _HANDS | _KILNS | {P.SCRAP_OWN, P.PLAN_PIECES, P.BOOK_MOULDS, P.EDIT_OWN_MOULDS}
)
# What takes a PIN there, as anybody can tap a technician's initials.
WITH_PIN = _KILNS

# What a helper may not do to a piece: everything past bone dry is the maker's word.
HELPER_ADVANCES_UP_TO = "drying"


@dataclass(frozen=True, slots=True)
class Scoped:
    """A permission on one's own things, and the one that reaches everybody's.

    Where `any` is None, the owner's word reaches everybody's things.
    """

    own: Permission
    any: Permission | None = None


Need = Permission | Scoped


@dataclass(frozen=True, slots=True)
class Standing:
    """What a member may do by the way they call: their roles, cut by a token or a shared phone.

    `after_pin` is what the member's PIN would add.
    """

    roles: frozenset[str]
    grants: frozenset[Permission]
    after_pin: frozenset[Permission] = frozenset()

    def reaches_any(self, need: Scoped) -> bool:
        """Say whether it reaches everybody's things: the owner's `_own` implies any."""
        return Role.OWNER in self.roles or (need.any is not None and need.any in self.grants)


class NotPermitted(NotAllowed):
    code = "not-permitted"
    title = "Your role does not include that."


def grants_of(roles: Iterable[str]) -> frozenset[Permission]:
    """Return the union of what the roles may do."""
    return frozenset().union(*(GRANTS[Role(role)] for role in roles))
