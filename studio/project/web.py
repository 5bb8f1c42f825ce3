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
accesslog = None  # it would hold the keys that stand in links


def when_ready(server: Any) -> None:
    """Keep keys out of its own log, too, and spare the collector what was loaded at the start.

    The slowest answers were the collector's doing.
    """
    from django.urls import get_resolver

    from studio.project.redaction import HideKeys

    server.log.error_log.addFilter(HideKeys())

    get_resolver().url_patterns  # noqa: B018  (loads every view before the workers part)
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)
