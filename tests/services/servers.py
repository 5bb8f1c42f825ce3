"""Throwaway servers on unix sockets: none outlasts the run, none listens on a port."""

import os
import pwd
import shutil
import subprocess
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from tests.services import programs

READY_WITHIN_S = 30


@contextmanager
def postgres() -> Iterator[str]:
    """Start a PostgreSQL of our own, or use the one that TEST_DATABASE_URL names; give its URL."""
    given = os.environ.get("TEST_DATABASE_URL")
    if given:
        yield given
        return
    tools = programs.postgres_folder()
    with _folder("natch-pg-") as folder:
        user = _plain_user()
        if user:
            shutil.chown(folder, user)
        as_user = ["runuser", "-u", user, "--"] if user else []
        data = folder / "data"
        quick = "-c fsync=off -c synchronous_commit=off -c full_page_writes=off"
        local = f"-c listen_addresses='' -c unix_socket_directories={folder} -c max_connections=60"
        initdb = [
            str(tools / "initdb"),
            "-D",
            str(data),
            "-U",
            "natch",
            "--auth=trust",
            "-E",
            "UTF8",
        ]
        control = [*as_user, str(tools / "pg_ctl"), "-D", str(data), "-w"]
        _call([*as_user, *initdb, "--no-sync", "--locale=C.UTF-8"], folder)
        log = ["-l", str(folder / "log")]
        _call([*control, *log, "-o", f"{quick} {local}", "start"], folder)
        try:
            yield f"postgresql://natch@/postgres?host={folder}"
        finally:
            _call([*control, "-m", "immediate", "stop"], folder)


@contextmanager
def redis() -> Iterator[str]:
    """Start a Redis of our own, or use the one that TEST_REDIS_URL names; give its URL."""
    given = os.environ.get("TEST_REDIS_URL")
    if given:
        yield given
        return
    with _folder("natch-redis-") as folder:
        socket = folder / "redis.sock"
        options = ["--port", "0", "--unixsocket", str(socket), "--save", "", "--appendonly", "no"]
        server = subprocess.Popen(
            [str(programs.redis_server()), *options, "--dir", str(folder)],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
        )
        try:
            _wait_for(socket, server)
            yield f"redis+socket://{socket}"
        finally:
            server.terminate()
            server.wait()


@contextmanager
def _folder(prefix: str) -> Iterator[Path]:
    """Make a folder with a short path: a socket's name has room for about a hundred letters."""
    folder = Path(tempfile.mkdtemp(prefix=prefix, dir="/tmp"))
    try:
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _plain_user() -> str:
    """Return who runs PostgreSQL, which refuses to run as root; nothing when we are not root."""
    if os.geteuid() != 0:
        return ""
    known = {entry.pw_name for entry in pwd.getpwall()}
    return next(name for name in ("postgres", "nobody") if name in known)


def _wait_for(socket: Path, server: "subprocess.Popen[bytes]") -> None:
    limit_s = time.monotonic() + READY_WITHIN_S
    while not socket.exists():
        if server.poll() is not None or time.monotonic() > limit_s:
            raise programs.Unobtainable(f"Redis did not start (code {server.poll()}).")
        time.sleep(0.02)


def _call(command: Sequence[str], folder: Path) -> None:
    done = subprocess.run(
        list(command),
        cwd=folder,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        check=False,
    )
    if done.returncode != 0:
        raise programs.Unobtainable(f"{' '.join(command)} failed:\n{done.stdout}")
