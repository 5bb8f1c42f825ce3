"""`up --lan`: the addresses under which phones find this machine, and the padlock they get."""

import datetime as dt
import io
import ipaddress
import os
import socket
import sys
from dataclasses import dataclass
from pathlib import Path

import segno

from studio.project import certificates
from studio.project.steps import CannotGoOn


@dataclass(frozen=True)
class Lan:
    """What the supervisor needs to serve this network."""

    folder: Path
    port: int
    hosts: list[str]
    addresses: list[str]
    fingerprint: str

    @property
    def address(self) -> str:
        """The address to type into a phone."""
        return f"https://{self.addresses[0]}:{self.port}"

    @property
    def trust_address(self) -> str:
        """Where a phone fetches the authority's certificate, before it trusts anything here."""
        return f"http://{self.addresses[0]}:{self.port + 1}/trust"

    @property
    def tls_arguments(self) -> list[str]:
        """Gunicorn's options."""
        certificate, key = self.folder / "server.pem", self.folder / "server-key.pem"
        return ["--certfile", str(certificate), "--keyfile", str(key)]

    @property
    def trust_command(self) -> list[str]:
        """What serves the trust page."""
        authority = str(self.folder / "authority.pem")
        module = [sys.executable, "-m", "studio.project.trust_page"]
        return [*module, authority, str(self.port + 1), self.address]

    def greeting(self) -> list[str]:
        """Return the lines for phones: two addresses, two codes, and what to compare."""
        return [
            "On each phone, once, for the padlock:",
            picture_of(self.trust_address),
            self.trust_address,
            f"Compare before trusting: {self.fingerprint}",
            "",
            "Then, and from then on:",
            picture_of(self.address),
            self.address,
            "",
        ]


def prepare(folder: Path, *, port: int) -> Lan:
    """Find this machine's addresses and have certificates ready for them."""
    addresses = private_addresses()
    if not addresses:
        raise CannotGoOn("This machine has no address in a local network; start without --lan.")
    name = socket.gethostname().split(".")[0].lower()
    names = ["localhost", f"{name}.local"]
    now = dt.datetime.now(dt.UTC)
    try:
        issuer = certificates.authority(folder, now=now)
        certificates.server(
            folder, issuer, names=names, addresses=["127.0.0.1", *addresses], now=now
        )
    except (OSError, ValueError) as error:
        raise CannotGoOn(f"The certificates in {folder} cannot be used: {error}.") from error
    fingerprint = certificates.fingerprint(issuer.certificate)
    return Lan(folder, port, [*names, *addresses], addresses, fingerprint)


def private_addresses() -> list[str]:
    """Return this machine's IPv4 addresses in private networks, the one used most first.

    NATCH_LAN_ADDRESS chooses one where there are several.
    """
    chosen = os.environ.get("NATCH_LAN_ADDRESS")
    if chosen:
        return [chosen]
    found: list[str] = []
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            # Sends nothing, only asks which address is used; 192.0.2.1 is nobody's (RFC 5737).
            probe.connect(("192.0.2.1", 9))
            found.append(probe.getsockname()[0])
        except OSError:
            pass
    try:
        named = socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)
        found += [str(entry[4][0]) for entry in named]
    except OSError:
        pass
    return [address for address in dict.fromkeys(found) if is_private(address)]


def is_private(address: str) -> bool:
    """Say whether the authority may vouch for an address: private, and not this machine's own."""
    parsed = ipaddress.ip_address(address)
    networks = (ipaddress.ip_network(network) for network in certificates.PRIVATE_NETWORKS)
    return not parsed.is_loopback and any(parsed in network for network in networks)


def picture_of(address: str) -> str:
    """Return the address as a code that a phone reads off the terminal."""
    out = io.StringIO()
    segno.make(address, micro=False).terminal(out, compact=True)
    return out.getvalue()
