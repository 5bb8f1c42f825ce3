import pytest

from moulds.actions import parts
from moulds.models import Design
from moulds.queries.designs import readiness_of, readiness_of_many
from tests import factories
from tests.moulds import yard


@pytest.fixture
def design(studio):
    design = factories.design(studio)
    factories.design_part(design, "body")
    return design


class TestReadinessOf:
    def test_waits_for_a_model_without_a_master(self, design):
        factories.master(design, is_ready=False)

        assert readiness_of(design) == "model"

    def test_waits_for_a_mould_when_the_master_is_ready(self, design):
        factories.master(design)

        assert readiness_of(design) == "mould"

    def test_may_be_pressed_from_a_casting_in_use(self, design, maker):
        yard.poured(maker[0], factories.mould_set(design.parts.get()))

        assert readiness_of(design) == "pressing"

    def test_waits_for_a_mould_while_the_only_one_is_out_of_use(self, design, maker):
        casting = yard.poured(maker[0], factories.mould_set(design.parts.get()))
        act = factories.act(maker[0])
        parts.tell(act=act, mould_part=casting.parts.first(), kind="out_of_use", reason="chip")

        assert readiness_of(design) == "mould"

    def test_waits_for_the_part_that_is_furthest_behind(self, design, maker):
        handle = factories.design_part(design, "handle")
        master = factories.master(design, part=design.parts.get(role="body"))
        yard.poured(maker[0], factories.mould_set(design.parts.get(role="body")), master=master)

        assert readiness_of(design) == "model"
        factories.master(design, part=handle)
        assert readiness_of(design) == "mould"

    def test_ignores_what_is_not_required_or_not_moulded(self, design, maker):
        yard.poured(maker[0], factories.mould_set(design.parts.get()))
        factories.design_part(design, "swag", is_required=False)
        factories.design_part(design, "coil", method="coiled")

        assert readiness_of(design) == "pressing"

    def test_begins_at_assembly_without_moulds(self, studio):
        thrown = factories.design(studio, uses_moulds=False)
        coiled = factories.design(studio)
        factories.design_part(coiled, "wall", method="coiled")

        assert [readiness_of(thrown), readiness_of(coiled)] == ["assembly", "assembly"]


class TestReadinessOfMany:
    def test_agrees_with_one_at_a_time_in_four_queries(
        self, studio, shelves, django_assert_max_num_queries
    ):
        designs = list(Design.objects.of(studio))

        with django_assert_max_num_queries(4):
            many = readiness_of_many(designs)

        assert many == {design.pk: readiness_of(design) for design in designs}
        assert {design.name: many[design.pk] for design in designs} == {
            "barley tile": "pressing",
            "sauce boat": "pressing",
            "jar": "pressing",
            "jar lid": "pressing",
            "inkstand": "pressing",
            "bracket": "mould",
        }
