"""Photos as cameras write them, made on the spot."""

import io
import struct
import zlib
from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from PIL import Image, TiffImagePlugin
from rest_framework.response import Response
from rest_framework.test import APIClient

from studio.actions import photos
from studio.domain.ids import uuid7
from studio.domain.photos import develop
from studio.models import Act, Photo
from tests.factories import NOW

# Names of TIFF 6.0 and Exif 2.3.
ORIENTATION, MAKE, GPS = 0x0112, 0x010F, 0x8825
LATITUDE_REF, LATITUDE = 1, 2
RED, BLUE = (220, 20, 20), (20, 20, 220)


def half_and_half(width: int = 60, height: int = 40) -> Image.Image:
    """Return a picture whose left half is red and whose right half is blue."""
    image = Image.new("RGB", (width, height), BLUE)
    image.paste(RED, (0, 0, width // 2, height))
    return image


def written(image: Image.Image, kind: str = "JPEG", **extra: object) -> bytes:
    """Return the picture as a file."""
    paper = io.BytesIO()
    image.save(paper, kind, **extra)
    return paper.getvalue()


def from_a_camera(width: int = 60, height: int = 40, orientation: int = 1) -> bytes:
    """Return a JPEG that tells where it was taken, by what, and which way is up."""
    exif = Image.Exif()
    exif[ORIENTATION] = orientation
    exif[MAKE] = "Box Camera"
    exif[GPS] = {
        LATITUDE_REF: "N",
        LATITUDE: tuple(TiffImagePlugin.IFDRational(part) for part in (54, 3, 7)),
    }
    picture = half_and_half(width, height)
    return written(picture, exif=exif, comment=b"behind the client's house", quality=95)


def bomb(width: int, height: int) -> bytes:
    """Return a PNG of some bytes that claims to be very large (ISO/IEC 15948, 11.2.2)."""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + _chunk(b"IHDR", head) + _chunk(b"IDAT", zlib.compress(b"\0"))


def _chunk(name: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))


def kept_photo(act: Act) -> Photo:
    """Return a photo that the act keeps."""
    return photos.add(act=act, developed=develop(from_a_camera()))


def sent_photo(
    client: APIClient, data: bytes | None = None, *, slug: str = "yard", **fields: Any
) -> Response:
    """Send a photo as a phone does, and return the answer."""
    file = SimpleUploadedFile("IMG_1.jpg", from_a_camera() if data is None else data, "image/jpeg")
    said = {"id": str(uuid7()), "happened_at": NOW.isoformat(), "based_on": "0", **fields}
    answer: Response = client.post(
        f"/api/v1/studios/{slug}/photos/", {**said, "photo": file}, format="multipart"
    )
    return answer
