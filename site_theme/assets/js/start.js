/* Starts the page: questions, checks, the panel, and keeping the panel in a file. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function save() {
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([Guidecoat.progress.asText()], { type: "application/json" }));
    link.download = "guidecoat-panel.json";
    link.click();
    URL.revokeObjectURL(link.href);
    Guidecoat.tell("Saved to guidecoat-panel.json.");
  }

  function load(input) {
    var reader = new FileReader();
    reader.onload = function () {
      var fits = Guidecoat.progress.load(String(reader.result));
      Guidecoat.drawPanel();
      document.querySelectorAll(".need-form").forEach(showNeed);
      Guidecoat.tell(fits ? "Your panel was loaded." : "That file does not hold a panel. Nothing was changed.");
      input.value = "";
    };
    reader.readAsText(input.files[0]);
  }

  function startKeeping(actions) {
    actions.hidden = false;
    actions.querySelector('[data-keep="save"]').addEventListener("click", save);
    actions.querySelector('[data-keep="load"]').addEventListener("change", function (event) {
      if (event.target.files.length) { load(event.target); }
    });
    var button = actions.querySelector('[data-keep="delete"]');
    button.addEventListener("click", function () {
      if (!button.dataset.sure) {
        button.dataset.sure = "yes";
        button.textContent = "Yes, delete it";
        Guidecoat.tell("Press once more to delete your panel. It cannot be brought back.");
        return;
      }
      delete button.dataset.sure;
      button.textContent = "Delete my panel";
      Guidecoat.progress.clear();
      Guidecoat.drawPanel();
      document.querySelectorAll(".need-form").forEach(showNeed);
      Guidecoat.tell("Your panel was deleted.");
    });
  }

  var DAY = 86400000;

  function showNeed(form) {
    var need = Guidecoat.progress.need();
    form.querySelector("input").value = need === null ? "" : new Date(need * DAY).toISOString().slice(0, 10);
    form.querySelector(".need-clear").hidden = need === null;
  }

  /* The date by which all should sit; every wait is cut so that the last review comes before it. */
  function startNeed(form) {
    var input = form.querySelector("input");
    form.hidden = false;
    showNeed(form);
    function keep(event) {
      event.preventDefault();
      var day = Date.parse(input.value) / DAY;
      var fits = day > Guidecoat.today();
      if (fits) { Guidecoat.progress.setNeed(day); }
      showNeed(form);
      Guidecoat.tell(fits ? "Everything will come round before that day." : "Choose a day that is still to come.");
    }
    form.addEventListener("submit", keep);
    form.querySelector(".need-keep").addEventListener("click", keep);
    form.querySelector(".need-clear").addEventListener("click", function () {
      Guidecoat.progress.setNeed(null);
      showNeed(form);
      input.focus();
      Guidecoat.tell("No date is kept now.");
    });
  }

  /* Say how many of the objectives drawn on the page are due. */
  function startDue(place) {
    var due = Guidecoat.all(document, ".patch").filter(function (patch) {
      return Guidecoat.progress.isDue(patch.dataset.objective);
    }).length;
    if (due) { place.textContent = Guidecoat.counted(due, "objective is", "objectives are") + " due today."; }
  }

  Guidecoat.startPage = function () {
    /* Beside the text there is room for the contents list, so it starts open there. */
    if (window.matchMedia("(min-width: 64rem)").matches) {
      document.querySelectorAll(".contents details").forEach(function (list) { list.open = true; });
    }
    document.querySelectorAll(".question").forEach(function (section) { Guidecoat.startQuestion(section); });
    document.querySelectorAll(".group").forEach(function (section) { Guidecoat.startOneAtATime(section); });
    document.querySelectorAll(".keep-actions").forEach(startKeeping);
    document.querySelectorAll(".need-form").forEach(startNeed);
    document.querySelectorAll("[data-due]").forEach(startDue);
    document.querySelectorAll(".look-back").forEach(function (place) { Guidecoat.startLookBack(place); });
    Guidecoat.startChecks();
    document.querySelectorAll(".print-this").forEach(Guidecoat.startPrint);
    document.querySelectorAll(".search-form").forEach(function (form) {
      if (Guidecoat.startSearch) { Guidecoat.startSearch(form); }
    });
    if (document.querySelector(".panel") && !document.querySelector("#mist-1")) {
      document.body.insertAdjacentHTML("beforeend", Guidecoat.patterns);
    }
    Guidecoat.drawPanel();
  };

  /* The course in one file lays its pages out itself, one after the other. */
  Guidecoat.hasPage = !document.querySelector(".one-file");
  if (Guidecoat.hasPage) { Guidecoat.startPage(); }
})();
