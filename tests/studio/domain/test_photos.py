import io
import struct

import pytest
from PIL import Image, ImageCms

from studio.domain import photos
from studio.domain.photos import (
    BYTES_MOST,
    LONGEST_PX,
    THUMBNAIL_PX,
    NotAPhoto,
    PhotoIsHeic,
    PhotoTooLarge,
    develop,
)
from tests import pictures
from tests.pictures import BLUE, RED


def opened(picture: photos.Picture) -> Image.Image:
    return Image.open(io.BytesIO(picture.data))


def segments(jpeg: bytes) -> set[int]:
    """Return the markers before the scan, as ITU-T T.81 lays them out."""
    found, at = set(), 2
    while jpeg[at + 1] != 0xDA:
        found.add(jpeg[at + 1])
        at += 2 + struct.unpack(">H", jpeg[at + 2 : at + 4])[0]
    return found


def is_like(colour: tuple[int, int, int], other: tuple[int, int, int]) -> bool:
    """Say whether two colours are the same but for what JPEG does to them."""
    return all(abs(one - two) <= 12 for one, two in zip(colour, other, strict=True))


class TestDevelop:
    def test_tells_nothing_but_the_picture(self):
        given = pictures.from_a_camera()
        assert Image.open(io.BytesIO(given)).getexif().get_ifd(pictures.GPS)

        developed = develop(given)

        for picture in (developed.image, developed.thumbnail):
            assert not opened(picture).getexif()
            # APP0 alone is JFIF; Exif and XMP would be APP1, a profile APP2, words a comment.
            assert {m for m in segments(picture.data) if 0xE0 <= m <= 0xEF or m == 0xFE} == {0xE0}
            assert b"Box Camera" not in picture.data
            assert b"client" not in picture.data

    @pytest.mark.parametrize(
        ("orientation", "corner"),
        # The row and column that come first in the file, as Exif 2.3 numbers them: 1 upright,
        # 3 upside down, 6 the top at the right, 8 the top at the left.
        [(1, "left"), (3, "right"), (6, "top"), (8, "bottom")],
    )
    def test_turns_it_upright(self, orientation, corner):
        image = opened(develop(pictures.from_a_camera(orientation=orientation)).image)

        width, height = image.size
        spots = {
            "left": (5, height // 2),
            "right": (width - 5, height // 2),
            "top": (width // 2, 5),
            "bottom": (width // 2, height - 5),
        }
        opposite = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}
        assert (width > height) == (orientation in (1, 3))
        assert is_like(image.getpixel(spots[corner]), RED)
        assert is_like(image.getpixel(spots[opposite[corner]]), BLUE)

    def test_shrinks_it_to_its_longest_side(self):
        developed = develop(pictures.from_a_camera(3000, 1500))

        assert (developed.image.width, developed.image.height) == (LONGEST_PX, LONGEST_PX // 2)
        assert opened(developed.image).size == (LONGEST_PX, LONGEST_PX // 2)
        assert opened(developed.thumbnail).size == (THUMBNAIL_PX, THUMBNAIL_PX // 2)

    def test_enlarges_nothing(self):
        developed = develop(pictures.from_a_camera(60, 40))

        assert opened(developed.image).size == opened(developed.thumbnail).size == (60, 40)

    @pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
    def test_reads_what_browsers_write(self, kind):
        developed = develop(pictures.written(pictures.half_and_half(), kind))

        assert opened(developed.image).format == "JPEG"
        assert is_like(opened(developed.image).getpixel((5, 20)), RED)

    @pytest.mark.parametrize("mode", ["1", "L", "LA", "P", "I;16", "RGBA", "CMYK"])
    def test_takes_every_kind_of_pixel(self, mode):
        kind = "JPEG" if mode == "CMYK" else "PNG"
        given = pictures.written(Image.new(mode, (30, 20)), kind)

        assert opened(develop(given).image).mode == "RGB"

    def test_puts_what_is_clear_on_white(self):
        clear = pictures.written(Image.new("RGBA", (30, 20), (0, 0, 0, 0)), "PNG")

        assert is_like(opened(develop(clear).image).getpixel((9, 9)), (255, 255, 255))

    def test_heeds_the_profile_of_its_colours(self):
        srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
        swapped = srgb.replace(b"rXYZ", b"????", 1).replace(b"bXYZ", b"rXYZ", 1)
        swapped = swapped.replace(b"????", b"bXYZ", 1)
        given = pictures.written(pictures.half_and_half(), icc_profile=swapped)

        image = opened(develop(given).image)

        assert is_like(image.getpixel((5, 20)), BLUE)

    def test_keeps_a_photo_whose_profile_is_broken(self):
        given = pictures.written(pictures.half_and_half(), icc_profile=b"no profile at all")

        assert is_like(opened(develop(given).image).getpixel((5, 20)), RED)

    def test_gives_the_same_file_for_the_same_photo(self):
        given = pictures.from_a_camera()

        assert develop(given) == develop(given)

    @pytest.mark.parametrize(
        ("width", "height"),
        # Just over fifty million pixels, over what Pillow warns of, over what it refuses.
        [(10_000, 5_001), (10_000, 10_000), (60_000, 60_000)],
    )
    def test_refuses_a_picture_that_would_fill_the_memory(self, width, height):
        bomb = pictures.bomb(width, height)
        assert len(bomb) < 100

        with pytest.raises(PhotoTooLarge, match="50 million pixels"):
            develop(bomb)

    def test_refuses_too_many_bytes(self):
        with pytest.raises(PhotoTooLarge, match=r"12\.0 MB.*at most 12 MB"):
            develop(b"\xff" * (BYTES_MOST + 1))

    @pytest.mark.parametrize("kept", [0.02, 0.3, 0.9])
    @pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
    def test_refuses_a_file_cut_short(self, kind, kept):
        noise = Image.effect_noise((200, 150), 80).convert("RGB")
        whole = pictures.written(noise, kind)

        with pytest.raises(NotAPhoto):
            develop(whole[: int(len(whole) * kept)])

    @pytest.mark.parametrize("data", [b"", b"a text named .jpg", b"\xff\xd8\xff", b"%PDF-1.7"])
    def test_refuses_what_is_no_picture(self, data):
        with pytest.raises(NotAPhoto, match="JPEG, PNG or WebP"):
            develop(data)

    def test_refuses_a_picture_of_a_kind_it_does_not_read(self):
        with pytest.raises(NotAPhoto):
            develop(pictures.written(pictures.half_and_half(), "TIFF"))

    @pytest.mark.parametrize("brand", [b"heic", b"mif1"])
    def test_says_what_to_do_about_heic(self, brand):
        with pytest.raises(PhotoIsHeic, match="JPEG"):
            develop(b"\0\0\0\x18ftyp" + brand + b"\0" * 40)
