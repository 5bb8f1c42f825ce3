"""Steps of the set-up: a line for each, its output kept aside, one sentence when it fails.

Only the standard library: this runs before anything is installed.
"""

import os
import subprocess
import sys
import time
from collections.abc import Mapping, Sequence
from pathlib import Path


class CannotGoOn(Exception):
    """The set-up cannot go on; the message is the one sentence a person reads."""


def say(line: str) -> None:
    """Print a line of progress at once."""
    print(line, file=sys.stderr, flush=True)


class StepFailed(Exception):
    """A command ended badly; `output` is what it wrote."""

    def __init__(self, output: str) -> None:
        super().__init__(output)
        self.output = output


class Steps:
    """Runs the commands of the set-up and keeps what they write in one log."""

    def __init__(self, log: Path) -> None:
        self.log = log

    def run(
        self,
        title: str,
        command: Sequence[str | Path],
        *,
        folder: Path | None = None,
        environment: Mapping[str, str] | None = None,
    ) -> str:
        """Run one command under a line of progress and return what it wrote.

        Raises `StepFailed` when it ends badly or cannot be started.
        """
        say(f"  {title} …")
        started = time.monotonic()
        try:
            done = subprocess.run(
                [str(word) for word in command],
                cwd=folder,
                env={**os.environ, **(environment or {})},
                stdin=subprocess.DEVNULL,
                stdout=subprocess.PIPE,
                stderr=subprocess.STDOUT,
                text=True,
                errors="replace",
                check=False,
            )
        except OSError as error:
            raise StepFailed(str(error)) from error
        self._keep(title, done.stdout)
        if done.returncode != 0:
            raise StepFailed(done.stdout)
        took_s = time.monotonic() - started
        if took_s >= 1:
            say(f"  {title}: done in {took_s:.0f} s")
        return done.stdout

    def _keep(self, title: str, output: str) -> None:
        self.log.parent.mkdir(parents=True, exist_ok=True)
        with self.log.open("a", encoding="utf-8") as log:
            log.write(f"--- {title}\n{output}\n")


SIGNS_OF_NO_NETWORK = (
    "name resolution",
    "dns error",
    "failed to lookup address",
    "nodename nor servname",
    "name or service not known",
    "getaddrinfo",
    "eai_again",
    "enotfound",
    "econnrefused",
    "etimedout",
    "connection refused",
    "network is unreachable",
    "tcp connect error",
    "error sending request",
    "could not connect",
    "newconnectionerror",
    "timed out",
)


SIGNS_OF_DISTRUST = (
    "unknownissuer",
    "certificate_verify_failed",
    "self-signed certificate",
    "issuer cert",
)


def sentence(what: str, source: str, failure: StepFailed, log: Path) -> str:
    """Return the sentence for a failed step: what failed, why as far as known, what to do."""
    low = failure.output.lower()
    if any(sign in low for sign in SIGNS_OF_DISTRUST):
        return f"{what} failed: {source} shows a certificate that this machine does not trust."
    if any(sign in low for sign in SIGNS_OF_NO_NETWORK):
        return f"{what} failed: {source} does not answer. Connect to the network and start again."
    lines = [line.strip() for line in failure.output.splitlines() if line.strip()]
    telling = [line for line in lines if "error" in line.lower()] or lines[-1:]
    reason = f" ({telling[0][:200]})" if telling else ""
    return f"{what} failed{reason}. The whole of it is in {log}."
