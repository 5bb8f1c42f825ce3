"""All settings, read from the environment in this one place; `.env.example` lists the variables."""

import os
from pathlib import Path
from typing import Any

from studio.project import environment, serving

ROOT = Path(__file__).resolve().parents[2]

# Where everything lives that this installation gathers: database, queue, logs, secrets.
DATA = (ROOT / Path(environment.text("NATCH_DATA", "var")).expanduser()).resolve()
DATA.mkdir(parents=True, exist_ok=True)

# Read by numba when it is first imported, which only a worker does.
os.environ["NUMBA_CACHE_DIR"] = environment.text("NUMBA_CACHE_DIR", str(DATA / "numba"))

# --- who may call, and how ---------------------------------------------------------------------
DEBUG = environment.is_on("NATCH_DEBUG")
SECRET_KEY = environment.text("SECRET_KEY") or environment.kept_secret(DATA / "secret-key")
ALLOWED_HOSTS = ["localhost", "127.0.0.1", "[::1]", *environment.words("NATCH_HOSTS")]

# The address that people type: links in e-mails begin with it.
NATCH_ADDRESS = environment.text("NATCH_ADDRESS", "http://localhost:8000").rstrip("/")
CSRF_TRUSTED_ORIGINS = [NATCH_ADDRESS]
if environment.is_on("NATCH_BEHIND_PROXY"):
    SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https")

IS_HTTPS = NATCH_ADDRESS.startswith("https://")
SESSION_COOKIE_SECURE = CSRF_COOKIE_SECURE = IS_HTTPS
SESSION_COOKIE_AGE = 90 * 24 * 3600
SESSION_COOKIE_SAMESITE = CSRF_COOKIE_SAMESITE = "Lax"
SECURE_REFERRER_POLICY = "same-origin"
X_FRAME_OPTIONS = "DENY"

# --- Django ------------------------------------------------------------------------------------
INSTALLED_APPS = [
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "rest_framework",
    "drf_spectacular",
    "studio.apps.StudioConfig",
    "moulds.apps.MouldsConfig",
    "pieces.apps.PiecesConfig",
    "firings.apps.FiringsConfig",
]
MIDDLEWARE = [
    "studio.project.serving.ContentPolicyMiddleware",  # first: files need the policy too
    "django.middleware.security.SecurityMiddleware",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
]
TEMPLATES: list[dict[str, Any]] = [
    {"BACKEND": "django.template.backends.django.DjangoTemplates", "APP_DIRS": True}
]
APPEND_SLASH = False  # a call to the wrong address is told so, never sent elsewhere
ROOT_URLCONF = "studio.project.urls"
WSGI_APPLICATION = "studio.project.wsgi.application"
DATABASES = {
    "default": environment.database(environment.text("DATABASE_URL"), DATA / "natch.sqlite3")
}
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"
USE_TZ = True
TIME_ZONE = "UTC"  # each studio has a zone of its own
LANGUAGE_CODE = "en-gb"
USE_I18N = False
AUTH_PASSWORD_VALIDATORS = [
    {"NAME": f"django.contrib.auth.password_validation.{name}"}
    for name in ("MinimumLengthValidator", "CommonPasswordValidator", "NumericPasswordValidator")
]

# --- photos and backups ------------------------------------------------------------------------
# Reached through the API only, so that whoever may not see the thing does not see its photo.
MEDIA_ROOT = str(
    (ROOT / Path(environment.text("NATCH_MEDIA", str(DATA / "media"))).expanduser()).resolve()
)
# Nightly backups; another disk than that of the data is better.
BACKUPS = str(
    (ROOT / Path(environment.text("NATCH_BACKUPS", str(DATA / "backups"))).expanduser()).resolve()
)
STORAGES = {
    "default": {"BACKEND": "studio.project.media.KeptFiles"},
    "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
}

