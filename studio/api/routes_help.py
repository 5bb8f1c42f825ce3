"""Addresses of the help pages, under /help/."""

from django.urls import path

from . import help as views

urlpatterns = [
    path("", views.page),
    path("house.css", views.style),
    path("natch-sans.woff2", views.face),
    path("<slug:name>/", views.page),
]
