"""What is written of people outside the studio, who are not read of on a phone in the shed."""

import re
from typing import Final

from django.apps import apps

from studio.models import ClayBody, Member, Place, Studio

# Shorter words ("Inn", "Dr", "Lane") are too common to be left out wherever they stand.
SHORTEST: Final = 5
WORD: Final = re.compile(rf"\b[^\W\d_][\w’'-]{{{SHORTEST - 1},}}")


def words_about_others(studio: Studio) -> frozenset[str]:
    """Return names and contacts as they were written, and the telling words in them.

    A model names its columns in `private_columns`. Words that the studio's own people, places and
    clays bear too are not among them: work could not be read without those.
    """
    written = {
        value.strip()
        for model in apps.get_models()
        if (columns := getattr(model, "private_columns", ()))
        for row in model._default_manager.filter(studio=studio).values_list(*columns)
        for value in row
        if len(value.strip()) >= SHORTEST
    }
    telling = {word for value in written for word in WORD.findall(value) if word[0].isupper()}
    return frozenset(written | (telling - _ours(studio)))


def _ours(studio: Studio) -> set[str]:
    names = [
        studio.name,
        *Member.objects.filter(studio=studio).values_list("full_name", flat=True),
        *Place.objects.filter(studio=studio).values_list("name", flat=True),
        *ClayBody.objects.filter(studio=studio).values_list("name", flat=True),
    ]
    return {word for name in names for word in WORD.findall(name)}
