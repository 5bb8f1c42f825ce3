from firings.domain.warm_hold import Inside, warm_hold_for_all


class TestWarmHoldForAll:
    def test_names_the_thick_and_whoever_waits_with_it(self):
        inside = [
            Inside("B05", "Piet", True),
            Inside("T21", "Nessa", False),
            Inside("J05", "Jun", False),
            Inside("T22", "Nessa", False),
        ]

        said = warm_hold_for_all(inside)

        assert said is not None
        assert said.detail == (
            "Thick: B05. Add about 6 h below 100 °C for the whole load? "
            "Ask the others in it. Jun: J05; Nessa: T21, T22."
        )

    def test_asks_nobody_where_all_is_thick(self):
        said = warm_hold_for_all([Inside("B05", "Piet", True)])

        assert said is not None
        assert said.detail.endswith("for the whole load?")

    def test_says_nothing_where_nothing_is_thick(self):
        assert warm_hold_for_all([Inside("T21", "Nessa", False)]) is None
