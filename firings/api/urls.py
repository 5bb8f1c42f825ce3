"""Addresses of kilns, loads, ware that waits, and of taking acts back."""

from django.urls import URLPattern, URLResolver, path

from . import (
    food,
    kilns,
    loads,
    outlook,
    papers,
    placements,
    queue,
    readings,
    retractions,
    routes_links,
    routes_loads,
    search,
    turns,
)

STUDIO = "studios/<slug:slug>/"
LOAD = f"{STUDIO}loads/<uuid:load_id>/"
PAPERS = f"{STUDIO}commissions/<uuid:commission_id>/papers/"

urlpatterns: list[URLPattern | URLResolver] = [
    path(f"{STUDIO}kilns/", kilns.KilnList.as_view()),
    path(f"{STUDIO}kilns/<uuid:kiln_id>/", kilns.KilnOne.as_view()),
    path(f"{STUDIO}kilns/<uuid:kiln_id>/events/", kilns.KilnEventList.as_view()),
    path(f"{STUDIO}programmes/", kilns.ProgrammeList.as_view()),
    path(f"{STUDIO}programmes/<uuid:programme_id>/", kilns.ProgrammeOne.as_view()),
    path(f"{STUDIO}kiln-queue/", queue.KilnQueue.as_view()),
    path(f"{STUDIO}pieces/<uuid:piece_id>/firing-tickets/", queue.TicketList.as_view()),
    path(f"{STUDIO}pieces/<uuid:piece_id>/queue-turns/", turns.TurnList.as_view()),
    path(f"{STUDIO}pieces/<uuid:piece_id>/food-contact/", food.PieceFoodContact.as_view()),
    path(f"{STUDIO}test-reports/", food.TestReportList.as_view()),
    path(f"{STUDIO}loads/", loads.LoadList.as_view()),
    path(LOAD, loads.LoadOne.as_view()),
    path(f"{LOAD}placements/", placements.PlacementList.as_view()),
    path(f"{LOAD}events/", loads.LoadEventList.as_view()),
    path(f"{LOAD}readings/", readings.KilnReadingList.as_view()),
    path(f"{LOAD}cones/", readings.ConeList.as_view()),
    path(f"{LOAD}fit/", queue.LoadFit.as_view()),
    path(f"{LOAD}could-go/", queue.CouldGoList.as_view()),
    path(f"{LOAD}cooling/", queue.LoadCooling.as_view()),
    path(f"{STUDIO}placements/<uuid:placement_id>/", placements.PlacementOne.as_view()),
    path(f"{STUDIO}placements/<uuid:placement_id>/removals/", placements.RemovalList.as_view()),
    path(f"{STUDIO}commissions/<uuid:commission_id>/outlook/", outlook.CommissionOutlook.as_view()),
    path(PAPERS, papers.CommissionPapers.as_view()),
    path(f"{PAPERS}facts/", papers.CommissionPapersFacts.as_view()),
    path(f"{PAPERS}<uuid:copy_id>/", papers.SignedPapers.as_view()),
    path(f"{STUDIO}search/", search.Search.as_view()),
    path(f"{STUDIO}retractions/", retractions.RetractionList.as_view()),
    *routes_loads.urlpatterns,
    *routes_links.urlpatterns,
]
