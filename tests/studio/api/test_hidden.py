import pytest

from studio.api.hidden import LEFT_OUT, cut


class TestCut:
    @pytest.mark.parametrize(
        "private",
        ["nell@barn.example", "01632 960961", "+44 1632 960961", "£140", "12.50 EUR", "9 pounds"],
    )
    def test_leaves_out_contacts_and_amounts_that_people_wrote(self, private):
        shown = cut({"rows": [{"note": f"She says {private}, by Friday."}]})

        assert shown == {"rows": [{"note": f"She says {LEFT_OUT}, by Friday."}]}

    @pytest.mark.parametrize(
        "plain",
        [
            "2026-10-31T09:00:00.000000Z",
            "2026-10-31T09:00:00+01:00",
            "01920000-1234-7890-8123-012345678901",
            "/api/v1/studios/yard/pieces/01920000-1234-7890-8123-012345678901/",
            "T01 to T24, 150 mm, 0.43, 1060 °C, cone 06",
        ],
    )
    def test_lets_dates_ids_and_measures_stand(self, plain):
        assert cut([plain, 7, None, True]) == [plain, 7, None, True]

    def test_leaves_out_names_as_whole_words(self):
        words = {"Dr E. Wainfleet", "Wainfleet"}

        shown = cut("For Dr E. Wainfleet; Wainfleet’s boats, not Wainfleeter.", words)

        assert shown == f"For {LEFT_OUT}; {LEFT_OUT}’s boats, not Wainfleeter."

    def test_leaves_out_fields_by_their_name_however_deep(self):
        answer = {"client_name": "N", "price_minor": 5, "in": ({"minor": 1, "contact": "table"},)}

        assert cut(answer) == {"client_name": "", "in": [{"contact": "table"}]}
