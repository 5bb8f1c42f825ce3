"""How the rules say no.

A `Refusal` means that the world said no: it has a code and a title of its own, a detail that tells
this case, and facts that a screen can use. Only the interface knows which answer each kind becomes.
"""


class Refusal(Exception):
    """The world said no."""

    code = "refused"
    title = "That cannot be done."

    def __init__(self, detail: str, **facts: object) -> None:
        super().__init__(detail)
        self.detail = detail
        self.facts = facts


class NotAllowed(Refusal):
    """The person may not do this."""

    code = "not-allowed"
    title = "You may not do that."


class Missing(Refusal):
    """There is no such thing in this studio."""

    code = "not-found"
    title = "There is no such thing here."


class Conflict(Refusal):
    """The right request at the wrong moment."""

    code = "conflict"
    title = "That cannot be done at this moment."


class TooLarge(Refusal):
    """More than is taken in."""

    code = "too-large"
    title = "That is too large."


class Unworkable(Refusal):
    """Well formed, but it breaks a rule or has no solution."""

    code = "unworkable"
    title = "That does not work out."
