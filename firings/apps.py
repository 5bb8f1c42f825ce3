from django.apps import AppConfig


class FiringsConfig(AppConfig):
    name = "firings"
