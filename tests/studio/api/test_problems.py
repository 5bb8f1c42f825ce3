"""What a refusal looks like over the wire."""

from types import MappingProxyType

from studio.api.problems import answer
from studio.domain.refusals import Unworkable


def told(refusal):
    answered = answer(refusal, MappingProxyType({}))
    assert answered is not None
    return answered.data


class TestRefusal:
    def test_stands_beside_the_field_that_it_points_at(self):
        problem = told(Unworkable("Say why.", pointer="#/reason", did_you_mean=12))

        error = {"pointer": "#/reason", "code": "unworkable", "detail": "Say why."}
        assert (problem["status"], problem["errors"]) == (422, [error])
        assert problem["did_you_mean"] == 12

    def test_with_faults_of_its_own_keeps_them(self):
        faults = [{"pointer": "#/rows/1", "code": "odd", "detail": "Row 2 is odd."}]

        assert told(Unworkable("One is odd.", errors=faults))["errors"] == faults

    def test_of_no_field_in_particular_points_at_none(self):
        assert "errors" not in told(Unworkable("It does not work out."))
