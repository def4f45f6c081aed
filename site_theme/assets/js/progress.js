/* What the learner answered, kept in this browser only.
   One key holds {version: 2, need, greeted, objectives, mistakes}:
     need        day by which everything should sit, or null
     objectives  name to {half, day, today, since, items: {item: [[day, 1 or 0], ...]}}, first tries only
     mistakes    newest last: {item, objective, day, asked, given, why}
   Version 1 held {objectives: {name: {item: 1 or 0}}}. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var KEY = "guidecoat-panel-2";
  var OLDER = "guidecoat-panel-1";
  var SET_ASIDE = "guidecoat-panel-set-aside";
  var TRIES_KEPT = 10, MISTAKES_KEPT = 150, LONGEST_TEXT = 600;
  var kept = fresh();
  var note = "";

  function fresh() { return { version: 2, need: null, greeted: false, objectives: {}, mistakes: [] }; }

  function isObject(found) { return found !== null && typeof found === "object" && !Array.isArray(found); }
  function isDay(found) { return Number.isInteger(found) && found >= 0 && found < 1e6; }
  function isTick(found) { return found === 0 || found === 1; }
  function isText(found) { return typeof found === "string" && found.length <= LONGEST_TEXT; }
  function each(found, test) { return isObject(found) && Object.keys(found).every(function (name) { return test(found[name]); }); }

  function isTry(found) { return Array.isArray(found) && found.length === 2 && isDay(found[0]) && isTick(found[1]); }
  function areTries(found) { return Array.isArray(found) && found.length > 0 && found.every(isTry); }

  function isState(found) {
    return isObject(found) && isDay(found.day) && isDay(found.since) && found.half > 0 && found.half < 1e4 &&
      ["", "right", "wrong", "mended"].indexOf(found.today) >= 0 && each(found.items, areTries);
  }

  function isMistake(found) {
    return isObject(found) && isDay(found.day) &&
      ["item", "objective", "asked", "given", "why"].every(function (part) { return isText(found[part]); });
  }

  function isWhole(found) {
    return isObject(found) && found.version === 2 && (found.need === null || isDay(found.need)) &&
      typeof found.greeted === "boolean" && each(found.objectives, isState) &&
      Array.isArray(found.mistakes) && found.mistakes.every(isMistake);
  }

  function isWholeOlder(found) {
    return isObject(found) && found.version === 1 &&
      each(found.objectives, function (items) { return each(items, isTick); });
  }

  /* An older panel knew no days: its answers count as given today, the right ones first. */
  function migrated(older) {
    var made = fresh(), day = Guidecoat.today();
    Object.keys(older.objectives).forEach(function (objective) {
      var items = older.objectives[objective];
      Object.keys(items).sort(function (a, b) { return items[b] - items[a]; }).forEach(function (item) {
        count(made, objective, item, items[item] === 1, day);
      });
    });
    made.greeted = Object.keys(made.objectives).length > 0;
    return made;
  }

  function parsed(text) {
    try {
      var found = JSON.parse(text);
      return isWhole(found) ? found : isWholeOlder(found) ? migrated(found) : null;
    } catch (error) {
      return null;
    }
  }

  function count(store, objective, item, right, day) {
    var state = store.objectives[objective];
    var items = state ? state.items : {};
    var made = Guidecoat.schedule.answered(state, right, day);
    items[item] = (items[item] || []).concat([[day, right ? 1 : 0]]).slice(-TRIES_KEPT);
    made.items = items;
    store.objectives[objective] = made;
  }

  function cannotKeep() {
    note = "This browser does not let the page keep your panel. It will be gone when you leave.";
  }

  function write() {
    try { localStorage.setItem(KEY, JSON.stringify(kept)); } catch (error) { cannotKeep(); }
  }

  function read() {
    try {
      var key = localStorage.getItem(KEY) === null ? OLDER : KEY;
      var text = localStorage.getItem(key);
      if (text === null) { return; }
      var found = parsed(text);
      if (!found) {
        localStorage.setItem(SET_ASIDE, text);
        localStorage.removeItem(key);
        note = "Your saved panel could not be read. It was set aside under “" + SET_ASIDE +
          "” and a new one was started.";
        return;
      }
      kept = found;
      if (key === OLDER) {
        localStorage.setItem(KEY, JSON.stringify(kept));
        localStorage.removeItem(OLDER);
      }
    } catch (error) {
      cannotKeep();
    }
  }

  function lastTries(objective) {
    var items = kept.objectives[objective] ? kept.objectives[objective].items : {};
    return Object.keys(items).map(function (item) { return items[item][items[item].length - 1][1]; });
  }

  function cut(text) { return text.length > LONGEST_TEXT ? text.slice(0, LONGEST_TEXT - 1) + "…" : text; }

  Guidecoat.progress = {
    /* Note a first try; `slip` is {asked, given, why} where it went wrong. */
    record: function (objective, item, right, slip) {
      var day = Guidecoat.today();
      count(kept, objective, item, right, day);
      kept.mistakes = kept.mistakes.filter(function (old) { return old.item !== item; });
      if (!right && slip) {
        kept.mistakes = kept.mistakes.concat([{
          item: item, objective: objective, day: day,
          asked: cut(slip.asked), given: cut(slip.given), why: cut(slip.why)
        }]).slice(-MISTAKES_KEPT);
      }
      write();
    },
    /* Count the items last answered right and those last answered wrong. */
    of: function (objective) {
      var last = lastTries(objective);
      var right = last.filter(function (tick) { return tick === 1; }).length;
      return { right: right, wrong: last.length - right };
    },
    wasRight: function (objective, item) {
      var tries = Guidecoat.progress.tries(objective, item);
      return tries.length > 0 && tries[tries.length - 1][1] === 1;
    },
    tries: function (objective, item) {
      return (kept.objectives[objective] && kept.objectives[objective].items[item]) || [];
    },
    state: function (objective) { return kept.objectives[objective] || null; },
    met: function () { return Object.keys(kept.objectives); },
    mistakes: function () { return kept.mistakes.slice().reverse(); },
    need: function () { return kept.need; },
    setNeed: function (day) { kept.need = day; write(); },
    greeted: function () { return kept.greeted; },
    greet: function () { kept.greeted = true; write(); },
    isDue: function (objective) {
      var state = kept.objectives[objective];
      return Boolean(state) && Guidecoat.schedule.isDue(state, Guidecoat.today(), kept.need);
    },
    asText: function () { return JSON.stringify(kept, null, 1); },
    load: function (text) {
      var found = parsed(text);
      if (!found) { return false; }
      kept = found;
      write();
      return true;
    },
    clear: function () { kept = fresh(); write(); },
    note: function () { return note; }
  };

  /* Another window of the course may have answered meanwhile. */
  window.addEventListener("storage", function (event) {
    var found = event.key === KEY && event.newValue ? parsed(event.newValue) : null;
    if (found) { kept = found; Guidecoat.drawPanel(); }
  });
  read();
})();
