#!/usr/bin/env python3
"""Run Natch, its tests and Django's commands; see README.md."""

# This file must be readable to any Python, so that an old one gets a sentence.
import sys

if sys.version_info < (3, 11):
    sys.exit("Natch needs Python 3.11 or newer, but this is Python %d.%d." % sys.version_info[:2])

from studio.project import bootstrap


def main():
    # type: () -> None
    bootstrap.main(sys.argv)
    command = sys.argv[1] if len(sys.argv) > 1 else ""
    if command == "up":
        from studio.project import up

        up.main(sys.argv[2:])
    elif command == "test":
        from tests import run

        run.main(sys.argv[2:])
    else:
        from django.core.management import execute_from_command_line

        execute_from_command_line(sys.argv)


if __name__ == "__main__":
    main()
