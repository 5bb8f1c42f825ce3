"""Addresses of the bench, of pieces, and of what is told of them."""

from django.urls import URLPattern, path

from . import (
    acts,
    approvals,
    bench,
    commission_acts,
    commission_lives,
    commissions,
    crumbs,
    drying,
    found,
    matches,
    photos,
    pieces,
    pressings,
    sums,
    supposing,
    together,
)

STUDIO = "studios/<slug:slug>/"
PIECE = f"{STUDIO}pieces/<uuid:piece_id>/"
COMMISSION = f"{STUDIO}commissions/<uuid:commission_id>/"
LINE = f"{STUDIO}lines/<uuid:line_id>/"
FOUND = f"{STUDIO}found/<uuid:found_id>/"
CLASH = f"{STUDIO}clashes/<uuid:clash_id>/"

urlpatterns: list[URLPattern] = [
    path("sums/drying/", sums.DryingSum.as_view()),
    path(f"{STUDIO}sums/drying/", supposing.DryingSumHere.as_view()),
    path(f"{STUDIO}bench/", bench.BenchList.as_view()),
    path(f"{STUDIO}pieces/", pieces.PieceList.as_view()),
    path(PIECE, pieces.PieceOne.as_view()),
    path(f"{PIECE}drying/", drying.PieceDrying.as_view()),
    path(f"{PIECE}what-if/", supposing.WhatIf.as_view()),
    path(f"{PIECE}history/", pieces.PieceHistory.as_view()),
    path(f"{PIECE}stage-events/", acts.StageEventList.as_view()),
    path(f"{PIECE}parts/", acts.PartList.as_view()),
    path(f"{PIECE}covers/", acts.CoverList.as_view()),
    path(f"{PIECE}weighings/", acts.PieceWeighingList.as_view()),
    path(f"{PIECE}checks/", acts.TouchCheckList.as_view()),
    path(f"{PIECE}moves/", acts.MoveList.as_view()),
    path(f"{PIECE}photos/", photos.PiecePhotoList.as_view()),
    path(f"{STUDIO}parts/<uuid:part_id>/events/", acts.PartEventList.as_view()),
    path(f"{STUDIO}mould-sets/<uuid:set_id>/pressings/", pressings.PressingList.as_view()),
    path(f"{STUDIO}mould-sets/<uuid:set_id>/crumb-check/", crumbs.CrumbCheckOne.as_view()),
    path(f"{STUDIO}bulk/", together.BulkList.as_view()),
    path(f"{STUDIO}clashes/", together.ClashList.as_view()),
    path(CLASH, together.ClashOne.as_view()),
    path(f"{CLASH}answers/", together.ClashAnswerList.as_view()),
    path(f"{STUDIO}commissions/", commissions.CommissionList.as_view()),
    path(COMMISSION, commissions.CommissionOne.as_view()),
    path(f"{COMMISSION}history/", commissions.CommissionHistory.as_view()),
    path(f"{COMMISSION}history.csv", commissions.CommissionHistoryTable.as_view()),
    path(f"{COMMISSION}lives/", commission_lives.CommissionLives.as_view()),
    path(f"{COMMISSION}lines/", commission_acts.OrderLineList.as_view()),
    path(f"{COMMISSION}promises/", commission_acts.PromiseList.as_view()),
    path(f"{COMMISSION}closings/", commission_acts.ClosingList.as_view()),
    path(f"{COMMISSION}deliveries/", commission_acts.DeliveryList.as_view()),
    path(f"{COMMISSION}approvals/", approvals.ApprovalList.as_view()),
    path(f"{STUDIO}approvals/<uuid:approval_id>/answers/", approvals.ApprovalAnswerList.as_view()),
    path(LINE, commission_acts.OrderLineOne.as_view()),
    path(f"{LINE}recipe/", commission_acts.RecipeOne.as_view()),
    path(f"{LINE}plannings/", commission_acts.SetsPlanningList.as_view()),
    path(f"{STUDIO}matches/", matches.MatchList.as_view()),
    path(f"{STUDIO}assignments/", matches.AssignmentList.as_view()),
    path(f"{STUDIO}found/", found.FoundList.as_view()),
    path(FOUND, found.FoundOne.as_view()),
    path(f"{FOUND}askings/", found.AskingList.as_view()),
    path(f"{FOUND}endings/", found.EndingList.as_view()),
    path(f"{STUDIO}claims/", found.ClaimList.as_view()),
]
