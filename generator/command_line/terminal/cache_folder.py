"""Where the user's cache folder is."""

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
