"""Addresses of places, air, clay, the journal and reminders."""

from django.urls import URLPattern

urlpatterns: list[URLPattern] = []
