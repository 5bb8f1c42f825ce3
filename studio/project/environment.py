"""Reads what the environment says, for `settings`: plain functions over plain text."""

import contextlib
import os
import secrets
import tempfile
from pathlib import Path
from typing import Any
from urllib.parse import parse_qsl, unquote, urlsplit


def text(name: str, default: str = "") -> str:
    """Return a variable; an empty one counts as absent."""
    return os.environ.get(name) or default


def is_on(name: str) -> bool:
    """Say whether a variable is switched on."""
    return text(name).lower() in {"1", "yes", "true", "on"}


def words(name: str) -> list[str]:
    """Return the comma-separated words of a variable."""
    return [word.strip() for word in text(name).split(",") if word.strip()]


def whole(name: str, default: int) -> int:
    """Return a whole number, or say which variable is not one."""
    given = text(name, str(default))
    try:
        return int(given)
    except ValueError as error:
        raise SystemExit(f"{name} must be a whole number, but is {given!r}.") from error


def database(url: str, sqlite_file: Path) -> dict[str, Any]:
    """Return Django's settings of the database that `url` names; SQLite when it is empty."""
    if not url:
        return sqlite(sqlite_file)
    address = urlsplit(url)
    if address.scheme not in {"postgres", "postgresql"}:
        raise SystemExit(f"DATABASE_URL must begin with postgresql://, but is {url!r}.")
    options = dict(parse_qsl(address.query))
    return {
        "ENGINE": "django.db.backends.postgresql",
        "NAME": unquote(address.path.lstrip("/")),
        "USER": unquote(address.username or ""),
        "PASSWORD": unquote(address.password or ""),
        "HOST": options.pop("host", unquote(address.hostname or "")),
        "PORT": options.pop("port", str(address.port or "")),
        "CONN_MAX_AGE": 60,
        "CONN_HEALTH_CHECKS": True,
        "OPTIONS": options,
    }


def sqlite(file: Path) -> dict[str, Any]:
    """Return settings under which several processes share one SQLite file.

    IMMEDIATE and the timeout let writers queue instead of failing; FULL keeps an answered act
    through a power cut (sqlite.org/pragma.html#pragma_synchronous).
    """
    return {
        "ENGINE": "django.db.backends.sqlite3",
        "NAME": str(file),
        "CONN_MAX_AGE": 60,
        "OPTIONS": {
            "transaction_mode": "IMMEDIATE",
            "timeout": 20,
            "init_command": (
                "PRAGMA journal_mode=WAL;"
                "PRAGMA synchronous=FULL;"
                "PRAGMA cache_size=-20000;"
                "PRAGMA mmap_size=134217728;"
                "PRAGMA temp_store=MEMORY;"
            ),
        },
    }


def kept_secret(file: Path) -> str:
    """Return the secret kept in `file`, made once even when several processes start together."""
    with contextlib.suppress(FileNotFoundError):
        return file.read_text(encoding="ascii").strip()
    file.parent.mkdir(parents=True, exist_ok=True)
    number, draft = tempfile.mkstemp(dir=file.parent)
    with open(number, "w", encoding="ascii") as paper:  # noqa: PTH123  (an open descriptor)
        paper.write(secrets.token_urlsafe(50))
    with contextlib.suppress(FileExistsError):
        os.link(draft, file)
    Path(draft).unlink()
    return file.read_text(encoding="ascii").strip()
