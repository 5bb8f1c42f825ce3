"""Addresses of people, devices, keys and the studio's own settings."""

from django.urls import URLPattern

urlpatterns: list[URLPattern] = []
