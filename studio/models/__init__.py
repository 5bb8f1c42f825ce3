from .acts import Act
from .append_only import AppendOnly, install_append_only
from .frozen import FrozenCopy
from .hands import HeldAct, HeldAnswer, RefusedTry
from .journal import Fact, FactQuerySet, JournalEntry, JournalHead, JournalSubject, Note
from .materials import ClayBody, ColourBatch, GlazeBatch, SlabBlock, TestBar
from .photos import Photo, PhotoOf, PhotoSize
from .places import ClimateReading, Place
from .reminders import Delivery, Reminder
from .runs import NumberBlock, NumberSeries, Replay, Run
from .settings import Away, ClosedDay, OpeningHours, StudioSettings
from .tenancy import (
    AccessToken,
    Device,
    Invitation,
    Member,
    OwnedQuerySet,
    SignInTry,
    Studio,
    StudioOwned,
)

__all__ = [
    "AccessToken",
    "Act",
    "AppendOnly",
    "Away",
    "ClayBody",
    "ClimateReading",
    "ClosedDay",
    "ColourBatch",
    "Delivery",
    "Device",
    "Fact",
    "FactQuerySet",
    "FrozenCopy",
    "GlazeBatch",
    "HeldAct",
    "HeldAnswer",
    "Invitation",
    "JournalEntry",
    "JournalHead",
    "JournalSubject",
    "Member",
    "Note",
    "NumberBlock",
    "NumberSeries",
    "OpeningHours",
    "OwnedQuerySet",
    "Photo",
    "PhotoOf",
    "PhotoSize",
    "Place",
    "RefusedTry",
    "Reminder",
    "Replay",
    "Run",
    "SignInTry",
    "SlabBlock",
    "Studio",
    "StudioOwned",
    "StudioSettings",
    "TestBar",
    "install_append_only",
]
