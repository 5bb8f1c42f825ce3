import pytest

from studio.models import FrozenCopy, JournalEntry
from studio.queries.frozen import NotAsKept, body_of, digest_of

BODY = b"%PDF-1.4 what was signed"


def copy_of(body=BODY, *, row_says=BODY, journal_says=BODY):
    entry = JournalEntry(facts={"sha256": digest_of(journal_says)})
    return FrozenCopy(body=body, sha256=digest_of(row_says), entry=entry)


class TestBody:
    def test_is_what_was_kept(self):
        assert body_of(copy_of()) == BODY

    @pytest.mark.parametrize(
        "changed", [{"body": b"x"}, {"row_says": b"x"}, {"body": b"x", "row_says": b"x"}]
    )
    def test_is_not_given_out_where_the_journal_says_otherwise(self, changed):
        with pytest.raises(NotAsKept):
            body_of(copy_of(**changed))
