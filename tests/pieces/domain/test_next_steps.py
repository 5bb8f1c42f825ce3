from pieces.domain import next_steps, stages


class TestWaitsFor:
    def test_names_what_nobody_made_yet(self):
        words = next_steps.waits_for(stages.OUT, ["knop", "handle"], is_one_part=False)

        assert words == "its knop and handle to be made"

    def test_waits_for_nothing_once_it_is_gone(self):
        assert next_steps.waits_for(stages.DELIVERED, [], is_one_part=True) is None
        assert next_steps.waits_for(stages.SCRAPPED, [], is_one_part=True) is None

    def test_says_something_of_every_live_spot(self):
        gone = {stages.DELIVERED, stages.SCRAPPED, stages.LET_GO}
        live = [spot for spot in stages.SPOTS if spot not in gone]

        assert all(next_steps.waits_for(spot, [], is_one_part=False) for spot in live)


class TestNexts:
    def test_offers_no_pressing_and_no_skipped_firing(self):
        assert next_steps.nexts(stages.TO_PRESS, is_one_part=True) == [stages.OUT]
        assert next_steps.nexts(stages.BONE_DRY, is_one_part=True) == [stages.IN_BISQUE]

    def test_offers_a_missing_piece_where_it_was_missed(self):
        found = next_steps.nexts(stages.MISSING, is_one_part=True, missed_at=stages.GLAZED)

        assert found == [stages.GLAZED]
        assert next_steps.nexts(stages.SCRAPPED, is_one_part=True) == []


class TestBacks:
    def test_offers_what_a_reason_opens(self):
        assert next_steps.backs(stages.BONE_DRY, is_one_part=False) == [
            stages.OUT,
            stages.JOINED,
            stages.DRYING,
        ]

    def test_offers_no_way_out_of_the_scrap(self):
        assert next_steps.backs(stages.SCRAPPED, is_one_part=False) == []
