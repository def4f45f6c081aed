/* What the learner got right, kept in this browser only.
   One key holds {version, objectives: {objective: {item: 1 or 0}}}: the last first try of each item. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var KEY = "guidecoat-panel-1";
  var SET_ASIDE = "guidecoat-panel-set-aside";
  var kept = { version: 1, objectives: {} };
  var note = "";

  function isWhole(found) {
    return found !== null && typeof found === "object" && found.version === 1 &&
      found.objectives !== null && typeof found.objectives === "object" &&
      Object.keys(found.objectives).every(function (name) {
        var items = found.objectives[name];
        return items !== null && typeof items === "object" &&
          Object.keys(items).every(function (item) { return items[item] === 0 || items[item] === 1; });
      });
  }

  function parsed(text) {
    try {
      var found = JSON.parse(text);
      return isWhole(found) ? found : null;
    } catch (error) {
      return null;
    }
  }

  function write() {
    try {
      localStorage.setItem(KEY, JSON.stringify(kept));
    } catch (error) {
      note = "This browser does not let the page keep your panel. It will be gone when you leave.";
    }
  }

  function read() {
    var text = null;
    try {
      text = localStorage.getItem(KEY);
      if (text === null) { return; }
      var found = parsed(text);
      if (found) { kept = found; return; }
      localStorage.setItem(SET_ASIDE, text);
      localStorage.removeItem(KEY);
      note = "Your saved panel could not be read. It was set aside under “" + SET_ASIDE +
        "” and a new one was started.";
    } catch (error) {
      note = "This browser does not let the page keep your panel. It will be gone when you leave.";
    }
  }

  Guidecoat.progress = {
    record: function (objective, item, right) {
      kept.objectives[objective] = kept.objectives[objective] || {};
      kept.objectives[objective][item] = right ? 1 : 0;
      write();
    },
    /* Count the items last answered right and those last answered wrong. */
    of: function (objective) {
      var items = kept.objectives[objective] || {};
      var right = Object.keys(items).filter(function (item) { return items[item] === 1; }).length;
      return { right: right, wrong: Object.keys(items).length - right };
    },
    wasRight: function (objective, item) {
      return Boolean(kept.objectives[objective]) && kept.objectives[objective][item] === 1;
    },
    asText: function () { return JSON.stringify(kept, null, 1); },
    load: function (text) {
      var found = parsed(text);
      if (!found) { return false; }
      kept = found;
      write();
      return true;
    },
    clear: function () { kept = { version: 1, objectives: {} }; write(); },
    note: function () { return note; }
  };
  read();
})();
