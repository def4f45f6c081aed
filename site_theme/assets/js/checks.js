/* Today's check, and the check of one module from its question page. */
"use strict";

(() => {
  function need() { return Guidecoat.progress.need(); }

  /* Load what is wanted, then ask; says so where a part cannot be had. */
  function begin(place, wanted, index, ready, finished) {
    const day = Guidecoat.today();
    const tell = place.querySelector(".check-note");
    const names = wanted.map((slot) => Guidecoat.partWanted(slot.entry));
    tell.textContent = "";
    Promise.all(names.map(Guidecoat.part)).then((parts) => {
      const held = {};
      wanted.forEach((slot, number) => { held[slot.entry.objective] = parts[number]; });
      const picks = Guidecoat.picked(wanted, (entry) => held[entry.objective], day);
      place.querySelector(".check-intro").hidden = true;
      place.querySelector(".check-end").hidden = true;
      ready();
      Guidecoat.runCheck(place.querySelector(".sitting"), picks, (asked, right) => {
        const end = place.querySelector(".check-end");
        Guidecoat.summary(end.querySelector(".summary"), asked, right, index);
        end.hidden = false;
        end.querySelector("h2").focus();
        end.querySelector("h2").scrollIntoView({ block: "start" });
        finished();
      });
    }).catch(() => {
      tell.textContent = "The questions could not be loaded. Open this page once with a network; " +
        "after that it works without one.";
    });
  }

  function counts(wanted) {
    const words = { due: "due again", weak: "missed last time", new: "new" };
    return Object.keys(words).map((rank) => {
      const number = wanted.filter((slot) => slot.rank === rank).length;
      return number ? number + " " + words[rank] : "";
    }).filter(Boolean).join(", ");
  }

  /* Say when something falls due next, and how much. */
  function nextDue(index) {
    const met = index.objectives.map((entry) => Guidecoat.progress.state(entry.objective)).filter(Boolean);
    const days = met.map((state) => Guidecoat.schedule.dueDay(state, need()));
    if (!days.length) { return ""; }
    const first = Math.max(Math.min(...days), Guidecoat.today());
    const count = Guidecoat.counted(days.filter((day) => day <= first).length, "objective", "objectives");
    return "Next due " + Guidecoat.dayWords(first) + ": " + count + ".";
  }

  function startToday(place, index) {
    const intro = place.querySelector(".check-intro");
    const first = place.querySelector(".first-run");
    let anyway = false;

    function wanted() {
      const find = anyway ? Guidecoat.wantedOfModule : Guidecoat.wantedToday;
      return find(index.objectives, Guidecoat.today(), need());
    }

    function lay() {
      anyway = false;
      const list = wanted();
      anyway = !list.length;
      intro.querySelector(".check-what").textContent = list.length
        ? "Objectives in this check: " + counts(list) + "."
        : "Nothing is due, and today's new objectives are done. " + nextDue(index);
      intro.querySelector(".check-start").textContent = list.length ? "Start the check" : "Give me ten anyway";
    }

    function after() {
      lay();
      place.querySelector(".check-next").textContent = anyway
        ? "That is all for today. " + nextDue(index) : "There is more for today: " + counts(wanted()) + ".";
      place.querySelector(".check-again").hidden = anyway;
    }

    function go() { begin(place, wanted(), index, () => {}, after); }

    lay();
    first.hidden = Guidecoat.progress.greeted();
    intro.hidden = !first.hidden;
    first.querySelector("button").addEventListener("click", () => {
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
    const page = place.closest(".questions-page");
    const aside = Guidecoat.all(page, ".contents, .text");
    const marker = document.createComment("questions");

    function leave() {
      aside[0].before(marker);
      aside.forEach((part) => { part.remove(); });
    }

    function comeBack() {
      marker.before(...aside);
      marker.remove();
      place.querySelector(".check-intro").hidden = false;
      place.querySelector(".check-end").hidden = true;
      place.querySelector(".check-start").focus();
    }

    place.hidden = false;
    place.querySelector(".check-start").addEventListener("click", () => {
      const wanted = Guidecoat.wantedOfModule(index.objectives, Guidecoat.today(), need());
      begin(place, wanted, index, leave, () => {});
    });
    place.querySelector(".check-again").addEventListener("click", comeBack);
  }

  Guidecoat.startChecks = () => {
    Guidecoat.all(document, ".today-check").forEach((place) => { startToday(place, Guidecoat.partsIndex(place)); });
    Guidecoat.all(document, ".module-check").forEach((place) => { startModule(place, Guidecoat.partsIndex(place)); });
  };
})();
