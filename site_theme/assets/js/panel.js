/* Draws the learner's answers onto the panel: mist goes, patch by patch, and the words follow. */
"use strict";

(() => {
  const LAYERS = 3;

  /* How clean a patch is, from 0 (misted) to 3 (blocked clean). */
  function level(patch) {
    const need = Number(patch.getAttribute("data-need"));
    const found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    if (!need) { return 0; }
    const cleaned = Math.floor(LAYERS * Math.min(found.right, need) / need);
    return found.wrong ? Math.min(cleaned, LAYERS - 1) : cleaned;
  }

  function wasTried(patch) {
    const found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    return found.right + found.wrong > 0;
  }

  function words(patch) {
    const need = Number(patch.getAttribute("data-need"));
    const found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    if (!need) { return "no questions yet"; }
    if (level(patch) === LAYERS) { return "blocked clean"; }
    if (!wasTried(patch)) { return "not tried yet"; }
    return "partly clean: " + Math.min(found.right, need) + " of " + need + " right" +
      (found.wrong ? ", " + found.wrong + " to do again" : "");
  }

  function tally(module) {
    const patches = Guidecoat.all(document, '.patch[data-objective^="' + module + '/"]');
    const clean = patches.filter((patch) => level(patch) === LAYERS);
    return clean.length + " of " + patches.length + " blocked clean";
  }

  Guidecoat.drawPanel = () => {
    document.querySelectorAll(".patch").forEach((patch) => {
      patch.setAttribute("data-level", level(patch));
      document.querySelectorAll('[data-state-of="' + patch.getAttribute("data-objective") + '"]')
        .forEach((place) => {
          const untouched = place.hasAttribute("data-quiet") && !wasTried(patch);
          place.textContent = untouched ? "" : words(patch);
          place.setAttribute("data-level", level(patch));
        });
    });
    document.querySelectorAll("[data-tally]").forEach((place) => {
      place.textContent = tally(place.getAttribute("data-tally"));
    });
    Guidecoat.tell(Guidecoat.progress.note());
  };

  window.addEventListener("progress", Guidecoat.drawPanel);

  Guidecoat.tell = (text) => {
    document.querySelectorAll(".progress-note").forEach((place) => {
      place.textContent = text;
      place.hidden = !text;
    });
  };
})();