# --- the built front end -----------------------------------------------------------------------
FRONTEND_DIST = ROOT / "frontend" / "dist"
STATIC_URL = "static/"
WHITENOISE_ROOT = str(FRONTEND_DIST) if FRONTEND_DIST.is_dir() else None
WHITENOISE_AUTOREFRESH = WHITENOISE_USE_FINDERS = False
WHITENOISE_ALLOW_ALL_ORIGINS = False
WHITENOISE_IMMUTABLE_FILE_TEST = serving.never_changes
WHITENOISE_ADD_HEADERS_FUNCTION = serving.add_headers
WHITENOISE_MIMETYPES = {".webmanifest": "application/manifest+json", ".wasm": "application/wasm"}

# --- the API -----------------------------------------------------------------------------------
REST_FRAMEWORK = {
    "EXCEPTION_HANDLER": "studio.api.problems.answer",
    "DEFAULT_AUTHENTICATION_CLASSES": [
        "studio.api.authentication.TokenAuthentication",
        "studio.api.authentication.DeviceAuthentication",
        "studio.api.authentication.SessionAuthentication",
    ],
    "DEFAULT_PERMISSION_CLASSES": ["rest_framework.permissions.IsAuthenticated"],
    "DEFAULT_RENDERER_CLASSES": ["rest_framework.renderers.JSONRenderer"],
    "DEFAULT_PARSER_CLASSES": ["studio.api.parsers.JSONParser"],
    "DEFAULT_SCHEMA_CLASS": "drf_spectacular.openapi.AutoSchema",
    "TEST_REQUEST_DEFAULT_FORMAT": "json",
    "URL_FORMAT_OVERRIDE": None,
}
SPECTACULAR_SETTINGS = {
    "TITLE": "Natch",
    "DESCRIPTION": "What a shared studio that press-moulds clay makes, and what each piece needs.",
    "VERSION": "1",
    "OAS_VERSION": "3.1.0",
    "SCHEMA_PATH_PREFIX": "/api/v1",
    "COMPONENT_SPLIT_REQUEST": True,
    "SERVE_INCLUDE_SCHEMA": False,
    # Choices stay where they are used; errors look alike everywhere.
    "POSTPROCESSING_HOOKS": [
        "studio.api.schema.tell_plain_times",
        "studio.api.schema.add_problems",
    ],
}

# --- e-mail: a real SMTP server when one is named, else one file for each message ---------------
SMTP_HOST = environment.text("SMTP_HOST")
if SMTP_HOST:
    EMAIL_BACKEND = "django.core.mail.backends.smtp.EmailBackend"
else:
    EMAIL_BACKEND = "django.core.mail.backends.filebased.EmailBackend"
EMAIL_FILE_PATH = str(DATA / "mail")
EMAIL_HOST = SMTP_HOST or "localhost"
EMAIL_PORT = environment.whole("SMTP_PORT", 25)
EMAIL_HOST_USER = environment.text("SMTP_USER")
EMAIL_HOST_PASSWORD = environment.text("SMTP_PASSWORD")
EMAIL_USE_TLS = environment.text("SMTP_SECURITY") == "starttls"
EMAIL_USE_SSL = environment.text("SMTP_SECURITY") == "tls"
EMAIL_TIMEOUT = 20
DEFAULT_FROM_EMAIL = SERVER_EMAIL = environment.text("SMTP_FROM", "Natch <natch@localhost>")

