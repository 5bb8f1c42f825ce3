import io

import pytest
from rest_framework.exceptions import ParseError

from studio.api.parsers import JSONParser


class TestJSONParser:
    def test_works(self):
        assert JSONParser().parse(io.BytesIO('{"a": ["½", 1.5]}'.encode())) == {"a": ["½", 1.5]}

    @pytest.mark.parametrize(
        "body",
        [b"", b"{", b"NaN", b'"\\ud800"', b"\xff", b"[" * 20000 + b"]" * 20000],
        ids=["empty", "cut short", "NaN", "half a character", "not UTF-8", "nested too deep"],
    )
    def test_refuses(self, body):
        with pytest.raises(ParseError):
            JSONParser().parse(io.BytesIO(body))
