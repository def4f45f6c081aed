"""Keeping the whole course on a phone after the first visit, and as an app on its first screen."""

import json
from base64 import b64encode
from collections.abc import Mapping
from hashlib import sha256
from pathlib import Path

WORKER = "offline.js"
MANIFEST = "course.webmanifest"
COLOUR = "#14181a"
GROUND = "#cdd1cd"
# licences are read beside the fonts, not by a page
NOT_KEPT = (".txt",)
# the pages hold these questions already; icons are for the first screen of a phone, which takes
# them once while it has a network
FOLDERS_NOT_KEPT = ("parts/", "assets/icons/")
ICONS = (
    ("mark-192.png", "192x192", "image/png", "any"),
    ("mark-512.png", "512x512", "image/png", "any"),
    ("mark-tile-512.png", "512x512", "image/png", "maskable"),
    ("mark-framed.svg", "any", "image/svg+xml", "any"),
)


def content_prints(site: Path) -> dict[str, str]:
    """Return each file that is kept with the print of its bytes, as a browser checks it."""
    files = sorted(path for path in site.rglob("*") if path.is_file())
    return {
        path.relative_to(site).as_posix(): _print(path.read_bytes())
        for path in files
        if path.name != WORKER and _is_kept(path.relative_to(site).as_posix())
    }


def _is_kept(path: str) -> bool:
    return not (path.startswith(FOLDERS_NOT_KEPT) or path.endswith(NOT_KEPT))


def offline_worker(prints: Mapping[str, str], theme: Path) -> str:
    """Write the worker that stores an edition; its cache is named by the content.

    prints  from `content_prints`
    theme   folder with the worker's own text in offline.js.txt
    """
    text = (theme / "offline.js.txt").read_text(encoding="utf-8")
    listed = json.dumps(prints, indent=0, sort_keys=True)
    edition = sha256((text + listed).encode()).hexdigest()[:16]
    return text.replace("EDITION", edition).replace("{/* prints */}", listed)


def write_worker(site: Path, theme: Path) -> None:
    """Put the worker beside the pages of a finished site."""
    worker = offline_worker(content_prints(site), theme)
    (site / WORKER).write_text(worker, encoding="utf-8")


def app_manifest(title: str) -> str:
    """Write the web app manifest of a course with this title."""
    return json.dumps(
        {
            "id": "index.html",
            "name": title,
            "short_name": "Guidecoat",
            "description": "Lessons, checks and cautions for the work before the colour.",
            "lang": "en",
            "dir": "ltr",
            "start_url": "index.html",
            "scope": "./",
            "display": "standalone",
            "theme_color": COLOUR,
            "background_color": GROUND,
            "icons": [
                {"src": f"assets/icons/{name}", "sizes": sizes, "type": kind, "purpose": purpose}
                for name, sizes, kind, purpose in ICONS
            ],
        },
        indent=1,
    )


def _print(content: bytes) -> str:
    return "sha256-" + b64encode(sha256(content).digest()).decode("ascii")
