"""The topics that painter training has to cover, and where this course asks and shows each.

Topics: 40 CFR 63.11173(f)(2), read as restated in a state's checklist; not the rule's own text.
The restated rule asks for hands-on and classroom parts and exempts no topic from either, so each
topic has both here. A piece of work counts for a topic only where its sheet has the steps that the
topic names.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class HandsOn:
    """One piece of the practical part of a topic, and the procedure whose sheet shows it."""

    work: str
    procedure: str


@dataclass(frozen=True, slots=True)
class Topic:
    """One topic.

    objectives  where a question on it stands, as 'module/objective' or 'module/' for all of one
    hands_on    what has to be watched; every piece of it is needed
    """

    clause: str
    text: str
    objectives: tuple[str, ...]
    hands_on: tuple[HandsOn, ...]

    def asks(self, objective: str) -> bool:
        """Return whether a question of an objective is about this topic."""
        return any(
            objective.startswith(name) if name.endswith("/") else objective == name
            for name in self.objectives
        )


TOPICS: tuple[Topic, ...] = (
    Topic(
        "63.11173(f)(2)(i)",
        "Choosing, setting up and using the spray gun: measuring viscosity, tip or nozzle, "
        "pattern, air pressure and volume, fluid delivery",
        (
            "mixing/flow_cup",
            "spray_gun/gun_parts",
            "spray_gun/set_pressure",
            "spray_gun/test_pattern",
            "spray_gun/settings_and_faults",
            "spray_gun/allowed_guns",
            "shop_air_tools/pressure_and_volume",
        ),
        (
            HandsOn("setting up the gun", "set_the_gun"),
            HandsOn("measuring viscosity", "flow_cup"),
        ),
    ),
    Topic(
        "63.11173(f)(2)(ii)",
        "Spray technique: distance and angle, banding and overlap, cutting lead and lag",
        ("spray_gun/gun_stroke", "spray_gun/gun_distance", "spray_gun/lead_and_lag"),
        (HandsOn("the spray stroke", "spray_flat_panel"),),
    ),
    Topic(
        "63.11173(f)(2)(iii)",
        "Routine upkeep of booth and filters, with choosing and fitting filters",
        (
            "booth_climate/prepare_booth",
            "booth_climate/read_manometer",
            "booth_climate/report_booth",
            "booth_climate/change_filters",
        ),
        (HandsOn("changing the booth filters", "change_filters"),),
    ),
    Topic(
        "63.11173(f)(2)(iv)",
        "Keeping to the rule itself",
        (
            "spray_gun/allowed_guns",
            "spray_gun/clean_gun",
            "environment_records/gun_wash_rules",
            "environment_records/keep_logs",
            "environment_records/keep_times",
            "environment_records/target_metals",
        ),
        (HandsOn("cleaning the gun as the rule asks", "clean_the_gun"),),
    ),
)
