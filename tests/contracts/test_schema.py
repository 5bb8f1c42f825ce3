"""The OpenAPI document is valid, complete and free of guesses."""

import re

import pytest
from drf_spectacular.drainage import GENERATOR_STATS
from drf_spectacular.generators import SchemaGenerator
from openapi_spec_validator import OpenAPIV31SpecValidator

from tests.contracts import endpoints


@pytest.fixture(scope="module")
def schema():
    GENERATOR_STATS.reset()
    return SchemaGenerator().get_schema(request=None, public=True)


class TestSchema:
    def test_is_served(self, client):
        answer = client.get("/api/v1/schema/")

        assert answer.status_code == 200
        assert answer.json()["openapi"].startswith("3.1")

    def test_is_valid(self, schema):
        assert [str(error.message) for error in OpenAPIV31SpecValidator(schema).iter_errors()] == []

    def test_leaves_nothing_to_guess(self, schema):
        assert schema["paths"]

        doubts = [*GENERATOR_STATS._warn_cache, *GENERATOR_STATS._error_cache]

        assert doubts == []

    def test_says_of_every_call_how_errors_look(self, schema):
        silent = [
            (path, method)
            for path, operations in schema["paths"].items()
            for method, operation in operations.items()
            if method != "parameters" and "default" not in operation["responses"]
        ]

        assert silent == []

    def test_holds_every_address(self, schema):
        routes = {
            "/" + re.sub(r"<(?:\w+:)?(\w+)>", r"{\1}", one.route) for one in endpoints.all_of_them()
        }

        unsaid = routes - set(schema["paths"]) - {"/api/v1/docs/", "/api/v1/schema/"}

        assert {route for route in unsaid if route.startswith("/api/v1/")} == set()
