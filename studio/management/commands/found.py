"""`manage.py found`: make a studio of one's own, with its first owner."""

import os
from getpass import getpass
from typing import Any

from django.contrib.auth.models import User
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.core.validators import validate_slug
from django.db import transaction
from django.utils import timezone

from studio.actions import studios
from studio.actions.people import Person
from studio.domain.refusals import Refusal


class Command(BaseCommand):
    """Founds a studio; everyone after its owner comes by invitation."""

    help = "Make a studio of your own and its first owner; the others come by invitation."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("slug", help="the studio's short name in addresses: north-shed")
        parser.add_argument("username", help="the name its owner signs in with")
        parser.add_argument("--name", help="the studio's full name")
        parser.add_argument("--zone", default="Europe/London", help="time zone (Europe/London)")
        parser.add_argument("--full-name", help="the owner's full name")
        parser.add_argument("--initials", help="as they are cut into clay")
        parser.add_argument("--email", default="", help="where the owner's reminders go")

    def handle(self, *args: Any, slug: str, username: str, **options: Any) -> None:
        full_name = options["full_name"] or username.title()
        try:
            validate_slug(slug)
            with transaction.atomic():
                person = Person(
                    user=self._account(username, options["email"]),
                    first_name=full_name.split()[0],
                    full_name=full_name,
                    initials=options["initials"] or _initials(full_name),
                    email=options["email"],
                )
                studio = studios.found(
                    slug=slug,
                    name=options["name"] or slug.replace("-", " ").title(),
                    zone=options["zone"],
                    owner=person,
                    at=timezone.now(),
                )
        except ValidationError as error:
            raise CommandError(" ".join(error.messages)) from error
        except Refusal as refusal:
            raise CommandError(f"{refusal.title} {refusal.detail}") from refusal
        self.stdout.write(f"{studio.name} is founded; {username} may sign in.")

    def _account(self, username: str, email: str) -> User:
        """Return the account, made with a password unless there is one already."""
        known = User.objects.filter(username=username).first()
        if known is not None:
            return known
        password = os.environ.get("NATCH_OWNER_PASSWORD") or getpass(f"Password for {username}: ")
        account = User(username=username, email=email)
        validate_password(password, account)
        account.set_password(password)
        account.full_clean()
        account.save()
        return account


def _initials(full_name: str) -> str:
    return "".join(word[0] for word in full_name.split())[:4].upper()
