"""Help pages: that they are there, plain, and that what they show works."""

import io
import json
import re
import sys
from html.parser import HTMLParser

import pytest
from django.test import Client

from studio.api.help import DOCS, PAGES
from studio.models import ClimateReading
from studio.queries.people import members
from tests import factories

ADDRESSES = ["/help/", *[f"/help/{name}/" for name in PAGES if name != "index"]]


class Links(HTMLParser):
    """Gathers what a page refers to, and every trace of style or script inside it."""

    def __init__(self) -> None:
        super().__init__()
        self.links: list[str] = []
        self.inside: list[str] = []

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        self.links += [given[name] for name in ("href", "src") if name in given]
        if tag in {"script", "style"} or "style" in given:
            self.inside.append(tag)


def read(client, address):
    page = Links()
    answer = client.get(address)
    assert answer.status_code == 200, address
    page.feed(answer.content.decode())
    return answer, page


class TestPage:
    @pytest.mark.parametrize("address", [*ADDRESSES, "/api/v1/docs/"])
    def test_works_for_anybody_within_the_content_policy(self, client, db, address):
        answer, page = read(client, address)

        assert page.inside == []
        assert all(link.startswith(("/", "#", "data:,")) for link in page.links)
        assert "<h1>" in answer.content.decode()

    def test_says_what_a_call_takes_and_answers(self, client, db):
        page = client.get("/api/v1/docs/").content.decode()

        part = page[page.index("S/places/{place_id}/readings/") :]
        for word in (
            "gives means of even steps instead",
            "humidity_fraction",
            "every_s",
            "results",
        ):
            assert word in part[:6000]

    def test_leads_nowhere_that_is_not(self, client, db):
        links = {link for address in ADDRESSES for link in read(client, address)[1].links}

        broken = [link for link in links - {"/", "data:,"} if client.get(link).status_code != 200]

        assert broken == []

    @pytest.mark.parametrize("address", ["/help/index/", "/help/nothing/", "/help/../settings/"])
    def test_is_missing_where_there_is_none(self, client, db, address):
        assert client.get(address).status_code == 404

    def test_never_says_safe(self):
        words = " ".join(file.read_text().lower() for file in DOCS.glob("*.md"))

        assert not re.search(r"\b(food-safe|is safe|are safe|safely)\b", words)

    def test_has_every_page_on_the_list(self):
        assert {file.stem for file in DOCS.glob("*.md")} == set(PAGES)

    def test_gives_the_colours_of_the_front_end(self, client):
        style = client.get("/help/house.css")

        assert style.headers["Content-Type"].startswith("text/css")
        assert b"--paper: #F3F6F5" in style.content
        face = b"".join(client.get("/help/natch-sans.woff2").streaming_content)
        assert face.startswith(b"wOF2")


def script(number):
    """Return one of the two scripts on the page about readings."""
    text = (DOCS / "climate-readings.md").read_text()
    return re.findall(r"```python\n(.*?)```", text, re.DOTALL)[number]


def run(code, monkeypatch, *words):
    out = io.StringIO()
    monkeypatch.setattr(sys, "argv", ["script.py", *words])
    monkeypatch.setattr(sys, "stdout", out)
    exec(compile(code, "script.py", "exec"), {"__name__": "__main__"})
    monkeypatch.undo()
    return out.getvalue().strip()


class TestScripts:
    def test_make_a_token_and_send_a_reading(self, unlocked_journal, live_server, monkeypatch):
        studio = factories.studio("yard", owner=factories.person("Orla"))
        room = factories.place(studio)
        username = members(studio).get().user.username
        address = live_server.url

        monkeypatch.setattr("getpass.getpass", lambda: factories.PASSWORD)
        key = run(script(0), monkeypatch, address, "yard", username)
        monkeypatch.setenv("NATCH_TOKEN", key)
        url = f"{address}/api/v1/studios/yard/places/{room.pk}/readings/"
        answer = run(script(1), monkeypatch, url, "13.4", "71")

        assert answer.startswith("201 ")
        assert json.loads(answer[4:])["reading"]["use"] == "used"
        assert ClimateReading.objects.get(place=room).humidity_fraction == pytest.approx(0.71)

    def test_the_table_on_the_page_is_read(self, studio, maker):
        room = factories.place(studio)
        text = (DOCS / "climate-readings.md").read_text()
        table = re.search(r"```\n(taken_at.*?)```", text, re.DOTALL)[1]
        client: Client = maker[1]

        path = f"/api/v1/studios/yard/places/{room.pk}/readings/"
        answer = client.post(path, table, content_type="text/csv")

        assert answer.json()["stored"] == 3
