"""Time the first screen of the demo against a plain listing of the same rows, CPU seconds.

Run from the root of the project, with nothing else on the machine::

    OPENBLAS_NUM_THREADS=1 python -m tests.bench.bench_list

It prints seconds and ratios of the same run and never fails. The baseline is what Django REST
framework's own `ModelSerializer` needs to list the pieces on the bench with their parts, windows
and people (`depth = 2`), through the same view machinery.
"""

import os
import time
from collections.abc import Callable
from typing import Any

import django

ROUNDS = 40
STAGES = ("pressing", "assembly", "drying")


def plain_list() -> Any:
    """Return a view that lists the same parts by the framework's own means."""
    from rest_framework import serializers
    from rest_framework.response import Response
    from rest_framework.views import APIView

    from pieces.models import Part

    class PartRows(serializers.ModelSerializer):
        class Meta:
            model = Part
            depth = 2
            fields = ("id", "role", "state", "pressed_at", "piece", "pressing", "design_part")

    class PlainList(APIView):
        def get(self, request: object) -> Response:
            related = (
                "piece__design", "piece__maker", "piece__place", "piece__body", "piece__studio",
                "pressing__casting", "pressing__entry", "pressing__slab_block",
                "pressing__studio", "design_part__design", "design_part__studio",
            )  # fmt: skip
            rows = Part.objects.filter(piece__stage__in=STAGES).select_related(*related)
            rows = rows.prefetch_related("pressing__mould_parts")
            return Response(PartRows(rows, many=True).data)

    return PlainList.as_view()


def cpu_s(do: Callable[[], object]) -> float:
    """Return the least CPU seconds of a call among many."""
    found = []
    for _ in range(ROUNDS):
        began = time.process_time()
        do()
        found.append(time.process_time() - began)
    return min(found)


def main() -> None:
    """Print the figures."""
    os.environ["DJANGO_SETTINGS_MODULE"] = "tests.settings"
    django.setup()
    from django.db import connection
    from django.test.utils import CaptureQueriesContext, setup_test_environment
    from django.utils import timezone
    from rest_framework.test import APIClient, APIRequestFactory, force_authenticate

    from firings.demo.loader import load
    from firings.demo.teller import Clock
    from pieces.actions import forecasts
    from studio.models import Member
    from tests.factories import NOW, PASSWORD

    setup_test_environment()
    connection.creation.create_test_db(verbosity=0)
    studio = load(clock=Clock(None), password=PASSWORD)
    began = time.process_time()
    reckoned = forecasts.refresh(studio=studio, at=NOW)
    refresh_s = time.process_time() - began
    timezone.now = lambda: NOW
    owner = Member.objects.get(studio=studio, initials="OF")
    client = APIClient()
    client.force_login(owner.user)
    path = f"/api/v1/studios/{studio.slug}/bench/"
    request = APIRequestFactory().get("/")
    force_authenticate(request, owner.user)
    plain = plain_list()

    with CaptureQueriesContext(
        connection,
    ) as asked:
        answer = client.get(path)
    queries = len(asked)
    shown = answer.json()
    rows = sum(len(block) for block in shown.values() if isinstance(block, list))
    bench_s = cpu_s(lambda: client.get(path).content)
    plain_s = cpu_s(lambda: plain(request).render().content)
    sweep_s = cpu_s(lambda: forecasts.refresh(studio=studio, at=NOW))
    print(f"bench/: {bench_s * 1e3:.1f} ms CPU, {rows} rows, {queries} queries (least of {ROUNDS})")
    print(f"plain listing of the same rows: {plain_s * 1e3:.1f} ms CPU")
    print(f"  ratio, bench over plain listing: {bench_s / plain_s:.2f}")
    print(f"reckoning all {reckoned} wet parts anew: {refresh_s:.2f} s CPU")
    print(f"  ratio, reckoning over reading the bench: {refresh_s / bench_s:.0f}")
    print(f"a sweep that finds all up to date: {sweep_s * 1e3:.1f} ms CPU")
    print(f"  ratio, such a sweep over the bench: {sweep_s / bench_s:.2f}")
    connection.creation.destroy_test_db(connection.settings_dict["NAME"], verbosity=0)


if __name__ == "__main__":
    main()
