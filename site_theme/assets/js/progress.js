/* What the learner answered, kept in this browser only.
   One key holds {version: 2, need, greeted, objectives, mistakes}:
     need        day by which the learner needs to know all of it, or null
     objectives  name to {half, day, today, since, items: {item: [[day, 1 or 0], ...]}}, first tries only
     mistakes    newest last: {item, objective, day, asked, given, why}
   Version 1 held {objectives: {name: {item: 1 or 0}}}. */
"use strict";

(() => {
  const KEY = "guidecoat-panel-2";
  const OLDER = "guidecoat-panel-1";
  const SET_ASIDE = "guidecoat-panel-set-aside";
  const TRIES_KEPT = 10;
  const MISTAKES_KEPT = 150;
  const LONGEST_TEXT = 600;
  let kept = fresh();
  let note = "";

  function fresh() { return { version: 2, need: null, greeted: false, objectives: {}, mistakes: [] }; }

  function isObject(found) { return found !== null && typeof found === "object" && !Array.isArray(found); }
  function isDay(found) { return Number.isInteger(found) && found >= 0 && found < 1e6; }
  function isTick(found) { return found === 0 || found === 1; }
  function isText(found) { return typeof found === "string" && found.length <= LONGEST_TEXT; }
  function each(found, test) { return isObject(found) && Object.keys(found).every((name) => test(found[name])); }

  function isTry(found) { return Array.isArray(found) && found.length === 2 && isDay(found[0]) && isTick(found[1]); }
  function areTries(found) { return Array.isArray(found) && found.length > 0 && found.every(isTry); }

  function isState(found) {
    return isObject(found) && isDay(found.day) && isDay(found.since) && found.half > 0 && found.half < 1e4 &&
      ["", "right", "wrong", "mended"].includes(found.today) && each(found.items, areTries);
  }

  function isMistake(found) {
    return isObject(found) && isDay(found.day) &&
      ["item", "objective", "asked", "given", "why"].every((part) => isText(found[part]));
  }

  function isWhole(found) {
    return isObject(found) && found.version === 2 && (found.need === null || isDay(found.need)) &&
      typeof found.greeted === "boolean" && each(found.objectives, isState) &&
      Array.isArray(found.mistakes) && found.mistakes.every(isMistake);
  }

  function isWholeOlder(found) {
    return isObject(found) && found.version === 1 &&
      each(found.objectives, (items) => each(items, isTick));
  }

  /* An older panel knew no days: its answers count as given today, the right ones first. */
  function migrated(older) {
    const made = fresh();
    const day = Guidecoat.today();
    Object.keys(older.objectives).forEach((objective) => {
      const items = older.objectives[objective];
      Object.keys(items).sort((a, b) => items[b] - items[a]).forEach((item) => {
        count(made, objective, item, items[item] === 1, day);
      });
    });
    made.greeted = Object.keys(made.objectives).length > 0;
    return made;
  }

  function parsed(text) {
    try {
      const found = JSON.parse(text);
      return isWhole(found) ? found : isWholeOlder(found) ? migrated(found) : null;
    } catch {
      return null;
    }
  }

  function count(store, objective, item, right, day) {
    const state = store.objectives[objective];
    const items = state ? state.items : {};
    items[item] = (items[item] || []).concat([[day, right ? 1 : 0]]).slice(-TRIES_KEPT);
    store.objectives[objective] = { ...Guidecoat.schedule.answered(state, right, day), items };
  }

  function cannotKeep() {
    note = "This browser does not let the page keep your panel. It will be gone when you leave.";
  }

  /* The store knows no page: whoever draws from it listens for "progress". */
  function announce() { window.dispatchEvent(new Event("progress")); }

  function write() {
    try { localStorage.setItem(KEY, JSON.stringify(kept)); } catch { cannotKeep(); }
    announce();
  }

  function read() {
    try {
      const key = localStorage.getItem(KEY) === null ? OLDER : KEY;
      const text = localStorage.getItem(key);
      if (text === null) { return; }
      const found = parsed(text);
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
    } catch {
      cannotKeep();
    }
  }

  function lastTries(objective) {
    const items = kept.objectives[objective] ? kept.objectives[objective].items : {};
    return Object.keys(items).map((item) => items[item][items[item].length - 1][1]);
  }

  function cut(text) { return text.length > LONGEST_TEXT ? text.slice(0, LONGEST_TEXT - 1) + "…" : text; }

  Guidecoat.progress = {
    /* Note a first try; `slip` is {asked, given, why} where it went wrong. */
    record(objective, item, right, slip) {
      const day = Guidecoat.today();
      count(kept, objective, item, right, day);
      kept.mistakes = kept.mistakes.filter((old) => old.item !== item);
      if (!right && slip) {
        kept.mistakes = kept.mistakes.concat([{
          item, objective, day,
          asked: cut(slip.asked), given: cut(slip.given), why: cut(slip.why)
        }]).slice(-MISTAKES_KEPT);
      }
      write();
    },
    /* Count the items last answered right and those last answered wrong. */
    of(objective) {
      const last = lastTries(objective);
      const right = last.filter((tick) => tick === 1).length;
      return { right, wrong: last.length - right };
    },
    wasRight(objective, item) {
      const tries = Guidecoat.progress.tries(objective, item);
      return tries.length > 0 && tries[tries.length - 1][1] === 1;
    },
    tries(objective, item) {
      return (kept.objectives[objective] && kept.objectives[objective].items[item]) || [];
    },
    state(objective) { return kept.objectives[objective] || null; },
    met() { return Object.keys(kept.objectives); },
    mistakes() { return kept.mistakes.slice().reverse(); },
    need() { return kept.need; },
    setNeed(day) { kept.need = day; write(); },
    greeted() { return kept.greeted; },
    greet() { kept.greeted = true; write(); },
    isDue(objective) {
      const state = kept.objectives[objective];
      return Boolean(state) && Guidecoat.schedule.isDue(state, Guidecoat.today(), kept.need);
    },
    asText() { return JSON.stringify(kept, null, 1); },
    load(text) {
      const found = parsed(text);
      if (!found) { return false; }
      kept = found;
      write();
      return true;
    },
    clear() { kept = fresh(); write(); },
    note() { return note; }
  };

  /* Another window of the course may have answered meanwhile. */
  window.addEventListener("storage", (event) => {
    const found = event.key === KEY && event.newValue ? parsed(event.newValue) : null;
    if (found) { kept = found; announce(); }
  });
  read();
})();
