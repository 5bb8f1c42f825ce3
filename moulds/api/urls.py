"""Addresses of designs, masters and moulds."""

from django.urls import URLPattern, path

from . import designs, records, sets

STUDIO = "studios/<slug:slug>/"
SET = f"{STUDIO}mould-sets/<uuid:set_id>/"

urlpatterns: list[URLPattern] = [
    path(f"{STUDIO}designs/", designs.DesignList.as_view()),
    path(f"{STUDIO}designs/<uuid:design_id>/", designs.DesignOne.as_view()),
    path(f"{STUDIO}masters/", designs.MasterList.as_view()),
    path(f"{STUDIO}masters/<uuid:master_id>/events/", designs.MasterEventList.as_view()),
    path(f"{STUDIO}mould-sets/", sets.MouldSetList.as_view()),
    path(SET, sets.MouldSetOne.as_view()),
    path(f"{SET}castings/", sets.CastingList.as_view()),
    path(f"{SET}weighings/", records.MouldWeighingList.as_view()),
    path(f"{SET}inspections/", records.InspectionList.as_view()),
    path(f"{SET}bookings/", records.BookingList.as_view()),
    path(f"{SET}bookings/<uuid:booking_id>/endings/", records.BookingEndList.as_view()),
    path(f"{SET}readiness/", records.ReadinessOne.as_view()),
    path(f"{STUDIO}mould-parts/<uuid:part_id>/", sets.MouldPartOne.as_view()),
    path(f"{STUDIO}mould-parts/<uuid:part_id>/events/", sets.MouldPartEventList.as_view()),
]
