from uuid import UUID

from firings.domain.load_clashes import clash_id, left_out, stories
from firings.domain.loads import Quarrel

OFF, LIT, ENDED, ALONE = (UUID(int=number) for number in range(1, 5))


class TestStories:
    def test_are_one_where_all_quarrel_with_the_same_act(self):
        (told,) = stories([Quarrel(LIT, OFF), Quarrel(ENDED, OFF), Quarrel(ALONE, None)])

        assert (told.first, told.second, told.on_top) == (OFF, LIT, (ENDED,))

    def test_take_back_all_that_was_told_on_top_the_last_first(self):
        (told,) = stories([Quarrel(LIT, OFF), Quarrel(ENDED, OFF)])

        assert left_out(told, "first") == (ENDED, LIT)
        assert left_out(told, "second") == (OFF,)

    def test_have_one_id_whoever_is_named_first(self):
        assert clash_id(OFF, LIT) == clash_id(LIT, OFF)
