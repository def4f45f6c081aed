"""Commands below `guidecoat records`."""
