"""Every way of saying no has a name of its own, a sentence, and a line in DEVELOPERS.md."""

import re
from collections import Counter

import pytest

from studio.api import problems
from studio.management.commands import refusals

ALL = refusals.refusals()
LINE = re.compile(r"^\| `(?P<code>[^`]+)` \| (?P<kind>\w+) \| (?P<title>.+) \|$", re.MULTILINE)


@pytest.fixture(scope="module")
def written():
    """The table of DEVELOPERS.md under "Saying no": code to kind and title."""
    paper = refusals.PAPER.read_text(encoding="utf-8")
    _, _, section = paper.partition(refusals.HEADING)
    section, _, _ = section.partition("\n## ")
    return {m["code"]: (m["kind"], m["title"]) for m in LINE.finditer(section)}


@pytest.mark.parametrize("refusal", ALL, ids=lambda refusal: refusal.code)
class TestRefusal:
    def test_has_a_code_in_kebab_case(self, refusal):
        assert re.fullmatch(r"[a-z]+(-[a-z0-9]+)+", refusal.code)
        assert "code" in vars(refusal)

    def test_has_a_title_that_is_a_sentence(self, refusal):
        assert "title" in vars(refusal)
        assert refusal.title.endswith(".")
        assert refusal.title[0].isupper()

    def test_is_of_one_kind_that_has_a_status(self, refusal):
        kinds = [kind for kind in refusals.KINDS if issubclass(refusal, kind)]

        assert len(kinds) == 1
        assert problems.STATUS_OF[kinds[0]] in {403, 404, 409, 413, 422}

    def test_stands_in_the_table_of_developers_md(self, refusal, written):
        said = written.get(refusal.code)

        assert said == (refusals.kind_of(refusal).__name__, refusal.title), (
            "Run `python3 manage.py refusals --write`."
        )


def test_codes_are_unique():
    codes = Counter([*(refusal.code for refusal in ALL), *problems.TITLES])

    assert [code for code, times in codes.items() if times > 1] == []


def test_table_tells_of_nothing_that_is_gone(written):
    assert set(written) - {refusal.code for refusal in ALL} == set()
