import datetime as dt
import http.client
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from cryptography import x509

from studio.project import certificates, trust_page


@pytest.fixture
def authority(tmp_path: Path) -> x509.Certificate:
    return certificates.authority(tmp_path, now=dt.datetime.now(dt.UTC)).certificate


@pytest.fixture
def page(tmp_path: Path, authority: x509.Certificate) -> Iterator[http.client.HTTPConnection]:
    server = trust_page.server_of(tmp_path / "authority.pem", 0, "https://192.168.1.20:8000")
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    connection = http.client.HTTPConnection("127.0.0.1", server.server_address[1])
    yield connection
    connection.close()
    server.shutdown()
    server.server_close()
    thread.join()


class TestTrustPage:
    def test_shows_what_to_compare_and_where_to_go(
        self, page: http.client.HTTPConnection, authority: x509.Certificate
    ) -> None:
        page.request("GET", "/trust")
        text = page.getresponse().read().decode()

        assert certificates.fingerprint(authority) in text.replace("<wbr>", "")
        assert 'href="https://192.168.1.20:8000"' in text
        assert text.count("<svg") == 3

    def test_hands_out_the_authority(
        self, page: http.client.HTTPConnection, authority: x509.Certificate
    ) -> None:
        page.request("GET", "/natch-authority.crt")
        answer = page.getresponse()

        assert answer.headers["Content-Type"] == "application/x-x509-ca-cert"
        assert x509.load_der_x509_certificate(answer.read()) == authority

    @pytest.mark.parametrize("path", ["/", "/authority-key.pem", "/../authority-key.pem"])
    def test_gives_nothing_else(self, page: http.client.HTTPConnection, path: str) -> None:
        page.request("GET", path)
        answer = page.getresponse()

        assert (answer.status, answer.headers["Location"]) == (302, "/trust")
        assert answer.read() == b""
