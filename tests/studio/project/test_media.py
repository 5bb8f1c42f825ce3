from pathlib import Path

import pytest
from django.core.files.base import ContentFile

from studio.project.media import KeptFiles


class Interrupted(Exception):
    pass


class Breaking(ContentFile):
    """A file that breaks off in the middle, as when the machine dies."""

    def chunks(self, chunk_size: int | None = None):
        yield b"half of"
        raise Interrupted


class TestKeptFiles:
    def test_keep_a_file_under_the_very_name_it_was_given(self, tmp_path: Path) -> None:
        kept = KeptFiles(location=tmp_path)

        names = [kept.save("a/b.jpg", ContentFile(b"a picture")) for _ in range(2)]

        assert names == ["a/b.jpg", "a/b.jpg"]
        assert [p.name for p in tmp_path.rglob("*") if p.is_file()] == ["b.jpg"]
        with kept.open("a/b.jpg") as file:
            assert file.read() == b"a picture"

    def test_never_show_half_a_file(self, tmp_path: Path) -> None:
        kept = KeptFiles(location=tmp_path)

        with pytest.raises(Interrupted):
            kept.save("a/b.jpg", Breaking(b""))

        assert [p for p in tmp_path.rglob("*") if p.is_file()] == []
