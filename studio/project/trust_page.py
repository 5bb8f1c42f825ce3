"""The one page on plain http: it hands the studio's certificate to a phone that lacks it.

Run as `python -m studio.project.trust_page AUTHORITY.pem PORT ADDRESS`. It serves nothing else.
"""

import html
import sys
from functools import partial
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from cryptography import x509
from cryptography.hazmat.primitives import serialization

from studio.project.certificates import fingerprint

PAGE = Path(__file__).with_name("trust.html")
CERTIFICATE_PATH = "/natch-authority.crt"
POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"


class TrustHandler(BaseHTTPRequestHandler):
    """Answers with the page or the certificate, and sends everything else to the page."""

    server_version = "Natch"
    sys_version = ""

    def __init__(self, *args: Any, page: bytes, certificate: bytes) -> None:
        self.page = page
        self.certificate = certificate
        super().__init__(*args)

    def do_GET(self) -> None:
        """Answer one request."""
        path = self.path.partition("?")[0].rstrip("/")
        if path == "/trust":
            self._give(self.page, "text/html; charset=utf-8")
        elif path == CERTIFICATE_PATH:
            self._give(self.certificate, "application/x-x509-ca-cert")
        else:
            self.send_response(HTTPStatus.FOUND)
            self.send_header("Location", "/trust")
            self.send_header("Content-Length", "0")
            self.end_headers()

    do_HEAD = do_GET  # noqa: N815

    def _give(self, body: bytes, kind: str) -> None:
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.send_header("Content-Security-Policy", POLICY)
        self.send_header("Cache-Control", "no-store")
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def log_message(self, format: str, *args: Any) -> None:
        """Keep quiet: who fetched a public certificate is nobody's business."""


def page_for(certificate: x509.Certificate, address: str) -> bytes:
    """Return the page with the fingerprint to compare and the address to go on to."""
    page = PAGE.read_text(encoding="utf-8")
    page = page.replace("{fingerprint}", fingerprint(certificate).replace(":", ":<wbr>"))
    return page.replace("{address}", html.escape(address)).encode()


def server_of(authority: Path, port: int, address: str) -> ThreadingHTTPServer:
    """Return the server, bound and not yet serving."""
    certificate = x509.load_pem_x509_certificate(authority.read_bytes())
    handler = partial(
        TrustHandler,
        page=page_for(certificate, address),
        certificate=certificate.public_bytes(serialization.Encoding.DER),
    )
    return ThreadingHTTPServer(("0.0.0.0", port), handler)  # noqa: S104  (phones must reach it)


if __name__ == "__main__":
    server_of(Path(sys.argv[1]), int(sys.argv[2]), sys.argv[3]).serve_forever()
