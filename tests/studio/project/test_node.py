from pathlib import Path
from typing import Any

import pytest

from studio.project import node
from studio.project.node import Node
from studio.project.steps import CannotGoOn, StepFailed, Steps


class Recorder(Steps):
    """Notes what would be run; a build leaves its page."""

    def __init__(self, root: Path, failing: str = "") -> None:
        super().__init__(root / "log")
        self.root = root
        self.failing = failing
        self.titles: list[str] = []

    def run(self, title: str, command: Any, **_: Any) -> str:
        self.titles.append(title)
        if title == self.failing:
            raise StepFailed("npm error code ENOTFOUND\nnpm error network request failed")
        if title == "Installing front-end packages":
            (self.root / "frontend" / "node_modules").mkdir()
        if title == "Building the front end":
            (self.root / "frontend" / "dist").mkdir()
            (self.root / "frontend" / "dist" / "index.html").touch()
        return ""


@pytest.fixture
def checkout(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    source = tmp_path / "frontend" / "src"
    source.mkdir(parents=True)
    (source / "main.ts").write_text("start();")
    for name in ("package.json", "package-lock.json"):
        (tmp_path / "frontend" / name).write_text("{}")
    monkeypatch.setattr(node, "find_node", lambda: Node(Path("/usr/bin/node"), ("npm",)))
    return tmp_path


class TestIsNewEnough:
    @pytest.mark.parametrize(
        "version", ["v20.19.0", "v20.20.2", "v22.12.0\n", "v23.1.0", "v24.0.0"]
    )
    def test_takes(self, version: str) -> None:
        assert node.is_new_enough(version)

    @pytest.mark.parametrize("version", ["v18.20.4", "v20.18.1", "v21.7.3", "v22.11.0", "", "node"])
    def test_refuses(self, version: str) -> None:
        assert not node.is_new_enough(version)


class TestBuildFrontEnd:
    def test_installs_and_builds_once(self, checkout: Path) -> None:
        notes: dict[str, str] = {}
        first, second = Recorder(checkout), Recorder(checkout)

        node.build_front_end(checkout, Path("python"), first, notes)
        node.build_front_end(checkout, Path("python"), second, notes)

        assert first.titles == [
            "Installing front-end packages",
            "Building the front end",
            "Compressing it",
        ]
        assert second.titles == []

    def test_builds_alone_when_only_a_source_changed(self, checkout: Path) -> None:
        notes: dict[str, str] = {}
        node.build_front_end(checkout, Path("python"), Recorder(checkout), notes)
        (checkout / "frontend" / "src" / "main.ts").write_text("start(now);")
        (checkout / "frontend" / "dist" / "index.html").unlink()
        (checkout / "frontend" / "dist").rmdir()
        steps = Recorder(checkout)

        node.build_front_end(checkout, Path("python"), steps, notes)

        assert steps.titles == ["Building the front end", "Compressing it"]

    def test_tells_a_missing_network_from_a_fault(self, checkout: Path) -> None:
        steps = Recorder(checkout, failing="Installing front-end packages")

        with pytest.raises(CannotGoOn, match="the npm registry does not answer"):
            node.build_front_end(checkout, Path("python"), steps, {})

    def test_installs_node_when_there_is_none(self, checkout: Path, monkeypatch: Any) -> None:
        monkeypatch.setattr(node, "find_node", lambda: None)
        steps = Recorder(checkout)

        node.build_front_end(checkout, Path("python"), steps, {})

        assert steps.titles[0] == "Installing Node"


class TestSourceFiles:
    def test_pass_over_what_the_build_makes(self, checkout: Path) -> None:
        folder = checkout / "frontend"
        for name in ("node_modules", "dist"):
            (folder / name).mkdir()
            (folder / name / "made.js").touch()
        (folder / "tsconfig.tsbuildinfo").touch()

        names = {file.name for file in node.source_files(folder)}

        assert names == {"main.ts", "package.json", "package-lock.json"}
