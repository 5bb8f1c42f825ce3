from django.urls import URLPattern

from . import routes_sky, routes_who

urlpatterns: list[URLPattern] = [*routes_who.urlpatterns, *routes_sky.urlpatterns]
