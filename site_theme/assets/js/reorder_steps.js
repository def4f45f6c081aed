/* Moves the steps of a question up and down by their buttons, and says where a step is now. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function move(section, button, tell) {
    var step = button.closest("li");
    var list = step.parentNode;
    var up = button.dataset.by === "-1";
    var other = up ? step.previousElementSibling : step.nextElementSibling;
    if (!other) {
      tell("unread", step.dataset.letter + (up ? " is already first." : " is already last."));
      return;
    }
    list.insertBefore(step, up ? other : other.nextSibling);
    button.focus();
    var place = Array.prototype.indexOf.call(list.children, step) + 1;
    tell("moved", step.dataset.letter + " is now step " + place + " of " + list.children.length + ".");
    section.dispatchEvent(new CustomEvent("moved"));
  }

  /* Let the buttons of a section work; `tell` gets a state and a sentence. */
  Guidecoat.startReordering = function (section, tell) {
    Guidecoat.all(section, ".moves").forEach(function (part) { part.hidden = false; });
    Guidecoat.all(section, ".move").forEach(function (button) {
      button.addEventListener("click", function () { move(section, button, tell); });
    });
  };
})();
