"""The one error that a trade relation raises."""


class OutsideValidity(ValueError):
    """An input lies outside the range in which a relation holds; the text says which and why."""
