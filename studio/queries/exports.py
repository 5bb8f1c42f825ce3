"""All that a studio has, as tables that any program opens, with its photos.

Which tables there are is said by the models themselves (`export_order`), so that a new one is taken
along without being named here.
"""

import csv
import io
import json
import zipfile
from collections.abc import Iterator
from typing import IO, Any, Final

from django.apps import apps
from django.core.files.storage import default_storage
from django.db.models import (
    BinaryField,
    BooleanField,
    DateField,
    DecimalField,
    Field,
    FloatField,
    ForeignKey,
    IntegerField,
    JSONField,
    Model,
    TimeField,
    UUIDField,
)

from studio.domain.text import defused
from studio.models import JournalHead, Photo, PhotoSize, Studio

CHUNK_ROWS: Final = 2_000
READ_ME: Final = """\
All that {name} has in Natch, up to act {seq} of its journal.

One table a file, UTF-8, commas between cells. The first line names the columns. Columns that end
in _id hold the id of a row in another table; a quantity's column ends in its unit; times are in
UTC. An empty cell is nothing.

A text that a table program would take for a sum (it begins with = + - @ or a tab) has an apostrophe
before it: take one away to have the text as it was typed. A text that began with apostrophes before
such a sign has one more. Columns of numbers hold plain numbers.

Photos lie in photos/ under the sha256 that photo.csv names. Left out are passwords, PINs and keys,
and what is reckoned anew.
"""


def models() -> list[type[Model]]:
    """Return the models whose tables are taken along, in their order."""
    found = [model for model in apps.get_models() if getattr(model, "export_order", None)]
    return sorted(found, key=lambda model: model.export_order)  # type: ignore[attr-defined]


def name_of(model: type[Model]) -> str:
    """Return the file name of a table: its model's, which is once in Natch."""
    return f"{model._meta.model_name}.csv"


def write(studio: Studio, paper: IO[bytes]) -> None:
    """Write all that a studio has into a zip."""
    head = JournalHead.objects.get(studio=studio)
    with zipfile.ZipFile(paper, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("read-me.txt", READ_ME.format(name=studio.name, seq=head.seq))
        for model in models():
            with (
                archive.open(name_of(model), "w", force_zip64=True) as binary,
                io.TextIOWrapper(binary, encoding="utf-8", newline="") as text,
            ):
                csv.writer(text).writerows(_lines(model, studio))
        for name in _photo_names(studio):
            with default_storage.open(name) as file:
                member = zipfile.ZipInfo(f"photos/{name.rpartition('/')[2]}")
                archive.writestr(member, file.read())


def _lines(model: type[Model], studio: Studio) -> Iterator[list[str]]:
    fields = [field for field in model._meta.concrete_fields if _is_shown(field)]
    many = [field.name for field in model._meta.many_to_many]
    yield [*(field.attname for field in fields), *(f"{name}_ids" for name in many)]
    path = "studio" if hasattr(model, "studio") else "entry__studio"
    rows: Any = model._default_manager.filter(**{path: studio}).order_by("pk")
    for row in rows.prefetch_related(*many).iterator(chunk_size=CHUNK_ROWS):
        cells = [cell(field, getattr(row, field.attname)) for field in fields]
        ids = [" ".join(str(one.pk) for one in getattr(row, name).all()) for name in many]
        yield [*cells, *ids]


def cell(field: "Field[Any, Any]", value: Any) -> str:
    """Return a value as its column shows it; a text is never one that is taken for a sum."""
    target = field.target_field if isinstance(field, ForeignKey) else field
    if value is None:
        return ""
    match target:
        case BooleanField():
            return "true" if value else "false"
        case IntegerField() | FloatField() | DecimalField():
            return str(value)
        case DateField() | TimeField():
            return str(value.isoformat())
        case UUIDField():
            return str(value)
        case JSONField():
            return defused(json.dumps(value, ensure_ascii=False, sort_keys=True))
        case _:
            return defused(str(value))


def _is_shown(field: "Field[Any, Any]") -> bool:
    return not isinstance(field, BinaryField) and not field.name.endswith("_hash")


def _photo_names(studio: Studio) -> list[str]:
    photos: Any = Photo.objects.of(studio).order_by("pk")
    names = dict.fromkeys(photo.file_name(PhotoSize.IMAGE) for photo in photos)
    return [name for name in names if default_storage.exists(name)]
