/* Chooses the questions of a check: pure functions from what is stored to a list of questions. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var QUESTIONS = 10;
  var MOST_OF_ONE_OBJECTIVE = 2;

  function byNumber(value) { return function (a, b) { return value(a) - value(b); }; }

  function state(entry) { return Guidecoat.progress.state(entry.objective); }

  function moduleOf(entry) { return entry.objective.split("/")[0]; }

  function rankOf(entry, day, need) {
    if (!state(entry)) { return "new"; }
    if (Guidecoat.schedule.isDue(state(entry), day, need)) { return "due"; }
    return Guidecoat.progress.of(entry.objective).wrong ? "weak" : "firm";
  }

  /* Part the objectives into due (least recalled first), weak (shortest half-life first), new (of
     modules already begun first) and firm; otherwise they keep the outline's order. */
  function ranked(objectives, day, need) {
    var begun = {};
    var groups = { due: [], weak: [], "new": [], firm: [] };
    objectives.forEach(function (entry) {
      groups[rankOf(entry, day, need)].push(entry);
      if (state(entry)) { begun[moduleOf(entry)] = true; }
    });
    groups.due.sort(byNumber(function (entry) { return Guidecoat.schedule.recall(state(entry), day); }));
    groups.weak.sort(byNumber(function (entry) { return state(entry).half; }));
    groups["new"].sort(byNumber(function (entry) { return begun[moduleOf(entry)] ? 0 : 1; }));
    groups.firm.sort(byNumber(function (entry) { return state(entry).day; }));
    return groups;
  }

  function newLeft(objectives, day) {
    var metToday = objectives.filter(function (entry) { return state(entry) && state(entry).since === day; });
    return Math.max(0, Guidecoat.schedule.NEW_A_DAY - metToday.length);
  }

  function slots(group, rank) {
    return group.map(function (entry) { return { entry: entry, rank: rank }; });
  }

  /* Today's objectives in rank order: due, then weak, then as many new ones as the day still takes. */
  Guidecoat.wantedToday = function (objectives, day, need) {
    var groups = ranked(objectives, day, need);
    return slots(groups.due, "due")
      .concat(slots(groups.weak, "weak"))
      .concat(slots(groups["new"].slice(0, newLeft(objectives, day)), "new"))
      .slice(0, QUESTIONS);
  };

  /* A module's own check takes every objective, and the cap on new ones does not hold. */
  Guidecoat.wantedOfModule = function (objectives, day, need) {
    var groups = ranked(objectives, day, need);
    return ["due", "weak", "new", "firm"].reduce(function (list, rank) {
      return list.concat(slots(groups[rank], rank));
    }, []).slice(0, QUESTIONS);
  };

  /* The part to ask from: where something went wrong last, else the parts take turns. */
  Guidecoat.partWanted = function (entry) {
    var items = state(entry) ? state(entry).items : {};
    var missed = Object.keys(items).filter(function (item) {
      return !Guidecoat.progress.wasRight(entry.objective, item);
    }).sort();
    if (missed.length) { return Guidecoat.partOf(entry, missed[0]); }
    return entry.objective + "/" + (Object.keys(items).length % entry.parts.length + 1);
  };

  /* Missed items first, then those never asked, then the longest unasked; else the day's own order. */
  function inTurn(questions, entry, day) {
    function turn(question) {
      var tries = Guidecoat.progress.tries(entry.objective, question.id);
      if (!tries.length) { return 1; }
      return tries[tries.length - 1][1] ? 2 + tries[tries.length - 1][0] : 0;
    }
    return questions.slice().sort(function (a, b) {
      return turn(a) - turn(b) || scattered(day + a.id) - scattered(day + b.id);
    });
  }

  /* A number from a text, the same everywhere: which question comes on which day. */
  function scattered(text) {
    var sum = 2166136261;
    for (var place = 0; place < text.length; place += 1) {
      sum = Math.imul(sum ^ text.charCodeAt(place), 16777619) >>> 0;
    }
    return sum;
  }

  /* One question of each wanted objective, then second ones until there are ten. */
  Guidecoat.picked = function (wanted, questionsOf, day) {
    var turns = wanted.map(function (slot) { return inTurn(questionsOf(slot.entry), slot.entry, day); });
    var picks = [];
    for (var round = 0; round < MOST_OF_ONE_OBJECTIVE; round += 1) {
      wanted.forEach(function (slot, number) {
        var question = turns[number][round];
        if (question && picks.length < QUESTIONS) {
          picks.push({ entry: slot.entry, rank: slot.rank, question: question, slot: number });
        }
      });
    }
    return Guidecoat.keptApart(picks.sort(byNumber(function (pick) { return pick.slot; })));
  };

  /* Put picks in a row, near their rank order, so that no two neighbours share a method. What cannot
     be kept apart is left out. */
  Guidecoat.keptApart = function (picks) {
    var rest = picks.slice(), row = [], last = null;
    function count(method) {
      return rest.filter(function (pick) { return pick.question.method === method; }).length;
    }
    function next(pick) {
      return pick.question.method !== last && (count(pick.question.method) * 2 > rest.length ||
        !rest.some(function (other) { return count(other.question.method) * 2 > rest.length; }));
    }
    while (rest.length) {
      var pick = rest.find(next) || rest.find(function (other) { return other.question.method !== last; });
      if (!pick) { break; }
      row.push(pick);
      rest.splice(rest.indexOf(pick), 1);
      last = pick.question.method;
    }
    return row;
  };
})();
