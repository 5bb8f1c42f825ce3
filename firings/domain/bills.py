"""What a load costs each maker: by the studio's tariff, or its own cost shared out by volume.

A bill is reckoned from litres as they are shown, to a hundredth, so that anybody can add it up
again. Where a maker and the studio do not agree on a volume, both figures are kept.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Final
from uuid import UUID

from firings.domain.fees import split

NTH: Final = ("first", "second", "third", "fourth", "fifth")
NOT_CHARGED: Final = ("not_fired", "damp")


@dataclass(frozen=True, slots=True)
class Line:
    """One thing in a load: whose it is (None: nobody's) and its litres, of all its pieces."""

    id: UUID
    payer: UUID | None
    litres: float
    is_charged: bool = True


@dataclass(frozen=True, slots=True)
class Share:
    """What one payer has in a load and pays for it.

    `said_l` stands for the reckoned litres where somebody said otherwise. Money is in the smallest
    coin, and None where there is no tariff; `lines` splits it over the payer's things.
    """

    payer: UUID | None
    litres: float
    said_l: float | None
    minor: int | None
    lines: Mapping[UUID, int]

    @property
    def billed_l(self) -> float:
        return self.litres if self.said_l is None else self.said_l


def bill(
    lines: Sequence[Line],
    *,
    said_l: Mapping[UUID | None, float] | None = None,
    cost_minor: int | None = None,
    per_litre_minor: int | None = None,
) -> tuple[Share, ...]:
    """Return what each payer pays, in the order of the lines.

    Parameters
    ----------
    lines
        What is in the load. What did not fire is not charged.
    said_l
        Litres that somebody said of a payer's ware in place of the reckoned ones. [l]
    cost_minor
        What the load cost: shared by volume, adding up exactly. It goes before the tariff.
    per_litre_minor
        The tariff, in the smallest coin for a litre; a half is rounded up.

    Raises
    ------
    NothingToShare
        When a cost is to be shared and nothing has a volume.
    """
    charged = [line for line in lines if line.is_charged]
    payers = dict.fromkeys(line.payer for line in charged)
    litres = {
        payer: round(sum(line.litres for line in charged if line.payer == payer), 2)
        for payer in payers
    }
    said = {payer: value for payer, value in (said_l or {}).items() if payer in payers}
    billed = [said.get(payer, litres[payer]) for payer in payers]
    if cost_minor is not None:
        amounts: Sequence[int | None] = split(cost_minor, billed)
    elif per_litre_minor is not None:
        amounts = [_rounded(Fraction(str(each)) * per_litre_minor) for each in billed]
    else:
        amounts = [None] * len(billed)
    return tuple(
        Share(payer, litres[payer], said.get(payer), minor, _over(charged, payer, minor))
        for payer, minor in zip(payers, amounts, strict=True)
    )


def which(kind: str, times: int) -> str:
    """Return which firing of its kind this is for a piece: "second glaze firing"."""
    nth = NTH[times - 1] if times <= len(NTH) else f"{times}th"
    return f"{nth} {kind} firing"


def _over(lines: Sequence[Line], payer: UUID | None, minor: int | None) -> dict[UUID, int]:
    own = [line for line in lines if line.payer == payer]
    if minor is None or not any(line.litres > 0.0 for line in own):
        return {}
    parts = split(minor, [line.litres for line in own])
    return {line.id: part for line, part in zip(own, parts, strict=True)}


def _rounded(amount: Fraction) -> int:
    return int(amount + Fraction(1, 2))
