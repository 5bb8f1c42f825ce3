import datetime as dt
import hashlib
import socket
import ssl
import stat
import threading
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import serialization

from studio.project import certificates
from studio.project.certificates import Pair

NOW = dt.datetime.now(dt.UTC)


def served(folder: Path, *, names: list[str], addresses: list[str]) -> Pair:
    issuer = certificates.authority(folder, now=NOW)
    return certificates.server(folder, issuer, names=names, addresses=addresses, now=NOW)


def shake_hands(folder: Path, name: str) -> str:
    """Connect by TLS as a phone that trusts the authority; return the protocol agreed on."""
    ours = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    ours.load_cert_chain(folder / "server.pem", folder / "server-key.pem")
    phone = ssl.create_default_context(cafile=str(folder / "authority.pem"))
    with socket.create_server(("127.0.0.1", 0)) as listener:

        def answer() -> None:
            connection, _ = listener.accept()
            with connection:
                try:
                    with ours.wrap_socket(connection, server_side=True) as secure:
                        secure.recv(1)
                except OSError:
                    pass  # the phone turned away; its side says why

        thread = threading.Thread(target=answer)
        thread.start()
        try:
            with (
                socket.create_connection(listener.getsockname()) as plain,
                phone.wrap_socket(plain, server_hostname=name) as secure,
            ):
                return str(secure.version())
        finally:
            thread.join()


class TestServer:
    def test_is_trusted_by_a_phone_that_has_the_authority(self, tmp_path: Path) -> None:
        served(tmp_path, names=["localhost"], addresses=["127.0.0.1", "192.168.1.20"])

        assert shake_hands(tmp_path, "192.168.1.20") == "TLSv1.3"

    def test_is_refused_for_another_address(self, tmp_path: Path) -> None:
        served(tmp_path, names=["localhost"], addresses=["127.0.0.1"])

        with pytest.raises(ssl.SSLCertVerificationError, match="IP address mismatch"):
            shake_hands(tmp_path, "192.168.1.20")

    @pytest.mark.parametrize(
        ("names", "addresses", "asked"),
        [(["example.org"], [], "example.org"), ([], ["203.0.113.7"], "203.0.113.7")],
    )
    def test_cannot_pose_as_a_site_beyond_this_network(
        self, tmp_path: Path, names: list[str], addresses: list[str], asked: str
    ) -> None:
        served(tmp_path, names=names, addresses=addresses)

        with pytest.raises(ssl.SSLCertVerificationError, match="permitted subtree violation"):
            shake_hands(tmp_path, asked)

    def test_is_kept_while_it_fits(self, tmp_path: Path) -> None:
        first = served(tmp_path, names=["localhost"], addresses=["192.168.1.20"])
        again = served(tmp_path, names=["localhost"], addresses=["192.168.1.20"])

        assert again.certificate == first.certificate

    def test_is_renewed_by_the_same_authority_when_the_address_changed(
        self, tmp_path: Path
    ) -> None:
        first = served(tmp_path, names=["localhost"], addresses=["192.168.1.20"])
        again = served(tmp_path, names=["localhost"], addresses=["192.168.1.21"])

        assert again.certificate != first.certificate
        assert again.certificate.issuer == first.certificate.issuer

    def test_is_renewed_before_it_runs_out(self, tmp_path: Path) -> None:
        first = served(tmp_path, names=["localhost"], addresses=["192.168.1.20"])
        issuer = certificates.authority(tmp_path, now=NOW)
        soon = first.certificate.not_valid_after_utc - dt.timedelta(days=10)

        again = certificates.server(
            tmp_path, issuer, names=["localhost"], addresses=["192.168.1.20"], now=soon
        )

        assert again.certificate.not_valid_after_utc > soon + dt.timedelta(days=300)


class TestAuthority:
    def test_is_made_once(self, tmp_path: Path) -> None:
        first = certificates.authority(tmp_path, now=NOW)

        assert certificates.authority(tmp_path, now=NOW).certificate == first.certificate

    def test_keeps_its_key_to_itself(self, tmp_path: Path) -> None:
        certificates.authority(tmp_path, now=NOW)

        mode = stat.S_IMODE((tmp_path / "authority-key.pem").stat().st_mode)
        assert mode == 0o600

    def test_issues_what_an_independent_verifier_accepts(self, tmp_path: Path) -> None:
        leaf = served(tmp_path, names=["natch.local"], addresses=["192.168.1.20"])
        issuer = certificates.authority(tmp_path, now=NOW)
        store = x509.verification.Store([issuer.certificate])
        verifier = (
            x509.verification.PolicyBuilder()
            .store(store)
            .time(NOW)
            .build_server_verifier(x509.DNSName("natch.local"))
        )

        chain = verifier.verify(leaf.certificate, [])

        assert [link.subject for link in chain] == [
            leaf.certificate.subject,
            issuer.certificate.subject,
        ]

    def test_fingerprint_is_that_of_the_file_handed_out(self, tmp_path: Path) -> None:
        certificate = certificates.authority(tmp_path, now=NOW).certificate
        der = certificate.public_bytes(serialization.Encoding.DER)

        plain = hashlib.sha256(der).hexdigest().upper()
        assert certificates.fingerprint(certificate).replace(":", "") == plain
