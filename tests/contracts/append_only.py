"""Which tables refuse UPDATE and DELETE."""

from django.apps import apps
from django.db.models import Model

from studio.models import Fact, HeldAct, JournalEntry, JournalSubject, RefusedTry


def locked_models() -> list[type[Model]]:
    """Return the models that are never changed: the journal, and every fact with what it names."""
    facts = [model for model in apps.get_models() if issubclass(model, Fact)]
    named = [field.remote_field.through for fact in facts for field in fact._meta.many_to_many]
    return [JournalEntry, JournalSubject, RefusedTry, HeldAct, *facts, *named]
