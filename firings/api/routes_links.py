"""Addresses of links: those of members, and what a link's holder is shown as JSON."""

from django.urls import URLPattern, path

from . import links, shares

STUDIO = "studios/<slug:slug>/"
LINKS = f"{STUDIO}commissions/<uuid:commission_id>/links/"
REVOCATIONS = f"{STUDIO}links/<uuid:link_id>/revocations/"

urlpatterns: list[URLPattern] = [
    path(LINKS, links.LinkList.as_view()),
    path(f"{LINKS}preview/", links.LinkPreview.as_view()),
    path(REVOCATIONS, links.LinkRevocationList.as_view()),
    path("shares/<str:token>/", shares.ShareShown.as_view()),
    path("shares/<str:token>/approvals/", shares.ShareApprovalList.as_view()),
]
