"""Addresses behind links, under /c/: for people who have no account here."""

from django.urls import URLPattern, path, re_path

from studio.models import PhotoSize

from . import client_pages as pages

PHOTO = "<str:token>/photos/<uuid:photo_id>"  # as photos are named to members

urlpatterns: list[URLPattern] = [
    path("<str:token>", pages.shown),
    path("<str:token>/approvals", pages.answered),
    path(f"{PHOTO}/image/", pages.photo),
    path(f"{PHOTO}/thumbnail/", pages.photo, {"size": PhotoSize.THUMBNAIL}),
    path("<str:token>/history.json", pages.history),
    path("<str:token>/papers.pdf", pages.papers),
    re_path(r"", pages.nothing),
]
