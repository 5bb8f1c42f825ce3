"""The studio's own certificate authority, so that phones in its network get a padlock.

The authority's key never leaves the data folder, and its certificate is limited to private
addresses and `.local` names (RFC 5280, 4.2.1.10): whoever stole the key could pose as no site
beyond this network.
"""

import datetime as dt
import ipaddress
import os
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

AUTHORITY_DAYS: Final = 3650
SERVER_DAYS: Final = 397  # iPhones take no more than 825 (support.apple.com/HT210176)
RENEW_DAYS: Final = 30
PRIVATE_NETWORKS: Final = (
    "10.0.0.0/8",
    "172.16.0.0/12",
    "192.168.0.0/16",
    "169.254.0.0/16",
    "127.0.0.0/8",
    "fc00::/7",
    "fe80::/10",
    "::1/128",
)


@dataclass(frozen=True)
class Pair:
    """A certificate and the file of its key."""

    certificate: x509.Certificate
    key: ec.EllipticCurvePrivateKey


def authority(folder: Path, *, now: dt.datetime) -> Pair:
    """Return the authority kept in `folder`, made on first use."""
    kept = load(folder / "authority.pem", folder / "authority-key.pem")
    if kept is not None and kept.certificate.not_valid_after_utc > now:
        return kept
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name(
        [x509.NameAttribute(NameOID.COMMON_NAME, f"Natch studio {now:%Y-%m-%d %H:%M}")]
    )
    permitted: list[x509.GeneralName] = [
        x509.IPAddress(ipaddress.ip_network(network)) for network in PRIVATE_NETWORKS
    ]
    permitted += [x509.DNSName("local"), x509.DNSName("localhost")]
    certificate = (
        blank(name, name, key, now=now, days=AUTHORITY_DAYS)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(x509.NameConstraints(permitted, None), critical=True)
        .add_extension(usage(signs_certificates=True), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    return save(Pair(certificate, key), folder / "authority.pem", folder / "authority-key.pem")


def server(
    folder: Path, issuer: Pair, *, names: Sequence[str], addresses: Sequence[str], now: dt.datetime
) -> Pair:
    """Return a certificate for these names and addresses; kept while it fits and lasts."""
    kept = load(folder / "server.pem", folder / "server-key.pem")
    wanted = alternatives(names, addresses)
    if kept is not None and still_serves(kept.certificate, issuer, wanted, now=now):
        return kept
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Natch")])
    identifier = issuer.certificate.extensions.get_extension_for_class(x509.SubjectKeyIdentifier)
    certificate = (
        blank(subject, issuer.certificate.subject, key, now=now, days=SERVER_DAYS)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(wanted, critical=False)
        .add_extension(usage(signs_certificates=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(identifier.value),
            critical=False,
        )
        .sign(issuer.key, hashes.SHA256())
    )
    return save(Pair(certificate, key), folder / "server.pem", folder / "server-key.pem")


def alternatives(names: Sequence[str], addresses: Sequence[str]) -> x509.SubjectAlternativeName:
    """Return the names under which the server may be called."""
    return x509.SubjectAlternativeName(
        [
            *(x509.DNSName(name) for name in names),
            *(x509.IPAddress(ipaddress.ip_address(address)) for address in addresses),
        ]
    )


def still_serves(
    certificate: x509.Certificate,
    issuer: Pair,
    wanted: x509.SubjectAlternativeName,
    *,
    now: dt.datetime,
) -> bool:
    """Say whether a kept certificate is this authority's, names the same, and lasts a while."""
    found = certificate.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    lasts = certificate.not_valid_after_utc > now + dt.timedelta(days=RENEW_DAYS)
    is_ours = certificate.issuer == issuer.certificate.subject
    return lasts and is_ours and set(found) == set(wanted)


def blank(
    subject: x509.Name,
    issuer: x509.Name,
    key: ec.EllipticCurvePrivateKey,
    *,
    now: dt.datetime,
    days: int,
) -> x509.CertificateBuilder:
    """Return a certificate that lacks only its extensions and signature."""
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(issuer)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - dt.timedelta(days=1))  # a phone's clock may be behind
        .not_valid_after(now + dt.timedelta(days=days))
    )


def usage(*, signs_certificates: bool) -> x509.KeyUsage:
    """Return what a key may be used for."""
    return x509.KeyUsage(
        digital_signature=not signs_certificates,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        key_cert_sign=signs_certificates,
        crl_sign=signs_certificates,
        encipher_only=False,
        decipher_only=False,
    )


def load(certificate: Path, key: Path) -> Pair | None:
    """Return what the two files hold, or nothing when either is missing."""
    if not (certificate.is_file() and key.is_file()):
        return None
    private = serialization.load_pem_private_key(key.read_bytes(), password=None)
    if not isinstance(private, ec.EllipticCurvePrivateKey):
        return None
    return Pair(x509.load_pem_x509_certificate(certificate.read_bytes()), private)


def save(pair: Pair, certificate: Path, key: Path) -> Pair:
    """Write both, the key for its owner's eyes only."""
    certificate.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    private = pair.key.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )
    key.unlink(missing_ok=True)
    number = os.open(key, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(number, "wb") as paper:
        paper.write(private)
    certificate.write_bytes(pair.certificate.public_bytes(serialization.Encoding.PEM))
    return pair


def fingerprint(certificate: x509.Certificate) -> str:
    """Return the SHA-256 fingerprint as phones show it."""
    return certificate.fingerprint(hashes.SHA256()).hex(":").upper()
