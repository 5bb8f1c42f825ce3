"""Gunicorn's settings: `gunicorn -c python:studio.project.web`."""

import gc
from typing import Any

workers = 2
threads = 4
worker_class = "gthread"
timeout = 60
graceful_timeout = 5
keepalive = 30
control_socket_disable = True
loglevel = "warning"


def post_worker_init(worker: Any) -> None:
    """Spare the collector what was loaded at the start: the slowest answers were its doing."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)
