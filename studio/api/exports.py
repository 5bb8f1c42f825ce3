"""For owners: all that the studio has, to take away."""

import tempfile
from collections.abc import Iterator

from django.http import StreamingHttpResponse
from django.utils import timezone
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request

from studio.models import Studio
from studio.permissions import P
from studio.queries import exports

from .views import StudioView

MEDIA_TYPE = "application/zip"
BLOCK_BYTES = 1 << 18


class Exports(StudioView):
    for_shared_phone = False
    needs = {"GET": P.READ_EVERYTHING}

    @extend_schema(operation_id="exports_read", responses={(200, MEDIA_TYPE): OpenApiTypes.BINARY})
    def get(self, request: Request) -> StreamingHttpResponse:
        """Give a zip of tables (CSV) and photos with all that the studio has."""
        blocks = _blocks(self.studio)
        next(blocks)  # written by now: what goes wrong is told before the answer begins
        answer = StreamingHttpResponse(blocks, content_type=MEDIA_TYPE)
        name = f"{self.studio.slug}-{timezone.now().date().isoformat()}.zip"
        answer["Content-Disposition"] = f'attachment; filename="{name}"'
        return answer


def _blocks(studio: Studio) -> Iterator[bytes]:
    """Write the zip to the disk, give nothing, then give it block by block."""
    with tempfile.TemporaryFile() as paper:
        exports.write(studio, paper)
        paper.seek(0)
        yield b""
        while block := paper.read(BLOCK_BYTES):
            yield block
