"""A load of two makers on two phones: built, settled, called off, built again, fired, unloaded."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from playwright.sync_api import Locator, Page, expect

from tests.journeys.conftest import Phone
from tests.journeys.phones import heard
from tests.services.processes import until

LONDON = ZoneInfo("Europe/London")
NESSAS, JUNS = ("T23", "T24"), ("J06", "L06")
ALL = (*NESSAS, *JUNS)


def piece(page: Page, mark: str) -> dict[str, Any]:
    found: dict[str, Any] = heard(page, f"pieces/?q={mark}")["results"][0]
    return found


def stands(page: Page, mark: str) -> tuple[str, str]:
    """Return where a piece is in the job and in the studio."""
    row = piece(page, mark)
    return row["state"], row["place"]["name"] if row["place"] else ""


def load_of(page: Page, number: str) -> dict[str, Any]:
    rows = heard(page, "loads/")["results"]
    pk = next(row["id"] for row in rows if row["number"] == number)
    found: dict[str, Any] = heard(page, f"loads/{pk}/")["load"]
    return found


def is_now(page: Page, number: str, state: str) -> bool:
    return until(lambda: bool(load_of(page, number)["state"] == state))


def tray(page: Page) -> Locator:
    return page.get_by_role("region", name="What to do")


def act(page: Page, name: str) -> None:
    """Tap an act of the tray; it is dead for 600 ms after an answer, by design."""
    page.wait_for_timeout(700)
    tray(page).get_by_role("button", name=name, exact=True).click()


def call_dry(page: Page, mark: str) -> None:
    page.goto(f"/pieces/{piece(page, mark)['id']}")
    page.get_by_role("button", name="Call it dry").click()
    assert until(lambda: piece(page, mark)["state"] == "bone_dry")


def open_load(page: Page) -> str:
    """Open a load for a bisque in three hours, and return its number."""
    known = {row["number"] for row in heard(page, "loads/")["results"]}
    page.goto("/kilns")
    page.get_by_role("link", name="New load").click()
    starts = datetime.now(LONDON) + timedelta(hours=3)
    page.get_by_label("Starts", exact=True).fill(f"{starts:%Y-%m-%dT%H:%M}")
    page.get_by_role("radio", name="Piet").check()
    page.get_by_role("button", name="Open load").click()

    def fresh() -> list[str]:
        numbers = [row["number"] for row in heard(page, "loads/")["results"]]
        return [number for number in numbers if number not in known]

    assert until(lambda: len(fresh()) == 1)
    return fresh()[0]


def look_at(page: Page, number: str) -> None:
    page.goto("/kilns")
    page.get_by_role("link", name=re.compile(rf"^{number} in K1 Ox")).click()
    expect(page.get_by_role("heading", name=number)).to_be_visible()


def choose(page: Page, *marks: str) -> None:
    act(page, "Add ware")
    # Who goes first is the studio's rule, in words, before anything is tapped.
    expect(page.get_by_role("main")).to_contain_text("A promise inside 14 days first")
    for mark in marks:
        page.get_by_role("button", name=re.compile(rf"^Not chosen: {mark},")).click()


def put_on(page: Page, number: str, *marks: str) -> None:
    choose(page, *marks)
    expect(tray(page)).to_contain_text("Fits")
    act(page, f"Put {len(marks)} on")
    assert until(lambda: set(marks) <= inside(page, number))


def inside(page: Page, number: str) -> set[str]:
    return {row["piece"]["mark"] for row in load_of(page, number)["placements"]}


def settle_and_load(page: Page, number: str) -> None:
    act(page, "Settle load")
    act(page, f"Settle {number}")
    assert is_now(page, number, "settled")
    act(page, "Loading")
    act(page, "Loading")
    assert is_now(page, number, "loading")


def told(page: Page, title: str) -> bool:
    rows = heard(page, "reminders/?state=due")["results"]
    return any(row["title"].startswith(title) for row in rows)


class TestALoadOfTwoMakers:
    def test_is_built_settled_called_off_built_again_fired_and_unloaded(self, phone: Phone) -> None:
        odile, jun = phone("odile"), phone("jun")
        for mark in NESSAS:
            call_dry(odile, mark)
        call_dry(jun, "J06")
        shelves = {mark: stands(odile, mark)[1] for mark in ALL}

        first = open_load(odile)
        look_at(odile, first)
        put_on(odile, first, *NESSAS)
        look_at(jun, first)
        put_on(jun, first, "J06")
        choose(jun, "L06")  # and the hand stays in the air

        # The list is read anew before it is closed, as another phone has put something on it.
        act(odile, "Settle load")
        expect(odile.get_by_role("main")).to_contain_text("Nessa 2")
        expect(odile.get_by_role("main")).to_contain_text("Jun 1")
        act(odile, f"Settle {first}")
        assert is_now(odile, first, "settled")

        # Too late: nothing is put on, and the phone says so, whom to ask and which load is next.
        act(jun, "Put 1 on")
        jun.get_by_role("link", name="not taken").click()
        expect(jun.get_by_role("main")).to_contain_text(f"Not on {first}")
        expect(jun.get_by_role("main")).to_contain_text("Odile Farrant")
        expect(jun.get_by_role("main")).to_contain_text("F-211")
        assert inside(jun, first) == {*NESSAS, "J06"}
        act(jun, "Let it go")

        act(odile, "Loading")
        act(odile, "Loading")
        assert is_now(odile, first, "loading")
        assert stands(jun, "J06") == ("in_bisque", "K1 Ox")
        act(odile, "Call off…")
        odile.get_by_label("Why").fill("vent fan dead")
        act(odile, f"Call off {first}")
        assert is_now(odile, first, "called_off")
        for mark in (*NESSAS, "J06"):
            assert stands(jun, mark) == ("bone_dry", shelves[mark])

        second = open_load(odile)
        look_at(odile, second)
        put_on(odile, second, *ALL)
        settle_and_load(odile, second)
        act(odile, "Lit…")
        boxes = odile.get_by_role("checkbox")
        asked = boxes.count()
        assert asked > 0
        for number in range(asked):
            boxes.nth(number).check()
        expect(odile.get_by_role("main")).to_contain_text(f"Looked at: {asked} of {asked}")
        act(odile, "Lit")
        assert is_now(odile, second, "firing")
        expect(odile.get_by_role("main")).to_contain_text("Looked at: ")

        tray(odile).get_by_role("link", name="Reading").click()
        for key in "62":
            odile.get_by_role("button", name=key, exact=True).click()
        odile.get_by_role("button", name="Save").click()
        assert until(lambda: len(load_of(odile, second)["readings"]) == 1)
        assert load_of(odile, second)["readings"][0]["reading_c"] == 62.0

        odile.goto(f"/loads/{load_of(odile, second)['id']}")
        act(odile, "More…")
        odile.get_by_role("button", name="Ended…").click()
        odile.get_by_role("radio", name="Fired", exact=True).check()
        act(odile, "Ended")
        assert is_now(odile, second, "cooling")
        act(odile, "Open…")
        odile.get_by_label(re.compile("^It reads")).fill("240")
        act(odile, "Opened")  # too hot: nothing is sent
        expect(odile.get_by_role("main")).to_contain_text("Hot air burns")
        odile.get_by_label(re.compile("^It reads")).fill("61")
        act(odile, "Opened")
        assert is_now(odile, second, "opened")

        act(odile, "Cones")
        firing_cone = odile.get_by_role("group", name=re.compile("^The firing cone"))
        firing_cone.get_by_role("radio", name=re.compile("^6")).check()
        act(odile, "Keep 1")
        assert until(lambda: len(load_of(odile, second)["cones"]) == 1)
        assert load_of(odile, second)["cones"][0]["clock_hand"] == 6

        act(odile, "Unload")
        act(odile, "Shelf by shelf")
        while tray(odile).get_by_role("button", name="Next shelf").count():
            act(odile, "Next shelf")
        act(odile, "Where put")
        odile.get_by_role("button", name="Rack C2", exact=True).click()
        assert is_now(odile, second, "unloaded")
        for mark in ALL:
            assert stands(jun, mark) == ("bisqued", "Rack C2")

        jun.goto(f"/pieces/{piece(jun, 'J06')['id']}")
        expect(jun.get_by_role("main")).to_contain_text("Bisqued")
        # The sweep tells each maker within a minute; a slow machine may take longer.
        assert until(lambda: told(jun, f"{first} is called off"), within_s=150)
        assert until(lambda: told(jun, f"Your ware of {second} is out"), within_s=150)
