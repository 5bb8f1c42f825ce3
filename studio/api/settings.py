"""What a studio decides for itself: limits, tariff, quiet hours, opening hours."""

from collections.abc import Mapping
from typing import Any

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import settings
from studio.models import Act, ClosedDay, OpeningHours, StudioSettings
from studio.models.settings import FeeMeasured
from studio.permissions import P
from studio.queries import habits

from .envelopes import ActOut, ChangeIn
from .fields import QuantityField
from .hidden import without_money
from .views import Given, StudioView

MOST_DAYS_CLOSED = 400


class SettingsIn(ChangeIn):
    """What is to change; what is left out stays."""

    quiet_from = serializers.TimeField(required=False)
    quiet_until = serializers.TimeField(required=False)
    mould_dry_below_fraction = QuantityField(unit="fraction", least=0.001, most=0.5, required=False)
    mould_usable_below_fraction = QuantityField(
        unit="fraction", least=0.001, most=0.9, required=False
    )
    wall_limit_mm = QuantityField(unit="mm", least=1, most=100, required=False)
    open_kiln_below_c = QuantityField(unit="c", least=20, most=300, required=False)
    glaze_gap_mm = QuantityField(unit="mm", least=0, most=100, required=False)
    refire_headroom_mm = QuantityField(unit="mm", least=0, most=100, required=False)
    bisque_may_touch = serializers.BooleanField(required=False)
    assumed_air_c = QuantityField(unit="c", least=-20, most=50, required=False)
    assumed_humidity_fraction = QuantityField(unit="fraction", least=0, most=1, required=False)
    currency = serializers.RegexField(
        r"^[A-Z]{3}\Z", required=False, help_text="ISO 4217, as in GBP."
    )
    bisque_fee_minor_per_l = serializers.IntegerField(
        min_value=0, max_value=10**6, required=False, allow_null=True
    )
    glaze_fee_minor_per_l = serializers.IntegerField(
        min_value=0, max_value=10**6, required=False, allow_null=True
    )
    fee_measured = serializers.ChoiceField(
        FeeMeasured.choices, required=False, help_text="Which size of a piece the tariff names."
    )
    found_notice_days = serializers.IntegerField(
        min_value=1, max_value=730, required=False, help_text="How long found ware is kept."
    )


class SettingsOut(serializers.ModelSerializer[StudioSettings]):
    class Meta:
        model = StudioSettings
        exclude = ("studio",)


class SettingsChangedOut(ActOut):
    settings = SettingsOut()


class SettingsView(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.MANAGE_SETTINGS}

    @extend_schema(operation_id="settings_read", responses=SettingsOut)
    def get(self, request: Request) -> Response:
        """Show the studio's limits and habits; `ETag` is their revision."""
        row = habits.settings(self.studio)
        told = SettingsOut(row).data
        shown = told if P.SEE_OWN_PRICES in self.grants else without_money(told)
        return Response(shown, headers={"ETag": f'"{row.revision}"'})

    @extend_schema(operation_id="settings_change", request=SettingsIn, responses=SettingsChangedOut)
    def patch(self, request: Request) -> Response:
        """Change some; with `If-Match`, only where nobody else did meanwhile."""

        def work(given: Given, act: Act) -> dict[str, object]:
            held = settings.locked(self.studio)
            self.check_match(held.revision, SettingsOut(held).data)
            changes = {name: given[name] for name in given if name in SettingsOut(held).data}
            return {
                "settings": SettingsOut(settings.change(act=act, held=held, changes=changes)).data
            }

        return with_etag(self.once(SettingsIn, work, status=200), "settings")


class HoursFields(serializers.Serializer[OpeningHours]):
    weekday = serializers.IntegerField(min_value=0, max_value=6, help_text="Monday is 0.")
    opens = serializers.TimeField()
    closes = serializers.TimeField()

    def validate(self, given: Given) -> Given:
        if given["opens"] >= given["closes"]:
            detail = "It closes after it opens, on the same day."
            raise serializers.ValidationError({"closes": [detail]}, code="closes-first")
        return given


class ClosedDayFields(serializers.Serializer[ClosedDay]):
    date = serializers.DateField()
    why = serializers.CharField(max_length=120, required=False, allow_blank=True, default="")


class OpeningIn(ChangeIn):
    """The whole week, or all closed days, in the place of those before; left out, they stay."""

    weekly = serializers.ListField(child=HoursFields(), required=False, max_length=7)
    closed_days = serializers.ListField(
        child=ClosedDayFields(), required=False, max_length=MOST_DAYS_CLOSED
    )

    def validate_weekly(self, rows: list[dict[str, Any]]) -> list[dict[str, Any]]:
        return _once_each(rows, "weekday")

    def validate_closed_days(self, rows: list[dict[str, Any]]) -> list[dict[str, Any]]:
        return _once_each(rows, "date")


class OpeningOut(serializers.Serializer[Any]):
    revision = serializers.IntegerField()
    zone = serializers.CharField(help_text="The hours are on this zone's clocks.")
    weekly = HoursFields(many=True)
    closed_days = ClosedDayFields(many=True)


class OpeningChangedOut(ActOut):
    opening = OpeningOut()


class OpeningView(StudioView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": P.MANAGE_SETTINGS}

    @extend_schema(operation_id="opening_read", responses=OpeningOut)
    def get(self, request: Request) -> Response:
        """Show when somebody is usually in; `ETag` is the revision of the settings."""
        shown = self._shown(habits.settings(self.studio))
        return Response(shown, headers={"ETag": f'"{shown["revision"]}"'})

    @extend_schema(operation_id="opening_change", request=OpeningIn, responses=OpeningChangedOut)
    def patch(self, request: Request) -> Response:
        """Change the week, the closed days, or both."""

        def work(given: Given, act: Act) -> dict[str, object]:
            held = settings.locked(self.studio)
            self.check_match(held.revision, self._shown(held))
            changed = settings.open_at(
                act=act,
                held=held,
                weekly=given.get("weekly"),
                closed_days=given.get("closed_days"),
            )
            return {"opening": self._shown(changed)}

        return with_etag(self.once(OpeningIn, work, status=200), "opening")

    def _shown(self, row: StudioSettings) -> dict[str, Any]:
        told = {
            "revision": row.revision,
            "zone": self.studio.zone,
            "weekly": habits.weekly(self.studio),
            "closed_days": habits.closed_days(self.studio),
        }
        return dict(OpeningOut(told).data)


def with_etag(response: Response, name: str) -> Response:
    """Return the answer to a change with the new revision as its `ETag`."""
    row: Mapping[str, object] = response.data.get(name, {})
    if "revision" in row:
        response["ETag"] = f'"{row["revision"]}"'
    return response


def _once_each(rows: list[dict[str, Any]], key: str) -> list[dict[str, Any]]:
    if len({row[key] for row in rows}) < len(rows):
        raise serializers.ValidationError(f"Each {key} once.", code="twice")
    return rows
