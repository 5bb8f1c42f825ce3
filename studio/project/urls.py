"""Root addresses: the apps by name, never imported, then the front end for everything else."""

from django.urls import include, path, re_path

from studio.project import views

# A missing file or an unknown call must be a 404, never the front end's page.
NOT_A_PAGE = (
    r"(?!(?:api|static|assets|help|c)(?:/|$))"
    r"(?!.*\.(?:js|css|map|json|webmanifest|png|svg|ico|wasm|woff2?|txt)$)"
)

urlpatterns = [
    path("healthz", views.healthz),
    path("readyz", views.readyz),
    path("api/v1/", include("studio.api.urls")),
    path("api/v1/", include("moulds.api.urls")),
    path("api/v1/", include("pieces.api.urls")),
    path("api/v1/", include("firings.api.urls")),
    path("c/", include("firings.api.routes_client")),
    path("robots.txt", views.robots),
    path("help/", include("studio.api.routes_help")),
    re_path(rf"^{NOT_A_PAGE}.*$", views.front_end),
]

handler400 = "studio.api.problems.bad_request"
handler403 = "studio.api.problems.permission_denied"
handler404 = "studio.api.problems.page_not_found"
handler500 = "studio.api.problems.server_error"
