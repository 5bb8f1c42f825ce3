"""The Celery application; tasks are found in each app's `tasks` module."""

import os

from celery import Celery
from kombu.transport import TRANSPORT_ALIASES

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.project.settings")

TRANSPORT_ALIASES["folder"] = "studio.project.folder_queue:Transport"

app = Celery("natch")
app.config_from_object("django.conf:settings", namespace="CELERY")
app.autodiscover_tasks()
