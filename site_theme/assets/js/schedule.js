/* When an objective comes up again. Its half-life is the days after which half would be gone;
   only right and wrong first tries move it, and it is asked again when recall would fall to 85 %. */
"use strict";

(() => {
  const START = 2;
  const SHORTEST = 0.5;
  const LONGEST = 256;
  const DAYS_A_HALF_LIFE = Math.log2(1 / 0.85);
  /* with a date of need, no wait is longer than this share of the days that were left */
  const SHARE_OF_REST = 5;

  /** @type {(half: number) => number} */
  function within(half) {
    return Math.round(Math.min(LONGEST, Math.max(SHORTEST, half)) * 10000) / 10000;
  }

  /* A day counts once each way: the first right answer doubles, the first wrong one cuts to a
     third, and a right one after a wrong one had its help, so it gives 1.3. */
  /** @type {(sofar: string, right: boolean) => number} */
  function factor(sofar, right) {
    if (right) { return sofar === "" ? 2 : sofar === "wrong" ? 1.3 : 1; }
    return sofar === "" || sofar === "right" ? 1 / 3 : 1;
  }

  /** @type {(sofar: ObjectiveState["today"], right: boolean) => ObjectiveState["today"]} */
  function next(sofar, right) {
    if (right) { return sofar === "wrong" ? "mended" : sofar || "right"; }
    return sofar === "mended" ? "mended" : "wrong";
  }

  Guidecoat.schedule = {
    START,
    NEW_A_DAY: 5,

    /* Give {half, day, today, since} after an answer; before the first one there is none. */
    answered(state, right, day) {
      const old = state || { half: START, day, today: "", since: day };
      const sofar = old.day === day ? old.today : "";
      return {
        half: within(old.half * factor(sofar, right)),
        day,
        today: next(sofar, right),
        since: old.since
      };
    },

    /* Whole days until recall falls to 85 %: to the nearest day, half up, one at least. */
    gap(half) { return Math.max(1, Math.floor(half * DAYS_A_HALF_LIFE + 0.5)); },

    /* The day on which an objective is due; a date of need brings it forward. */
    dueDay(state, need) {
      const gap = Guidecoat.schedule.gap(state.half);
      if (need === null || need <= state.day) { return state.day + gap; }
      return state.day + Math.min(gap, Math.max(1, Math.floor((need - state.day) / SHARE_OF_REST)));
    },

    /* A last day that lies ahead means that a clock was wrong, so it is asked again. */
    isDue(state, day, need) {
      const counted = need !== null && need > day ? need : null;
      return state.day > day || Guidecoat.schedule.dueDay(state, counted) <= day;
    },

    /* How much would be recalled on a day, 0 to 1. */
    recall(state, day) { return Math.pow(2, -Math.max(0, day - state.day) / state.half); }
  };
})();
