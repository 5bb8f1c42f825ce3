"""The four apps, their layers and their tests mirror each other."""

import ast
import re
from functools import cache

import pytest

from studio.project.settings import ROOT
from tests.contracts import endpoints

APPS = ("studio", "moulds", "pieces", "firings")
LAYERS = {"domain", "models", "queries", "actions", "api", "management", "migrations"}
# What only the studio has: the settings that know every app, and pages that are not the API's.
ONLY_STUDIO = {"project", "docs", "templates"}
ONLY_FIRINGS = {"demo"}
MODULES = {"__init__", "apps", "permissions", "tasks", *LAYERS}
LONGEST = 300


def sources(*folders):
    return sorted(
        path
        for folder in folders
        for path in (ROOT / folder).rglob("*.py")
        if "migrations" not in path.parts and path.stat().st_size
    )


def named(path):
    return str(path.relative_to(ROOT))


SOURCES = sources(*APPS)
ENDPOINTS = [e for e in endpoints.all_of_them() if e.view.__module__.startswith(APPS)]
TESTS = [path for path in sources("tests") if path.name.startswith("test_")]


@cache
def imported_by_tests():
    """Return what tests import: modules, and names in them, which may be modules too."""
    return {
        name
        for path in sources("tests")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        for name in imports(node)
    }


def imports(node):
    if isinstance(node, ast.Import):
        return [alias.name for alias in node.names]
    if isinstance(node, ast.ImportFrom):
        return [f"{node.module}", *(f"{node.module}.{alias.name}" for alias in node.names)]
    return []


@pytest.mark.parametrize("app", APPS)
class TestApp:
    def test_has_no_folder_but_its_layers(self, app):
        allowed = LAYERS | {"studio": ONLY_STUDIO, "firings": ONLY_FIRINGS}.get(app, set())

        folders = {p.name for p in (ROOT / app).iterdir() if p.is_dir()} - {"__pycache__"}

        assert folders <= allowed

    def test_has_no_module_beside_its_layers(self, app):
        assert {p.stem for p in (ROOT / app).glob("*.py")} <= MODULES

    def test_is_tested(self, app):
        assert list((ROOT / "tests" / app).rglob("test_*.py"))


@pytest.mark.parametrize("path", SOURCES, ids=named)
class TestSource:
    def test_can_be_read_in_one_sitting(self, path):
        lines = path.read_text(encoding="utf-8").count("\n")

        assert lines <= LONGEST

    def test_listens_to_no_signals(self, path):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        imported = [name for node in ast.walk(tree) for name in imports(node)]

        assert not [name for name in imported if re.search(r"django\..*(signals|dispatch)", name)]

    def test_says_what_it_is_for(self, path):
        module = ast.parse(path.read_text(encoding="utf-8"))

        if any(isinstance(node, ast.FunctionDef | ast.ClassDef) for node in module.body):
            is_plain = path.stem in {"apps", "0001_initial"}
            assert is_plain or ast.get_docstring(module)


@pytest.mark.parametrize(
    "path", [p for p in TESTS if p.relative_to(ROOT).parts[1] in APPS], ids=named
)
class TestTest:
    def test_stands_where_its_source_stands(self, path):
        _, *folders, name = path.relative_to(ROOT).parts
        source = ROOT.joinpath(*folders, name.removeprefix("test_"))

        # A layer, or a package inside it, may be tested by topic too; outside the layers are whole
        # programs, which are tested from without.
        layer = ".".join(folders)
        tree = ast.parse(path.read_text(encoding="utf-8"))
        is_topic = any(name.startswith(layer) for node in ast.walk(tree) for name in imports(node))
        is_program = len(folders) > 1 and folders[1] in ONLY_STUDIO | ONLY_FIRINGS
        assert source.exists() or source.with_suffix("").is_dir() or is_topic or is_program


@pytest.mark.parametrize(
    "path", [p for p in SOURCES if "domain" in p.parts and p.stem != "__init__"], ids=named
)
class TestDomain:
    def test_is_tested(self, path):
        """By a test that bears its name or imports it, or the package whose inside it is."""
        *folders, _ = path.relative_to(ROOT).parts
        faces = {".".join([*folders, path.stem])}
        if folders[-1] != "domain":
            faces.add(".".join(folders))

        named_after = ROOT.joinpath("tests", *folders, f"test_{path.name}")
        assert named_after.exists() or faces & imported_by_tests()


@pytest.mark.parametrize("module", sorted({e.view.__module__ for e in ENDPOINTS}))
class TestEndpoints:
    def test_are_tested_by_module(self, module):
        *folders, name = module.split(".")

        homes = (folders, ["contracts"])
        tests = [ROOT.joinpath("tests", *home, f"test_{name}.py") for home in homes]
        assert any(test.exists() for test in tests)
