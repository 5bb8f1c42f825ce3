from django.apps import AppConfig


class StudioConfig(AppConfig):
    name = "studio"

    def ready(self) -> None:
        from studio.project import celery  # noqa: F401  (so that tasks go to our own queue)
