"""Keeping the whole course on a phone after the first visit."""

import json
from collections.abc import Iterable
from hashlib import sha256
from pathlib import Path

from generator.website.draft import BuiltPage

WORKER = "offline.js"


def offline_worker(pages: Iterable[BuiltPage], theme: Path) -> str:
    """Write the worker that stores every page and asset; its cache is named by their content.

    theme  folder with the worker's own text in offline.js.txt, the page frame and assets/
    """
    print_of_content = sha256((theme / "main.html").read_bytes())
    paths = []
    for page in pages:
        paths.append(page.path)
        print_of_content.update(f"{page.path}\n{page.html}\n{page.before}{page.after}".encode())
    for file in sorted(path for path in (theme / "assets").rglob("*") if path.is_file()):
        if file.suffix != ".txt":
            paths.append(file.relative_to(theme).as_posix())
            print_of_content.update(file.read_bytes())
    text = (theme / "offline.js.txt").read_text(encoding="utf-8")
    return text.replace("EDITION", print_of_content.hexdigest()[:16]).replace(
        "[/* paths */]", json.dumps(paths, indent=0)
    )
