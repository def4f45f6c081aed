/* Brings a question to life: checking, new numbers, moving steps. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var all = Guidecoat.all, say = Guidecoat.say;

  function shown(section) { return Number(section.getAttribute("data-shown") || 0); }

  /* Back to an unanswered question, for new numbers or another go. */
  function clear(section) {
    section.querySelector(".feedback").textContent = "";
    section.querySelector(".feedback").removeAttribute("data-state");
    section.querySelector(".reasons").hidden = true;
    section.querySelector(".reasons").open = false;
    section.removeAttribute("data-tried");
  }

  /* Show one of the solved variants; they are counted round. */
  Guidecoat.showVariant = function (section, number) {
    var templates = all(section, "template.variant");
    var ask = section.querySelector("form .ask");
    var reasons = section.querySelector("form .reasons-body");
    var wanted = number % (templates.length + 1);
    if (!section.firstVariant) {
      section.firstVariant = { ask: ask.innerHTML, reasons: reasons.innerHTML };
    }
    var from = wanted ? templates[wanted - 1].content : null;
    ask.innerHTML = from ? from.querySelector(".ask").innerHTML : section.firstVariant.ask;
    reasons.innerHTML = from ? from.querySelector(".reasons-body").innerHTML : section.firstVariant.reasons;
    section.setAttribute("data-shown", wanted);
    clear(section);
    startMoves(section);
  };

  function another(section) {
    Guidecoat.showVariant(section, shown(section) + 1);
    say(section, "fresh", section.classList.contains("kind-numeric")
      ? "New numbers. Read the question again." : "Another one. Read the question again.", []);
    (section.querySelector(".number") || section.querySelector(".ask input, .ask select, .ask button")).focus();
  }

  function startMoves(section) {
    Guidecoat.startReordering(section, function (state, text) { say(section, state, text, []); });
  }

  Guidecoat.startQuestion = function (section) {
    var data = JSON.parse(section.querySelector("script.marking").textContent);
    section.querySelector(".actions").hidden = false;
    section.querySelector(".reasons").hidden = true;
    startMoves(section);
    function check(event) {
      event.preventDefault();
      /* inside a check the first answer stands */
      if (section.dataset.once && section.dataset.tried) { return; }
      var variant = data.variants[shown(section)];
      Guidecoat.answer[variant.kind](section, variant);
    }
    section.querySelector("form").addEventListener("submit", check);
    section.querySelector(".check").addEventListener("click", check);
    all(section, ".another").forEach(function (button) {
      button.addEventListener("click", function () { another(section); });
    });
  };
})();
