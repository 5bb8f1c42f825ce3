"""Addresses of what is decided and kept about kilns and loads: service, fees, two stories."""

from django.urls import URLPattern, URLResolver, path

from . import fees, load_clashes, service

STUDIO = "studios/<slug:slug>/"
LOAD = f"{STUDIO}loads/<uuid:load_id>/"
CLASH = f"{STUDIO}load-clashes/<uuid:clash_id>/"

urlpatterns: list[URLPattern | URLResolver] = [
    path(f"{STUDIO}kilns/<uuid:kiln_id>/service/", service.KilnServiceList.as_view()),
    path(f"{LOAD}fees/", fees.LoadFeeList.as_view()),
    path(f"{STUDIO}load-clashes/", load_clashes.LoadClashList.as_view()),
    path(CLASH, load_clashes.LoadClashOne.as_view()),
    path(f"{CLASH}answers/", load_clashes.LoadClashAnswerList.as_view()),
]
