"""Addresses of the bench, of pieces, and of what is told of them."""

from django.urls import URLPattern, path

from . import acts, bench, drying, pieces, pressings, together

STUDIO = "studios/<slug:slug>/"
PIECE = f"{STUDIO}pieces/<uuid:piece_id>/"
CLASH = f"{STUDIO}clashes/<uuid:clash_id>/"

urlpatterns: list[URLPattern] = [
    path(f"{STUDIO}bench/", bench.BenchList.as_view()),
    path(f"{STUDIO}pieces/", pieces.PieceList.as_view()),
    path(PIECE, pieces.PieceOne.as_view()),
    path(f"{PIECE}drying/", drying.PieceDrying.as_view()),
    path(f"{PIECE}history/", pieces.PieceHistory.as_view()),
    path(f"{PIECE}stage-events/", acts.StageEventList.as_view()),
    path(f"{PIECE}parts/", acts.PartList.as_view()),
    path(f"{PIECE}covers/", acts.CoverList.as_view()),
    path(f"{PIECE}weighings/", acts.PieceWeighingList.as_view()),
    path(f"{PIECE}checks/", acts.TouchCheckList.as_view()),
    path(f"{PIECE}moves/", acts.MoveList.as_view()),
    path(f"{STUDIO}parts/<uuid:part_id>/events/", acts.PartEventList.as_view()),
    path(f"{STUDIO}mould-sets/<uuid:set_id>/pressings/", pressings.PressingList.as_view()),
    path(f"{STUDIO}bulk/", together.BulkList.as_view()),
    path(f"{STUDIO}retractions/", together.RetractionList.as_view()),
    path(f"{STUDIO}clashes/", together.ClashList.as_view()),
    path(CLASH, together.ClashOne.as_view()),
    path(f"{CLASH}answers/", together.ClashAnswerList.as_view()),
]
