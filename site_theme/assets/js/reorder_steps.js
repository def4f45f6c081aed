/* Moves the steps of a question up and down by their buttons, and says where a step is now. */
"use strict";

(() => {
  function move(section, button, tell) {
    const step = button.closest("li");
    const list = step.parentNode;
    const up = button.dataset.by === "-1";
    const other = up ? step.previousElementSibling : step.nextElementSibling;
    if (!other) {
      tell("unread", step.dataset.letter + (up ? " is already first." : " is already last."));
      return;
    }
    list.insertBefore(step, up ? other : other.nextSibling);
    button.focus();
    const place = [...list.children].indexOf(step) + 1;
    tell("moved", step.dataset.letter + " is now step " + place + " of " + list.children.length + ".");
    section.dispatchEvent(new CustomEvent("moved"));
  }

  /* Let the buttons of a section work; `tell` gets a state and a sentence. */
  Guidecoat.startReordering = (section, tell) => {
    Guidecoat.all(section, ".moves").forEach((part) => { part.hidden = false; });
    Guidecoat.all(section, ".move").forEach((button) => {
      button.addEventListener("click", () => { move(section, button, tell); });
    });
  };
})();
