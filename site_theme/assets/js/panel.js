/* Draws the learner's answers onto the panel: mist goes, patch by patch, and the words follow. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var LAYERS = 3;

  /* How clean a patch is, from 0 (misted) to 3 (blocked clean). */
  function level(patch) {
    var need = Number(patch.getAttribute("data-need"));
    var found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    if (!need) { return 0; }
    var cleaned = Math.floor(LAYERS * Math.min(found.right, need) / need);
    return found.wrong ? Math.min(cleaned, LAYERS - 1) : cleaned;
  }

  function wasTried(patch) {
    var found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    return found.right + found.wrong > 0;
  }

  function words(patch) {
    var need = Number(patch.getAttribute("data-need"));
    var found = Guidecoat.progress.of(patch.getAttribute("data-objective"));
    if (!need) { return "no questions yet"; }
    if (level(patch) === LAYERS) { return "blocked clean"; }
    if (!wasTried(patch)) { return "still misted"; }
    return "partly clean: " + Math.min(found.right, need) + " of " + need + " right" +
      (found.wrong ? ", " + found.wrong + " to do again" : "");
  }

  function tally(module) {
    var patches = document.querySelectorAll('.patch[data-objective^="' + module + '/"]');
    var clean = Array.prototype.filter.call(patches, function (patch) { return level(patch) === LAYERS; });
    return clean.length + " of " + patches.length + " blocked clean";
  }

  Guidecoat.drawPanel = function () {
    document.querySelectorAll(".patch").forEach(function (patch) {
      patch.setAttribute("data-level", level(patch));
      document.querySelectorAll('[data-state-of="' + patch.getAttribute("data-objective") + '"]')
        .forEach(function (place) {
          var untouched = place.hasAttribute("data-quiet") && !wasTried(patch);
          place.textContent = untouched ? "" : words(patch);
          place.setAttribute("data-level", level(patch));
        });
    });
    document.querySelectorAll("[data-tally]").forEach(function (place) {
      place.textContent = tally(place.getAttribute("data-tally"));
    });
    Guidecoat.tell(Guidecoat.progress.note());
  };

  Guidecoat.tell = function (text) {
    document.querySelectorAll(".progress-note").forEach(function (place) {
      place.textContent = text;
      place.hidden = !text;
    });
  };
})();
