"""Pressings of a mould set, and what they made."""

from collections.abc import Iterable, Mapping
from typing import Any
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.models import Casting, Design, MouldPart, MouldSet, Pressing
from pieces.actions import pressing
from pieces.actions.shapes import PartGiven, PieceGiven
from pieces.models import CommissionLine, Piece
from studio.api.pages import keyset, paged
from studio.api.views import Given, UnknownThing
from studio.models import Act, Member
from studio.permissions import P

from .base import PRESS, PieceView, wrong
from .bench_rows import shown_person
from .given import PressingIn
from .shapes import PressingAnswerOut, PressingRowOut
from .shown import shown_whole_part, shown_words


class PressingList(PieceView):
    needs = {"GET": P.SEE_STUDIO, "POST": PRESS}

    @extend_schema(operation_id="pressings_list", responses=paged(PressingRowOut))
    def get(self, request: Request, set_id: UUID) -> Response:
        """List the pressings of a set, newest first."""
        rows = _pressings().filter(casting__mould_set=self.find(MouldSet, id=set_id))
        page = keyset(rows, request, fields=("-happened_at", "-id"))
        return Response({"results": [shown_pressing(row) for row in page.rows], "next": page.next})

    @extend_schema(request=PressingIn, responses={201: PressingAnswerOut})
    def post(self, request: Request, set_id: UUID) -> Response:
        """Press: it wears the mould, and makes the parts and the pieces that are not there yet."""
        mould_set = self.find(MouldSet, id=set_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            casting: Casting = given["casting"]
            if casting.mould_set_id != mould_set.pk:
                raise wrong("casting_id", f"That is no casting of {mould_set.label}.")
            parts = self._parts(given, mould_set)
            done = pressing.press(
                act=act,
                casting=casting,
                mould_parts=self._mould_parts(given["mould_part_ids"]),
                parts=parts,
                count=given["count"],
                slab_block=given["slab_block"],
                place=given["place"],
            )
            return {
                "pressing": shown_pressing(_pressings().get(pk=done.pressing.pk)),
                "press_since_dry": done.press_since_dry,
                "parts": [shown_whole_part(self.part(part.pk)) for part in done.parts],
                "pieces": self.briefs(done.pieces),
                "warnings": shown_words(done.warnings),
            }

        return self.told(PressingIn, work)

    def _mould_parts(self, ids: Iterable[UUID]) -> list[MouldPart]:
        wanted = set(ids)
        rows = list(MouldPart.objects.of(self.studio).filter(pk__in=wanted))
        if len(rows) < len(wanted):
            raise wrong("mould_part_ids", "One of these mould parts is not known here.")
        return rows

    def _parts(self, given: Given, mould_set: MouldSet) -> list[PartGiven]:
        """Return the parts with their pieces; all that is named must be of this studio."""
        told: list[dict[str, Any]] = given["parts"]
        known = self._by_id(Piece, [part["piece"]["id"] for part in told])
        self.may(PRESS, *known.values())
        designs = self._by_id(Design, [part["piece"]["design_id"] for part in told])
        makers = self._by_id(Member, [part["piece"]["maker_id"] for part in told])
        self.may_make_for(list(makers.values()), PRESS)
        lines = self._by_id(CommissionLine, [part["piece"]["line_id"] for part in told])
        self.may(PRESS, *lines.values())
        default = self.default_maker()
        parts = []
        for part in told:
            piece = part["piece"]
            old = known.get(piece["id"])
            design = old.design if old else designs.get(piece["design_id"])
            if piece["design_id"] and design is None:
                raise UnknownThing("No such design here.")
            if piece["maker_id"] and piece["maker_id"] not in makers:
                raise UnknownThing("No such person here.")
            if piece["line_id"] and piece["line_id"] not in lines:
                raise UnknownThing("No such line here.")
            parts.append(
                PartGiven(
                    part["id"],
                    part["role"] or mould_set.makes.role,
                    PieceGiven(
                        piece["id"],
                        design or mould_set.makes.design,
                        mark=piece["mark"],
                        maker=makers.get(piece["maker_id"], default),
                        use=piece["use"],
                        line=lines.get(piece["line_id"]),
                    ),
                    replaces=part["replaces_id"],
                )
            )
        return parts

    def _by_id(self, model: Any, ids: Iterable[UUID | None]) -> dict[UUID, Any]:
        rows = model.objects.of(self.studio).filter(pk__in=[pk for pk in ids if pk])
        return {row.pk: row for row in rows}


def shown_pressing(row: Pressing) -> dict[str, Any]:
    """Return one pressing with the mould parts it used."""
    return {
        "id": row.pk,
        "happened_at": row.happened_at,
        "casting_id": row.casting_id,
        "generation": row.casting.generation,
        "count": row.count,
        "slab_block_id": row.slab_block_id,
        "mould_part_ids": [part.pk for part in row.mould_parts.all()],
        "member": shown_person(row.entry.member),
    }


def _pressings() -> Any:
    rows = Pressing.objects.standing().select_related("casting", "entry__member")
    return rows.prefetch_related("mould_parts")
