"""Photos: whatever a camera sent becomes a plain JPEG that tells nothing but the picture.

A file from a camera holds where and when it was taken and by what. Only the pixels are taken over,
turned upright and in the colours of sRGB, and written anew; so nothing else can come along.
"""

import io
import struct
import zlib
from dataclasses import dataclass
from typing import Final

from PIL import Image, ImageCms, ImageOps

from .refusals import TooLarge, Unworkable

#: What is read. Common practice, no source: what browsers and telephones write.
FORMATS: Final = ("JPEG", "PNG", "WEBP")
BYTES_MOST: Final = 12 * 1024 * 1024
PIXELS_MOST: Final = 50_000_000
LONGEST_PX: Final = 2048
THUMBNAIL_PX: Final = 256
# Quality as libjpeg counts it, 1 to 95. Common practice, no source: above it files grow and
# pictures hardly do.
QUALITY: Final = 85
# Brands of ISO 14496-12 files that hold a picture coded as HEVC (ISO 23008-12).
HEIC_BRANDS: Final = frozenset({b"heic", b"heix", b"heim", b"heis", b"hevc", b"mif1", b"msf1"})
# What the readers of broken files raise.
BROKEN: Final = (OSError, SyntaxError, ValueError, EOFError, IndexError, struct.error, zlib.error)


class PhotoTooLarge(TooLarge):
    code = "photo-too-large"
    title = "That photo is too large."


class PhotoIsHeic(Unworkable):
    code = "photo-is-heic"
    title = "Photos in HEIC are not read here."


class NotAPhoto(Unworkable):
    code = "not-a-photo"
    title = "That is not a photo that can be read."


@dataclass(frozen=True, slots=True)
class Picture:
    """A JPEG and its size."""

    data: bytes
    width: int
    height: int


@dataclass(frozen=True, slots=True)
class Developed:
    """A photo as it is kept: whole, and small for lists."""

    image: Picture
    thumbnail: Picture


def develop(data: bytes) -> Developed:
    """Return the photo that `data` holds as it is kept.

    Raises `PhotoTooLarge`, `PhotoIsHeic` and `NotAPhoto`.
    """
    if len(data) > BYTES_MOST:
        raise too_many_bytes(len(data))
    if data[4:8] == b"ftyp" and data[8:12] in HEIC_BRANDS:
        raise PhotoIsHeic(
            "Set the camera to JPEG (“most compatible”), or take the photo from this screen."
        )
    try:
        image = _plain(_opened(data))
    except BROKEN as error:
        raise NotAPhoto("Give a JPEG, PNG or WebP that is whole.") from error
    small = image.copy()
    small.thumbnail((THUMBNAIL_PX, THUMBNAIL_PX), Image.Resampling.LANCZOS)
    return Developed(image=_written(image), thumbnail=_written(small))


def too_many_bytes(count: int) -> PhotoTooLarge:
    """Return the refusal of a file of so many bytes."""
    most = BYTES_MOST // 1024**2
    return PhotoTooLarge(
        f"It has {count / 1024**2:.1f} MB; a photo has at most {most} MB.", most_bytes=BYTES_MOST
    )


def _opened(data: bytes) -> Image.Image:
    """Read the head only: a small file may claim a picture that fills the memory."""
    try:
        image = Image.open(io.BytesIO(data), formats=FORMATS)
    except (Image.DecompressionBombWarning, Image.DecompressionBombError) as error:
        raise _too_many_pixels() from error
    if image.width * image.height > PIXELS_MOST:
        raise _too_many_pixels()
    return image


def _too_many_pixels() -> PhotoTooLarge:
    return PhotoTooLarge(
        f"A photo has at most {PIXELS_MOST // 1_000_000} million pixels.", most_pixels=PIXELS_MOST
    )


def _plain(image: Image.Image) -> Image.Image:
    """Return the pixels alone: shrunk, upright, on white, in sRGB."""
    image.thumbnail((LONGEST_PX, LONGEST_PX), Image.Resampling.LANCZOS, reducing_gap=2.0)
    image = _in_srgb(ImageOps.exif_transpose(image))
    if image.has_transparency_data:
        ground = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(ground, image.convert("RGBA"))
    plain = image.convert("RGB")
    plain.info = {}
    return plain


def _in_srgb(image: Image.Image) -> Image.Image:
    profile = image.info.get("icc_profile")
    if not profile or image.mode not in ("RGB", "CMYK"):
        return image
    try:
        given = ImageCms.ImageCmsProfile(io.BytesIO(profile))
        wanted = ImageCms.createProfile("sRGB")
        return ImageCms.profileToProfile(image, given, wanted, outputMode="RGB") or image
    except (ImageCms.PyCMSError, OSError):
        # A broken profile shifts colours a little; the photo is still worth keeping.
        return image


def _written(image: Image.Image) -> Picture:
    paper = io.BytesIO()
    image.save(paper, "JPEG", quality=QUALITY, optimize=True, progressive=True)
    return Picture(paper.getvalue(), *image.size)
