/* Starts the page: questions, checks, the panel, and whatever else asks to be started with it. */
"use strict";

(() => {
  const { all } = Guidecoat;
  const starters = [];
  let started = false;

  /* Say how many of the objectives drawn on the page are due. */
  function startDue(place) {
    const due = all(document, ".patch").filter((patch) => Guidecoat.progress.isDue(patch.dataset.objective));
    if (!due.length) { return; }
    place.textContent = Guidecoat.counted(due.length, "objective is", "objectives are") + " due today.";
  }

  Guidecoat.startPage = () => {
    /* Beside the text there is room for the contents list, so it starts open there. */
    if (window.matchMedia("(min-width: 64rem)").matches) {
      all(document, ".contents details").forEach((list) => { list.open = true; });
    }
    all(document, ".question").forEach((section) => { Guidecoat.startQuestion(section); });
    all(document, ".group").forEach((section) => { Guidecoat.startOneAtATime(section); });
    all(document, ".keep-actions").forEach((actions) => { Guidecoat.startKeeping(actions); });
    all(document, ".need-form").forEach((form) => { Guidecoat.startNeed(form); });
    all(document, "[data-due]").forEach(startDue);
    all(document, ".look-back").forEach((place) => { Guidecoat.startLookBack(place); });
    Guidecoat.startChecks();
    all(document, ".print-this").forEach((button) => { Guidecoat.startPrint(button); });
    starters.forEach((start) => { start(); });
    started = true;
    if (document.querySelector(".panel") && !document.querySelector("#mist-1")) {
      document.body.insertAdjacentHTML("beforeend", Guidecoat.patterns);
    }
    Guidecoat.drawPanel();
  };

  /* Do something with every page that is laid out, and at once where one is there already. */
  Guidecoat.onPage = (start) => {
    starters.push(start);
    if (started) { start(); }
  };

  /* The course in one file lays its pages out itself, one after the other. */
  if (!document.querySelector(".one-file")) { Guidecoat.startPage(); }
})();
