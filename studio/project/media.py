"""Files kept beside the database: whole and on the disk before anybody is told that they are."""

import os
import tempfile
from pathlib import Path

from django.core.files.base import File
from django.core.files.storage import FileSystemStorage


class KeptFiles(FileSystemStorage):
    """Keeps files whose name is the digest of what is in them, so that one name is one content."""

    def get_available_name(self, name: str, max_length: int | None = None) -> str:
        return name

    def _save(self, name: str, content: File) -> str:
        """Write aside, flush, rename: a phone forgets its photo once it is told that we have it."""
        file = Path(self.path(name))
        file.parent.mkdir(parents=True, exist_ok=True)
        number, draft = tempfile.mkstemp(dir=file.parent)
        try:
            with open(number, "wb") as paper:  # noqa: PTH123  (an open descriptor)
                for chunk in content.chunks():
                    paper.write(chunk)
                paper.flush()
                os.fsync(paper.fileno())
            Path(draft).replace(file)
        except BaseException:
            Path(draft).unlink()
            raise
        folder = os.open(file.parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)
        return name
