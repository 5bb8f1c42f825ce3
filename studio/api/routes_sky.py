"""Addresses of places and air, clays, the journal, photos, reminders, runs and the schema."""

from django.urls import path

from . import journal, materials, photos, places, readings, reminders, runs, schema

S = "studios/<slug:slug>/"

urlpatterns = [
    path("schema/", schema.SchemaView.as_view()),
    path("docs/", schema.docs),
    path(f"{S}places/", places.PlaceList.as_view()),
    path(f"{S}places/<uuid:place_id>/", places.PlaceOne.as_view()),
    path(f"{S}places/<uuid:place_id>/readings/", readings.ReadingList.as_view()),
    path(f"{S}readings/<uuid:reading_id>/answers/", readings.ReadingAnswerList.as_view()),
    path(f"{S}clay-bodies/", materials.BodyList.as_view()),
    path(f"{S}clay-bodies/<uuid:row_id>/", materials.BodyOne.as_view()),
    path(f"{S}clay-bodies/<uuid:row_id>/test-bars/", materials.BarList.as_view()),
    path(f"{S}test-bars/<uuid:row_id>/", materials.BarOne.as_view()),
    path(f"{S}colour-batches/", materials.BatchList.as_view()),
    path(f"{S}colour-batches/<uuid:row_id>/", materials.BatchOne.as_view()),
    path(f"{S}glaze-batches/", materials.GlazeBatchList.as_view()),
    path(f"{S}glaze-batches/<uuid:row_id>/", materials.GlazeBatchOne.as_view()),
    path(f"{S}slab-blocks/", materials.BlockList.as_view()),
    path(f"{S}slab-blocks/<uuid:row_id>/", materials.BlockOne.as_view()),
    path(f"{S}journal/", journal.JournalList.as_view()),
    path(f"{S}photos/", photos.PhotoList.as_view()),
    path(f"{S}photos/<uuid:photo_id>/", photos.PhotoOne.as_view()),
    path(f"{S}photos/<uuid:photo_id>/image/", photos.PhotoImage.as_view()),
    path(f"{S}photos/<uuid:photo_id>/thumbnail/", photos.PhotoThumbnail.as_view()),
    path(f"{S}reminders/", reminders.ReminderList.as_view()),
    path(f"{S}reminders/<uuid:reminder_id>/answers/", reminders.ReminderAnswerList.as_view()),
    path(f"{S}runs/<uuid:run_id>/", runs.RunOne.as_view(), name="run"),
]
