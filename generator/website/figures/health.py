"""The purge curve and the noise chart."""

from fractions import Fraction
from math import log10

from generator.refinishing import recommended_duration, reference_duration, removal_time
from generator.website.figures.drawing import figure_frame, line, path, words

LEFT, RIGHT, TOP, BOTTOM = 52.0, 292.0, 34.0, 254.0
CHANGES = (60, 120)
MOST_MINUTES = 6
QUIETEST, LOUDEST = 85, 105
LONGEST_HOURS, SHORTEST_HOURS = 16.0, 0.0625
SHOWN_HOURS = ((16, "16 h"), (8, "8 h"), (4, "4 h"), (2, "2 h"), (1, "1 h"), (0.25, "15 min"))


def purge_curve() -> str:
    """Draw the share of mist left in evenly mixed air against minutes of running the fan."""
    shapes = [words(8, 18, "Mist left, % of the start", strong=True)]
    for share in range(0, 101, 20):
        shapes.append(line(LEFT, _share_down(share), RIGHT, _share_down(share), "thin"))
        shapes.append(words(LEFT - 8, _share_down(share) + 5, str(share), "end"))
    for minutes in range(MOST_MINUTES + 1):
        shapes.append(line(_minutes_across(minutes), TOP, _minutes_across(minutes), BOTTOM, "thin"))
        shapes.append(words(_minutes_across(minutes), BOTTOM + 20, str(minutes), "middle"))
    shapes.append(words((LEFT + RIGHT) / 2, BOTTOM + 42, "Minutes with the fan on", "middle", True))
    for changes in CHANGES:
        curve = [(_minutes_across(0), _share_down(100))]
        curve += [
            (_minutes_across(spent), _share_down(share))
            for share in range(90, 0, -2)
            if (spent := _minutes_to(share, changes)) <= MOST_MINUTES
        ]
        shapes.append(path(curve, "line" if changes == CHANGES[0] else "dashed"))
    for place, (changes, look) in enumerate(zip(CHANGES, ("Solid", "Dashed"), strict=True)):
        text = f"{look}: {changes} changes an hour"
        shapes.append(words(RIGHT - 4, TOP + 24 + 20 * place, text, "end"))
    shapes.append(words(8, BOTTOM + 66, "Evenly mixed air only. Never a mask-off time."))
    return figure_frame(
        "purge_curve",
        "Mist left against minutes with the fan on",
        f"Two falling curves. At {CHANGES[0]} air changes an hour a tenth is left after "
        f"{_minutes_to(10, CHANGES[0]):.1f} minutes, at {CHANGES[1]} after "
        f"{_minutes_to(10, CHANGES[1]):.1f}. They hold for evenly mixed air only, and they are "
        "never a time to take a mask off.",
        332,
        shapes,
    )


def noise_time() -> str:
    """Draw hours against noise level for the legal rule and for the stricter advice."""
    shapes = [words(8, 18, "Time at that level", strong=True)]
    for hours, label in SHOWN_HOURS:
        shapes.append(line(LEFT, _hours_down(hours), RIGHT, _hours_down(hours), "thin"))
        shapes.append(words(LEFT - 6, _hours_down(hours) + 5, label, "end"))
    for level in range(QUIETEST, LOUDEST + 1, 5):
        shapes.append(line(_level_across(level), TOP, _level_across(level), BOTTOM, "thin"))
        shapes.append(words(_level_across(level), BOTTOM + 20, str(level), "middle"))
    shapes.append(words((LEFT + RIGHT) / 2, BOTTOM + 42, "Noise, dBA", "middle", True))
    levels = range(QUIETEST, LOUDEST + 1)
    rule = [(_level_across(n), _hours_down(float(reference_duration(Fraction(n))))) for n in levels]
    advice = [(_level_across(n), _hours_down(_advised_hours(n))) for n in levels]
    shapes.append(path(rule))
    shapes.append(path([point for point in advice if point[1] <= BOTTOM], "dashed"))
    shapes.append(words(_level_across(94), _hours_down(6.2), "US rule, 5 dB halves"))
    shapes.append(words(_level_across(85) + 4, _hours_down(0.34), "Advice, 3 dB halves"))
    return figure_frame(
        "noise_time",
        "Time against noise level by two conventions",
        "Two falling lines on a scale that halves from step to step. The United States rule "
        "starts from 8 hours at 90 dBA and halves every 5 dB; the stricter advice starts from 8 "
        "hours at 85 dBA and halves every 3 dB.",
        308,
        shapes,
    )


def _minutes_to(share_left: int, changes: int) -> float:
    return float(removal_time(Fraction(changes), Fraction(100 - share_left)))


def _advised_hours(level: int) -> float:
    return float(recommended_duration(Fraction(level))) / 60


def _minutes_across(minutes: float) -> float:
    return LEFT + minutes / MOST_MINUTES * (RIGHT - LEFT)


def _share_down(share: float) -> float:
    return BOTTOM - share / 100 * (BOTTOM - TOP)


def _level_across(level: float) -> float:
    return LEFT + (level - QUIETEST) / (LOUDEST - QUIETEST) * (RIGHT - LEFT)


def _hours_down(hours: float) -> float:
    whole = log10(LONGEST_HOURS / SHORTEST_HOURS)
    return TOP + log10(LONGEST_HOURS / hours) / whole * (BOTTOM - TOP)
