"""Addresses of people, devices, keys and the studio's own settings."""

from django.urls import URLPattern, path

from . import (
    away,
    backups,
    devices,
    exports,
    hands,
    invitations,
    me,
    members,
    numbers,
    session,
    settings,
    tokens,
)

STUDIO = "studios/<slug:slug>"

urlpatterns: list[URLPattern] = [
    path("session/", session.SessionView.as_view()),
    path("me/", me.MeView.as_view()),
    path("invitations/<str:token>/", invitations.InvitationLink.as_view()),
    path("invitations/<str:token>/acceptance/", invitations.InvitationAcceptance.as_view()),
    path(f"{STUDIO}/members/", members.MemberList.as_view()),
    path(f"{STUDIO}/members/<uuid:member_id>/", members.MemberDetail.as_view()),
    path(f"{STUDIO}/invitations/", invitations.InvitationList.as_view()),
    path(f"{STUDIO}/invitations/<uuid:invitation_id>/", invitations.InvitationDetail.as_view()),
    path(f"{STUDIO}/devices/", devices.DeviceList.as_view()),
    path(f"{STUDIO}/devices/<uuid:device_id>/", devices.DeviceDetail.as_view()),
    path(f"{STUDIO}/refused/", hands.RefusedList.as_view()),
    path(f"{STUDIO}/held-acts/", hands.HeldList.as_view()),
    path(f"{STUDIO}/held-acts/<uuid:held_id>/answers/", hands.HeldAnswerList.as_view()),
    path(f"{STUDIO}/members/<uuid:member_id>/leaving/", hands.Leaving.as_view()),
    path(f"{STUDIO}/tokens/", tokens.TokenList.as_view()),
    path(f"{STUDIO}/tokens/<uuid:token_id>/", tokens.TokenDetail.as_view()),
    path(f"{STUDIO}/number-blocks/", numbers.NumberBlockList.as_view()),
    path(f"{STUDIO}/backups/", backups.Backups.as_view()),
    path(f"{STUDIO}/exports/", exports.Exports.as_view()),
    path(f"{STUDIO}/settings/", settings.SettingsView.as_view()),
    path(f"{STUDIO}/opening/", settings.OpeningView.as_view()),
    path(f"{STUDIO}/away/", away.AwayList.as_view()),
    path(f"{STUDIO}/away/<uuid:away_id>/", away.AwayDetail.as_view()),
]
