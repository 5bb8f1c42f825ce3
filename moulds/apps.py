from django.apps import AppConfig


class MouldsConfig(AppConfig):
    name = "moulds"
