"""Where the user's cache folder is, and what the code runs with."""

import os
import sys
from pathlib import Path


def cache_folder() -> Path | None:
    """Return the folder for verdicts in the user's cache folder; None where there is none."""
    said = os.environ.get("XDG_CACHE_HOME", "")
    if said and Path(said).is_absolute():
        return Path(said) / "guidecoat"
    try:
        home = Path.home()
    except RuntimeError:
        return None
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", home / "AppData/Local")) / "guidecoat" / "cache"
    if sys.platform == "darwin":
        return home / "Library" / "Caches" / "guidecoat"
    return home / ".cache" / "guidecoat"


def python_and_packages() -> tuple[str, ...]:
    """Return the version of Python and the installed packages, as their folders name them."""
    folders = [Path(place) for place in sys.path]
    packages = (
        found.name
        for folder in folders
        if folder.name in ("site-packages", "dist-packages") and folder.is_dir()
        for found in sorted(folder.glob("*.dist-info"))
    )
    return (sys.version, *packages)
