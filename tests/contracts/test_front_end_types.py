"""The front end's types are of the API as it is: neither older than it, nor changed by hand.

The generator writes two digests at their head, so that this needs no second run of it.
"""

import hashlib

from drf_spectacular.renderers import OpenApiJsonRenderer

from studio.project.settings import ROOT
from tests.contracts import endpoints

TYPES = ROOT / "frontend" / "src" / "api" / "schema.d.ts"
AGAIN = "Write them again: manage.py spectacular --format openapi-json, then npm run schema."


def digest(text: bytes) -> str:
    return hashlib.sha256(text).hexdigest()


class TestFrontEndTypes:
    def test_are_of_the_document_that_is_served(self):
        _, document, _, _ = TYPES.read_bytes().split(b"\n", 3)
        served = OpenApiJsonRenderer().render(endpoints.schema(), renderer_context={})

        assert document.decode() == f"// document {digest(served)}", AGAIN

    def test_stand_as_they_were_written(self):
        _, _, types, body = TYPES.read_bytes().split(b"\n", 3)

        assert types.decode() == f"// types {digest(body)}", AGAIN
