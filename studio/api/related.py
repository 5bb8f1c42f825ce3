"""A field that names another row of the same studio by its id."""

from typing import Any
from uuid import UUID

from django.db.models import QuerySet
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail

from studio.models import StudioOwned


class RowField(serializers.PrimaryKeyRelatedField[Any]):
    """The id of a row of this studio; an id of another studio is as unknown as any other."""

    default_error_messages = {
        "does_not_exist": "There is no such thing in this studio.",
        "incorrect_type": "Give an id.",
    }

    def __init__(self, model: type[StudioOwned], **given: Any) -> None:
        self.model = model
        if given.get("read_only"):
            super().__init__(**given)
        else:
            super().__init__(
                queryset=model.objects.all(), pk_field=serializers.UUIDField(), **given
            )

    def get_queryset(self) -> "QuerySet[Any]":
        view = self.context.get("view")
        studio = getattr(view, "studio", None)
        rows: QuerySet[Any] = self.model.objects.all()
        return rows.filter(studio=studio) if studio is not None else rows.none()


def uuid_of(name: str, text: str) -> UUID:
    """Return the id that the query names, or answer 400 with its name."""
    try:
        return UUID(text)
    except ValueError as error:
        raise serializers.ValidationError(
            {name: [ErrorDetail("That is not an id.", "invalid")]}
        ) from error
