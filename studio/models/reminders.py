"""What a person is told, once, and what they answered."""

from django.db import models

from .tenancy import Member, StudioOwned


class Reminder(StudioOwned):
    """One thing to tell one person on one day, for one cause."""

    export_order = None

    class State(models.TextChoices):
        DUE = "due"
        SENT = "sent"
        DONE = "done"
        SNOOZED = "snoozed"
        LET_GO = "let_go"
        WITHDRAWN = "withdrawn"

    cause = models.CharField(max_length=40)
    grade = models.CharField(max_length=1, default="C")
    object_kind = models.CharField(max_length=20)
    object_id = models.UUIDField()
    object_mark = models.CharField(max_length=60, blank=True)
    person = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="reminders")
    due_date = models.DateField()
    round = models.PositiveSmallIntegerField(default=0)
    due_at = models.DateTimeField(db_index=True)
    title = models.CharField(max_length=200)
    body = models.CharField(max_length=500, blank=True)
    link = models.CharField(max_length=200, blank=True)
    state = models.CharField(max_length=10, choices=State, default=State.DUE, db_index=True)
    snoozes = models.PositiveSmallIntegerField(default=0)
    snoozed_until = models.DateTimeField(null=True)
    answered_by = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    answered_at = models.DateTimeField(null=True)
    updated_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["studio", "cause", "object_id", "person", "due_date", "round"],
                name="told_once",
            )
        ]

    def belongs_to(self, member: Member) -> bool:
        return self.person_id == member.pk


class Delivery(StudioOwned):
    """One message over one channel about a group of reminders; unique, leased while it is sent."""

    export_order = None

    key = models.CharField(max_length=120)
    channel = models.CharField(max_length=10)
    person = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    reminders = models.ManyToManyField(Reminder, related_name="deliveries")
    lease_until = models.DateTimeField(null=True)
    tries = models.PositiveSmallIntegerField(default=0)
    sent_at = models.DateTimeField(null=True)
    failure = models.CharField(max_length=300, blank=True)
    made_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["studio", "key", "channel"], name="delivered_once")
        ]
