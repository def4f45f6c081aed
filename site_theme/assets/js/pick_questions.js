/* Chooses the questions of a check: pure functions from what is stored to a list of questions. */
"use strict";

(() => {
  const QUESTIONS = 10;
  const MOST_OF_ONE_OBJECTIVE = 2;

  /**
   * @template Thing
   * @param {(thing: Thing) => number} value
   * @returns {(a: Thing, b: Thing) => number}
   */
  function byNumber(value) { return (a, b) => value(a) - value(b); }

  /** @type {(entry: Entry) => ObjectiveState | null} */
  function state(entry) { return Guidecoat.progress.state(entry.objective); }

  /* The state of an objective that was met before. */
  /** @type {(entry: Entry) => ObjectiveState} */
  function known(entry) { return /** @type {ObjectiveState} */ (state(entry)); }

  /** @type {(entry: Entry) => string} */
  function moduleOf(entry) { return entry.objective.split("/")[0]; }

  /** @type {(entry: Entry, day: number, need: number | null) => Rank} */
  function rankOf(entry, day, need) {
    const found = state(entry);
    if (!found) { return "new"; }
    if (Guidecoat.schedule.isDue(found, day, need)) { return "due"; }
    return Guidecoat.progress.of(entry.objective).wrong ? "weak" : "firm";
  }

  /* Part the objectives into due (least recalled first), weak (shortest half-life first), new (of
     modules already begun first) and firm; otherwise they keep the outline's order. */
  /** @type {(objectives: Entry[], day: number, need: number | null) => Record<Rank, Entry[]>} */
  function ranked(objectives, day, need) {
    const begun = new Set(objectives.filter(state).map(moduleOf));
    /** @type {Record<Rank, Entry[]>} */
    const groups = { due: [], weak: [], new: [], firm: [] };
    objectives.forEach((entry) => { groups[rankOf(entry, day, need)].push(entry); });
    groups.due.sort(byNumber((entry) => Guidecoat.schedule.recall(known(entry), day)));
    groups.weak.sort(byNumber((entry) => known(entry).half));
    groups.new.sort(byNumber((entry) => begun.has(moduleOf(entry)) ? 0 : 1));
    groups.firm.sort(byNumber((entry) => known(entry).day));
    return groups;
  }

  /** @type {(objectives: Entry[], day: number) => number} */
  function newLeft(objectives, day) {
    const metToday = objectives.filter((entry) => state(entry) && known(entry).since === day);
    return Math.max(0, Guidecoat.schedule.NEW_A_DAY - metToday.length);
  }

  /** @type {(group: Entry[], rank: Rank) => Slot[]} */
  function slots(group, rank) {
    return group.map((entry) => ({ entry, rank }));
  }

  /* Today's objectives in rank order: due, then weak, then as many new ones as the day still takes. */
  Guidecoat.wantedToday = (objectives, day, need) => {
    const groups = ranked(objectives, day, need);
    return slots(groups.due, "due")
      .concat(slots(groups.weak, "weak"))
      .concat(slots(groups.new.slice(0, newLeft(objectives, day)), "new"))
      .slice(0, QUESTIONS);
  };

  /* A module's own check takes every objective, and the cap on new ones does not hold. */
  Guidecoat.wantedOfModule = (objectives, day, need) => {
    const groups = ranked(objectives, day, need);
    /** @type {Rank[]} */
    const ranks = ["due", "weak", "new", "firm"];
    return ranks.flatMap((rank) => slots(groups[rank], rank)).slice(0, QUESTIONS);
  };

  /* The part to ask from: where something went wrong last, else the parts take turns. */
  Guidecoat.partWanted = (entry) => {
    const found = state(entry);
    const items = found ? found.items : {};
    const missed = Object.keys(items).filter((item) => !Guidecoat.progress.wasRight(entry.objective, item)).sort();
    if (missed.length) { return Guidecoat.partOf(entry, missed[0]); }
    return entry.objective + "/" + (Object.keys(items).length % entry.parts.length + 1);
  };

  /* Missed items first, then those never asked, then the longest unasked; else the day's own order. */
  /** @type {(questions: StoredQuestion[], entry: Entry, day: number) => StoredQuestion[]} */
  function inTurn(questions, entry, day) {
    /** @type {(question: StoredQuestion) => number} */
    function turn(question) {
      const tries = Guidecoat.progress.tries(entry.objective, question.id);
      if (!tries.length) { return 1; }
      return tries[tries.length - 1][1] ? 2 + tries[tries.length - 1][0] : 0;
    }
    return questions.slice().sort((a, b) => turn(a) - turn(b) || scattered(day + a.id) - scattered(day + b.id));
  }

  /* A number from a text, the same everywhere: which question comes on which day. */
  /** @type {(text: string) => number} */
  function scattered(text) {
    let sum = 2166136261;
    for (let place = 0; place < text.length; place += 1) {
      sum = Math.imul(sum ^ text.charCodeAt(place), 16777619) >>> 0;
    }
    return sum;
  }

  /* One question of each wanted objective, then second ones until there are ten. */
  Guidecoat.picked = (wanted, questionsOf, day) => {
    const turns = wanted.map((slot) => inTurn(questionsOf(slot.entry), slot.entry, day));
    /** @type {Picked[]} */
    const picks = [];
    for (let round = 0; round < MOST_OF_ONE_OBJECTIVE; round += 1) {
      wanted.forEach((slot, number) => {
        const question = turns[number][round];
        if (question && picks.length < QUESTIONS) {
          picks.push({ entry: slot.entry, rank: slot.rank, question, slot: number });
        }
      });
    }
    return Guidecoat.keptApart(picks.sort(byNumber((pick) => pick.slot)));
  };

  /* Put picks in a row, near their rank order, so that no two neighbours share a method. What cannot
     be kept apart is left out. */
  Guidecoat.keptApart = (picks) => {
    const rest = picks.slice();
    /** @type {typeof picks} */
    const row = [];
    let last = "";
    /** @type {(method: string) => number} */
    function count(method) { return rest.filter((pick) => pick.question.method === method).length; }
    /** @type {(pick: typeof picks[0]) => boolean} */
    function isOther(pick) { return !row.length || pick.question.method !== last; }
    /** @type {(pick: typeof picks[0]) => boolean} */
    function isMany(pick) { return count(pick.question.method) * 2 > rest.length; }
    /** @type {(pick: typeof picks[0]) => boolean} */
    function isNext(pick) { return isOther(pick) && (isMany(pick) || !rest.some(isMany)); }
    for (;;) {
      const pick = rest.find(isNext) || rest.find(isOther);
      if (!pick) { return row; }
      row.push(pick);
      rest.splice(rest.indexOf(pick), 1);
      last = pick.question.method;
    }
  };
})();
