/* The learner's own panel: keeping it in a file, deleting it, and the date of need. */
"use strict";

(() => {
  const DAY = 86400000;
  const FILE = "guidecoat-panel.json";

  function save() {
    Guidecoat.saveText(FILE, Guidecoat.progress.asText());
    Guidecoat.tell("Saved to " + FILE + ".");
  }

  function load(input) {
    const reader = new FileReader();
    reader.onload = () => {
      const fits = Guidecoat.progress.load(String(reader.result));
      Guidecoat.all(document, ".need-form").forEach(showNeed);
      Guidecoat.tell(fits ? "Your panel was loaded." : "That file does not hold a panel. Nothing was changed.");
      input.value = "";
    };
    reader.readAsText(input.files[0]);
  }

  Guidecoat.startKeeping = (actions) => {
    actions.hidden = false;
    actions.querySelector('[data-keep="save"]').addEventListener("click", save);
    actions.querySelector('[data-keep="load"]').addEventListener("change", (event) => {
      if (event.target.files.length) { load(event.target); }
    });
    const button = actions.querySelector('[data-keep="delete"]');
    button.addEventListener("click", () => {
      if (!button.dataset.sure) {
        button.dataset.sure = "yes";
        button.textContent = "Yes, delete it";
        Guidecoat.tell("Press once more to delete your panel. It cannot be brought back.");
        return;
      }
      delete button.dataset.sure;
      button.textContent = "Delete my panel";
      Guidecoat.progress.clear();
      Guidecoat.all(document, ".need-form").forEach(showNeed);
      Guidecoat.tell("Your panel was deleted.");
    });
  };

  function showNeed(form) {
    const need = Guidecoat.progress.need();
    form.querySelector("input").value = need === null ? "" : new Date(need * DAY).toISOString().slice(0, 10);
    form.querySelector(".need-clear").hidden = need === null;
  }

  /* The date by which all of this is needed: every wait is cut so that the last review comes first. */
  Guidecoat.startNeed = (form) => {
    const input = form.querySelector("input");
    form.hidden = false;
    showNeed(form);
    function keep(event) {
      event.preventDefault();
      const day = Date.parse(input.value) / DAY;
      const fits = day > Guidecoat.today();
      if (fits) { Guidecoat.progress.setNeed(day); }
      showNeed(form);
      Guidecoat.tell(fits ? "You will see all of it again before that day." : "Choose a day that is still to come.");
    }
    form.addEventListener("submit", keep);
    form.querySelector(".need-keep").addEventListener("click", keep);
    form.querySelector(".need-clear").addEventListener("click", () => {
      Guidecoat.progress.setNeed(null);
      showNeed(form);
      input.focus();
      Guidecoat.tell("Your date has been removed.");
    });
  };
})();
