"""The topics that painter training has to cover, and where this course asks and shows each.

Topics: 40 CFR 63.11173(f)(2), read as restated in a state's checklist; not the rule's own text.
"""

from collections.abc import Mapping
from dataclasses import dataclass

SOURCE = "epa_6h_restated"


@dataclass(frozen=True, slots=True)
class Topic:
    """One topic.

    objectives  where a question on it stands, as 'module/objective' or 'module/' for all of one
    procedures  whose observation shows the hands-on part
    """

    clause: str
    text: str
    objectives: tuple[str, ...]
    procedures: tuple[str, ...] = ()

    def answers(self, by_objective: Mapping[str, tuple[int, int]]) -> tuple[int, int]:
        """Add up how many questions on it were right, of how many."""
        counts = [count for name, count in by_objective.items() if self._asks(name)]
        return sum(right for right, _ in counts), sum(asked for _, asked in counts)

    def _asks(self, objective: str) -> bool:
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
        ("flow_cup", "set_the_gun"),
    ),
    Topic(
        "63.11173(f)(2)(ii)",
        "Spray technique: distance and angle, banding and overlap, cutting lead and lag",
        ("spray_gun/gun_stroke", "spray_gun/gun_distance", "spray_gun/lead_and_lag"),
        ("spray_surfacer", "epoxy_primer", "etch_primer", "wet_on_wet_sealer"),
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
    ),
)
