"""What the endpoints of loads share."""

from typing import Any
from uuid import UUID

from django.utils import timezone

from firings.models import Load, Placement
from firings.queries import loads as queries
from firings.queries.firing import whole
from studio.api.views import StudioView, UnknownThing
from studio.permissions import Permission

from .shown import shown_load


class LoadView(StudioView):
    """An endpoint about loads."""

    def load(self, load_id: UUID) -> Load:
        """Return one load of this studio. Raises `UnknownThing`."""
        row = queries.listed(self.studio).filter(pk=load_id).first()
        if row is None:
            raise UnknownThing("No such load here.")
        return row

    def placement(self, placement_id: UUID) -> Placement:
        """Return one placement of this studio. Raises `UnknownThing`."""
        rows = Placement.objects.filter(studio=self.studio, pk=placement_id)
        row = rows.select_related("load__kiln", "piece__maker", "asked_by").first()
        if row is None:
            raise UnknownThing("Nothing like that in a load here.")
        return row

    def shown(self, load: Load) -> dict[str, Any]:
        """Return the load as it is now."""
        return shown_load(whole(load, at=timezone.now()), self.member, self.grants)

    def must(self, permission: Permission) -> None:
        """Raise `NotPermitted`, or ask for a PIN, unless the member may do that."""
        if permission not in self.grants:
            self._refuse(permission, "Ask a technician or an owner.")
