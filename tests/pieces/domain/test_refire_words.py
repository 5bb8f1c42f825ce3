from pieces.domain import refire_words as words


class TestTicket:
    def test_says_what_was_wrong_and_what_was_mended(self):
        said = words.ticket("glaze", "6", "crawled", ["ground", "glazed_thicker"])

        assert said == (
            "waits for a glaze firing, cone 6: crawled; ground back, glazed again thickly"
        )

    def test_says_only_the_cone_of_ware_fired_the_first_time(self):
        assert words.ticket("bisque", "04", "", []) == "waits for a bisque firing, cone 04"
