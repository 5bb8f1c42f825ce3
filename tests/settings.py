"""The product's settings, with a data folder that is thrown away and no slow hashing."""

import atexit
import os
import shutil
import tempfile
from pathlib import Path

os.environ["NATCH_DATA"] = tempfile.mkdtemp(prefix="natch-test-")
os.environ["SECRET_KEY"] = "only-for-tests"
for given in (
    "NATCH_ADDRESS",
    "NATCH_HOSTS",
    "NATCH_MEDIA",
    "NATCH_BACKUPS",
    "SMTP_HOST",
    "REDIS_URL",
):
    os.environ.pop(given, None)
# What was compiled once serves every later run, and the programs that a test starts.
os.environ["NUMBA_CACHE_DIR"] = str(Path(__file__).resolve().parents[1] / "var" / "numba")
atexit.register(shutil.rmtree, os.environ["NATCH_DATA"], ignore_errors=True)

from studio.project.settings import *  # noqa: E402, F403
from studio.project.settings import DATA, DATABASES  # noqa: E402

PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
CELERY_BROKER_URL = "memory://"
CELERY_BROKER_TRANSPORT_OPTIONS = {}

if "sqlite3" in DATABASES["default"]["ENGINE"]:
    # A file, as in the product, so that threads of one test queue as they would; in memory where
    # the system allows, as nothing in it has to outlast a power cut.
    quick = Path("/dev/shm")
    folder = quick / DATA.name if quick.is_dir() else DATA
    folder.mkdir(exist_ok=True)
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    DATABASES["default"]["TEST"] = {"NAME": str(folder / "test.sqlite3")}
