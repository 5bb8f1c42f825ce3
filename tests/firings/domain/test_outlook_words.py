from datetime import date

from firings.domain import outlook_words as words
from firings.domain.survival import FirstTime

TODAY = date(2026, 10, 31)


class TestWords:
    def test_say_how_likely_without_a_figure(self):
        said = [words.likely(chance) for chance in (1.0, 0.94, 0.7, 0.5, 0.2, 0.0)]

        assert said == [
            "very likely",
            "likely",
            "more likely than not",
            "as likely as not",
            "unlikely",
            "hardly",
        ]
        assert words.enough(0.98, date(2026, 12, 18), is_all_there=False) == (
            "very likely enough by 18 Dec 2026"
        )
        assert words.enough(0.98, None, is_all_there=True) == "all that was wanted is finished"

    def test_say_how_many_more(self):
        assert words.press({"jar": 2, "lid": 1}) == "press 2 × jar and 1 × lid more"
        assert words.press({"": 3}) == "press 3 more"
        assert words.press({"jar": 0}) == "no more need be pressed"
        assert words.press(None).startswith("more than 200")

    def test_say_by_when(self):
        assert words.latest(date(2026, 11, 12), TODAY, 0.8) == "for 80 in 100 press by 12 Nov 2026"
        assert words.latest(date(2026, 10, 12), TODAY, 0.9) == "for 90 in 100 it was 12 Oct 2026"

    def test_say_the_likely_days(self):
        assert words.range_words(date(2026, 12, 4), date(2026, 12, 12)) == (
            "likely 4 Dec 2026 to 12 Dec 2026"
        )
        assert words.range_words(None, None) == ""

    def test_cut_long_lists(self):
        assert words.listed([f"T{n}" for n in range(1, 9)]) == "T1, T2, T3, T4, T5, T6 and 2 more"

    def test_give_no_first_time_success_as_a_figure_of_few(self):
        assert words.first_time(FirstTime(good=1, of=3)) == (
            "1 of 3 good after one glaze firing, too few for a figure"
        )
        assert words.first_time(FirstTime(good=20, of=24)) == "20 of 24 good after one glaze firing"