# --- background work ---------------------------------------------------------------------------
# The truth about work to do is a row with a lease; a message only says "look".
# "folder" is studio.project.folder_queue, registered in studio.project.celery.
REDIS_URL = environment.text("REDIS_URL")
IS_EMBEDDED = not REDIS_URL  # one small machine: sums are kept shorter
QUEUE = DATA / "queue"
CELERY_BROKER_URL = REDIS_URL or "folder://"
CELERY_BROKER_TRANSPORT_OPTIONS: dict[str, Any] = (
    # What a killed worker had in hand comes back after this long; a sum still being done is offered
    # again too, and finds its row leased.
    {"visibility_timeout": 120, "unacked_restore_throttle": 1}
    if REDIS_URL
    else {
        "data_folder_in": str(QUEUE / "messages"),
        "data_folder_out": str(QUEUE / "messages"),
        "processed_folder": str(QUEUE / "taken"),
        "control_folder": str(QUEUE / "control"),
        "polling_interval": 0.1,
    }
)
CELERY_BROKER_CONNECTION_RETRY_ON_STARTUP = True
CELERY_TASK_DEFAULT_QUEUE = "quick"
# Long sums go to the worker that does nothing else, so that no reminder waits for them. By name,
# as Celery gives up the `queue` of a task's own decorator.
CELERY_TASK_ROUTES = {
    "pieces.tasks.refresh_*": {"queue": "work"},
    "studio.tasks.keep_backups": {"queue": "work"},
}
CELERY_TASK_CREATE_MISSING_QUEUES = True
CELERY_TASK_ACKS_LATE = True
CELERY_TASK_REJECT_ON_WORKER_LOST = True
CELERY_TASK_IGNORE_RESULT = True
CELERY_WORKER_PREFETCH_MULTIPLIER = 1
CELERY_WORKER_HIJACK_ROOT_LOGGER = False
CELERY_WORKER_SEND_TASK_EVENTS = False
CELERY_WORKER_ENABLE_REMOTE_CONTROL = False
CELERY_TIMEZONE = TIME_ZONE
CELERY_BEAT_SCHEDULE_FILENAME = str(DATA / "schedule")

# What the clock sets off. Each entry needs `"options": {"expires": …}`, else a worker that was
# stopped finds a backlog; each may run twice without harm.
CELERY_BEAT_SCHEDULE: dict[str, dict[str, Any]] = {
    # e-mails whose time has come
    "tell": {
        "task": "studio.tasks.send_due_reminders",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # long sums whose message or worker was lost
    "offer runs again": {
        "task": "studio.tasks.offer_stale_runs",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # answers to acts of more than 30 days ago
    "prune replays": {
        "task": "studio.tasks.prune_replays",
        "schedule": 6 * 3600.0,
        "options": {"expires": 3600},
    },
    # people whose last day has come
    "leavers": {
        "task": "studio.tasks.end_memberships",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # a backup each night, one restored each month, and word of it when that was not done
    "backups": {
        "task": "studio.tasks.keep_backups",
        "schedule": 600.0,
        "options": {"expires": 550},
    },
    # windows of wet parts whose story or air has changed
    "forecasts": {
        "task": "pieces.tasks.refresh_all_forecasts",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # pieces that waited for a master or a mould
    "waiting pieces": {
        "task": "pieces.tasks.move_on_waiting_pieces",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # what the windows ask of makers
    "windows": {
        "task": "pieces.tasks.set_reminders",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # promises to clients, and whether they will be kept
    "promises": {
        "task": "firings.tasks.judge_promises",
        "schedule": 600.0,
        "options": {"expires": 550},
    },
    # kilns that nobody has read, that should have ended, that may be opened
    "kilns": {
        "task": "firings.tasks.tell_minders",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # loads that close, were settled, called off, moved or unloaded
    "loads": {
        "task": "firings.tasks.tell_makers_of_loads",
        "schedule": 60.0,
        "options": {"expires": 55},
    },
    # Friday's word to owners of worn or wet moulds
    "moulds": {
        "task": "moulds.tasks.tell_of_moulds",
        "schedule": 3600.0,
        "options": {"expires": 3000},
    },
}

# --- logging: what is written at ERROR needs a change of code ------------------------------------
LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "formatters": {"line": {"format": "%(asctime)s %(levelname)s %(name)s %(message)s"}},
    "filters": {"hide keys": {"()": "studio.project.redaction.HideKeys"}},
    "handlers": {
        "stderr": {
            "class": "logging.StreamHandler",
            "formatter": "line",
            "filters": ["hide keys"],
        }
    },
    "root": {"handlers": ["stderr"], "level": "INFO"},
    "loggers": {
        "django": {"level": "INFO"},
        "django.request": {"filters": ["hide keys"]},  # it writes the addresses of requests
        "celery.app.trace": {"level": "WARNING"},
    },
}
