/* Today's check, and the check of one module from its question page. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function need() { return Guidecoat.progress.need(); }

  /* Load what is wanted, then ask; says so where a part cannot be had. */
  function begin(place, wanted, index, ready, finished) {
    var day = Guidecoat.today();
    var tell = place.querySelector(".check-note");
    var names = wanted.map(function (slot) { return Guidecoat.partWanted(slot.entry); });
    tell.textContent = "";
    Promise.all(names.map(Guidecoat.part)).then(function (parts) {
      var held = {};
      wanted.forEach(function (slot, number) { held[slot.entry.objective] = parts[number]; });
      var picks = Guidecoat.picked(wanted, function (entry) { return held[entry.objective]; }, day);
      place.querySelector(".check-intro").hidden = true;
      place.querySelector(".check-end").hidden = true;
      ready();
      Guidecoat.runCheck(place.querySelector(".sitting"), picks, function (asked, right) {
        var end = place.querySelector(".check-end");
        Guidecoat.summary(end.querySelector(".summary"), asked, right, index);
        end.hidden = false;
        end.querySelector("h2").focus();
        end.querySelector("h2").scrollIntoView({ block: "start" });
        finished();
      });
    }).catch(function () {
      tell.textContent = "The questions could not be loaded. Open this page once with a network; after that it works without one.";
    });
  }

  function counts(wanted) {
    var words = { due: "due again", weak: "missed last time", "new": "new" };
    return Object.keys(words).map(function (rank) {
      var number = wanted.filter(function (slot) { return slot.rank === rank; }).length;
      return number ? number + " " + words[rank] : "";
    }).filter(Boolean).join(", ");
  }

  /* Say when something falls due next, and how much. */
  function nextDue(index) {
    var days = index.objectives.map(function (entry) {
      return Guidecoat.progress.state(entry.objective);
    }).filter(Boolean).map(function (state) { return Guidecoat.schedule.dueDay(state, need()); });
    if (!days.length) { return ""; }
    var first = Math.max(Math.min.apply(null, days), Guidecoat.today());
    var number = days.filter(function (day) { return day <= first; }).length;
    return "Next due " + Guidecoat.dayWords(first) + ": " + Guidecoat.counted(number, "objective", "objectives") + ".";
  }

  function startToday(place, index) {
    var intro = place.querySelector(".check-intro");
    var first = place.querySelector(".first-run");
    var anyway = false;

    function wanted() {
      var find = anyway ? Guidecoat.wantedOfModule : Guidecoat.wantedToday;
      return find(index.objectives, Guidecoat.today(), need());
    }

    function lay() {
      anyway = false;
      var list = wanted();
      anyway = !list.length;
      intro.querySelector(".check-what").textContent = list.length
        ? "Objectives in this check: " + counts(list) + "."
        : "Nothing is due, and today's new objectives are done. " + nextDue(index);
      intro.querySelector(".check-start").textContent = list.length ? "Start the check" : "Ask me ten all the same";
    }

    function after() {
      lay();
      place.querySelector(".check-next").textContent = anyway
        ? "That is all for today. " + nextDue(index) : "There is more for today: " + counts(wanted()) + ".";
      place.querySelector(".check-again").hidden = anyway;
    }

    function go() { begin(place, wanted(), index, function () {}, after); }

    lay();
    first.hidden = Guidecoat.progress.greeted();
    intro.hidden = !first.hidden;
    first.querySelector("button").addEventListener("click", function () {
      Guidecoat.progress.greet();
      first.hidden = true;
      intro.hidden = false;
      intro.querySelector(".check-start").focus();
    });
    intro.querySelector(".check-start").addEventListener("click", go);
    place.querySelector(".check-again").addEventListener("click", go);
  }

  /* The list of all questions steps aside meanwhile, so that no question is on the page twice. */
  function startModule(place, index) {
    var page = place.closest(".questions-page");
    var aside = Guidecoat.all(page, ".contents, .text");
    var marker = document.createComment("questions");

    function leave() {
      aside[0].before(marker);
      aside.forEach(function (part) { part.remove(); });
    }

    function comeBack() {
      marker.before.apply(marker, aside);
      marker.remove();
      place.querySelector(".check-intro").hidden = false;
      place.querySelector(".check-end").hidden = true;
      place.querySelector(".check-start").focus();
    }

    place.hidden = false;
    place.querySelector(".check-start").addEventListener("click", function () {
      var wanted = Guidecoat.wantedOfModule(index.objectives, Guidecoat.today(), need());
      begin(place, wanted, index, leave, function () {});
    });
    place.querySelector(".check-again").addEventListener("click", comeBack);
  }

  Guidecoat.startChecks = function () {
    document.querySelectorAll(".today-check").forEach(function (place) { startToday(place, Guidecoat.indexOf(place)); });
    document.querySelectorAll(".module-check").forEach(function (place) { startModule(place, Guidecoat.indexOf(place)); });
  };
})();
