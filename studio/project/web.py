"""Gunicorn's settings: `gunicorn -c python:studio.project.web`."""

import gc
from typing import Any

preload_app = True  # loaded once, shared by both workers
workers = 2
threads = 4
worker_class = "gthread"
timeout = 60
graceful_timeout = 5
keepalive = 30
control_socket_disable = True
loglevel = "warning"


def when_ready(server: Any) -> None:
    """Spare the collector what was loaded at the start: the slowest answers were its doing."""
    from django.urls import get_resolver

    get_resolver().url_patterns  # noqa: B018  (loads every view before the workers part)
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)
