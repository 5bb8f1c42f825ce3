"""Addresses of what is decided and kept about kilns and loads: service, fees."""

from django.urls import URLPattern, URLResolver, path

from . import fees, service

STUDIO = "studios/<slug:slug>/"
LOAD = f"{STUDIO}loads/<uuid:load_id>/"

urlpatterns: list[URLPattern | URLResolver] = [
    path(f"{STUDIO}kilns/<uuid:kiln_id>/service/", service.KilnServiceList.as_view()),
    path(f"{LOAD}fees/", fees.LoadFeeList.as_view()),
]
