"""Serves a folder as a careful host does: compressed, and checked again at every visit."""

import gzip
import socket
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from functools import cache, partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any
from urllib.parse import unquote, urlsplit

COMPRESSED = (".html", ".css", ".js", ".svg", ".webmanifest")


@cache
def compressed(path: Path, changed: int) -> bytes:
    """Return a file's gzip bytes; `changed` is its time of change, so that a new build counts."""
    return gzip.compress(path.read_bytes(), compresslevel=9, mtime=0)


class GzipHandler(SimpleHTTPRequestHandler):
    """Answers with gzip where it pays, and says nothing on the console."""

    protocol_version = "HTTP/1.1"

    def __init__(self, *arguments: Any, asked: list[str], late: float, **more: Any) -> None:
        """Note the paths that are asked for; send a typeface `late` seconds later."""
        self.asked = asked
        self.late = late
        super().__init__(*arguments, **more)

    def do_GET(self) -> None:
        """Send a text compressed and anything else as it is."""
        self.asked.append(self.path)
        if self.late and self.path.endswith(".woff2"):
            time.sleep(self.late)
        place = unquote(urlsplit(self.path).path).lstrip("/") or "index.html"
        file = Path(self.directory) / place
        if not file.is_file() or file.suffix not in COMPRESSED:
            super().do_GET()
            return
        body = compressed(file, file.stat().st_mtime_ns)
        self.send_response(200)
        self.send_header("Content-Type", self.guess_type(str(file)))
        self.send_header("Content-Encoding", "gzip")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def end_headers(self) -> None:
        """Let the browser ask each time, as a small host without versioned names must."""
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def log_message(self, format: str, *arguments: object) -> None:
        """Say nothing."""


class QuietServer(ThreadingHTTPServer):
    """A server that does not mind a browser that hangs up."""

    daemon_threads = True

    def __init__(self, *arguments: Any) -> None:
        """Begin with no connection."""
        super().__init__(*arguments)
        self.connections: list[socket.socket] = []

    def process_request(self, request: Any, client_address: Any) -> None:
        """Note the connection, which a browser keeps open for its next request."""
        self.connections.append(request)
        super().process_request(request, client_address)

    def hang_up(self) -> None:
        """End every connection, as a machine does that is switched off."""
        for connection in self.connections:
            with suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)

    def handle_error(self, request: object, client_address: object) -> None:
        """Say nothing: the browser closed a connection it no longer wanted."""


@contextmanager
def served(folder: Path, asked: list[str] | None = None, late: float = 0) -> Iterator[str]:
    """Serve a folder on this machine only, at a port of its own; give the address.

    asked  takes the path of every request
    late   seconds that each typeface is held back
    """
    noted = [] if asked is None else asked
    handler = partial(GzipHandler, directory=str(folder), asked=noted, late=late)
    with QuietServer(("127.0.0.1", 0), handler) as server:
        thread = threading.Thread(target=server.serve_forever, daemon=True)
        thread.start()
        try:
            yield f"http://127.0.0.1:{server.server_address[1]}"
        finally:
            server.shutdown()
            server.hang_up()
            thread.join()
