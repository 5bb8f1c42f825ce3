"""Papers read back from their PDF: what was said is there, and nothing of it was markup."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from studio.domain.sheets import Facts, Heading, Paper, Sheet, Table, Text, drawn
from studio.domain.sheets.letters import BOLD, MORE, faces, marked_up, plain, printable


def read(*texts, title="C-102"):
    blocks = [Text(text) for text in texts]
    return PdfReader(BytesIO(drawn(Paper(title, [Sheet("History", blocks)], "draft"))))


def words(*texts):
    return " ".join(page.extract_text() for page in read(*texts).pages)


class TestDrawn:
    def test_is_the_same_bytes_for_the_same_paper(self):
        paper = Paper("C-102", [Sheet("History", [Text("pressed")])], "draft")

        assert drawn(paper) == drawn(paper)

    def test_puts_every_sheet_on_a_page_with_its_foot(self):
        sheets = [Sheet("History", [Text("pressed")]), Sheet("Care", [Heading("Washing")])]
        pages = PdfReader(BytesIO(drawn(Paper("C-102", sheets, "Sallowbeck Yard")))).pages

        feet = [page.extract_text().split("\n")[0] for page in pages]
        assert feet == ["Sallowbeck Yard · page 1", "Sallowbeck Yard · page 2"]
        assert "Washing" in pages[1].extract_text()

    def test_holds_facts_and_tables_over_many_pages(self):
        table = Table(["Mark", "What"], [[f"T{n:03}", "tile"] for n in range(200)], [1, 3])
        blocks = [Facts([("Client", "Dr E. Wainfleet")]), table]
        pages = PdfReader(BytesIO(drawn(Paper("C", [Sheet("H", blocks)], "f")))).pages

        assert len(pages) > 3
        assert all("Mark" in page.extract_text() for page in pages)
        assert "T199" in pages[-1].extract_text()


class TestTexts:
    @pytest.mark.parametrize(
        "text",
        [
            "<img src=x onerror=alert(1)>",
            "<b>bold</b> & <font name='x'>",
            "</para><para>",
            "&lt;already&gt;",
        ],
    )
    def test_are_printed_and_never_read_as_markup(self, text):
        assert text in words(text)
        assert read("x", title=text).metadata.title == text

    @pytest.mark.parametrize(
        "text", ["café, déjà", "Łódź", "Čapek, Őrség", "Ivan Шевченко", "Ελένη", "Ø 430 × 570 mm²"]
    )
    def test_keep_their_accents_and_letters(self, text):
        assert text in words(text)

    def test_show_what_no_face_has_as_its_code_point(self):
        assert "jar [U+1F3FA]!" in words("jar 🏺!")

    def test_are_read_from_the_right_where_the_letters_are(self):
        assert marked_up("שלום") == f'<font name="{MORE}">םולש</font>'

    def test_lose_what_only_steers(self):
        assert printable("T\u200b01\u202e\x07") == "T01"
        assert plain("one\n two\u2066") == "one two"

    def test_break_where_they_break(self):
        assert marked_up("one\ntwo") == "one<br/>two"

    def test_of_a_very_long_word_stay_on_the_page(self):
        assert len(read("x" * 4000).pages) == 1


class TestFaces:
    @pytest.mark.parametrize("name", ["NatchPaper", BOLD])
    def test_have_what_a_paper_says(self, name):
        wanted = "Aé ł ű ß £ ° ± · × ½ – ’ “ ” … − ² 0123456789 < > &"

        assert {ord(c) for c in wanted if c != " "} <= faces()[name]
