"""Find whatever the studio keeps by a few letters."""

from typing import Any, get_args

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from firings.queries import finding
from studio.api.views import StudioView
from studio.domain.finding import EXACT, words_of
from studio.permissions import P
from studio.queries.finding import Hit, Kind

Shape = serializers.Serializer[Any]


class SearchFilterIn(Shape):
    q = serializers.CharField(
        max_length=60,
        allow_blank=True,
        help_text="A few letters of a mark, a name, a number; accents and case do not matter.",
    )


class HitOut(Shape):
    """Something that was found, the best fit first."""

    kind = serializers.ChoiceField(get_args(Kind))
    id = serializers.UUIDField()
    name = serializers.CharField()
    words = serializers.CharField(help_text="What tells it apart from others of that name.")
    is_exact = serializers.BooleanField(help_text="Its whole name was asked for.")


class SearchOut(Shape):
    results = HitOut(many=True)
    is_cut = serializers.BooleanField(help_text="There is more: ask with more letters.")


class Search(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="search", parameters=[SearchFilterIn], responses=SearchOut)
    def get(self, request: Request) -> Response:
        """Find pieces, orders, moulds, loads, places, people and found ware: at most fifty."""
        asked = self.given(SearchFilterIn, request.query_params)["q"]
        with_clients = not self.is_on_shared_phone
        hits = finding.everything(self.studio, words_of(asked), with_clients=with_clients)
        return Response(
            {
                "results": [shown_hit(hit) for hit in hits],
                "is_cut": len(hits) == finding.MOST,
            }
        )


def shown_hit(hit: Hit) -> dict[str, Any]:
    """Return something that was found."""
    return {
        "kind": hit.kind,
        "id": hit.id,
        "name": hit.name,
        "words": hit.words,
        "is_exact": hit.fit == EXACT,
    }
