/* Starts the page: questions, the panel, and keeping the panel in a file. */
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
      Guidecoat.tell("Your panel was deleted.");
    });
  }

  /* A published course is kept for use without a network; a live preview never is. */
  function keepOffline() {
    if (!("serviceWorker" in navigator) || location.protocol.indexOf("http") !== 0) { return; }
    var worker = document.querySelector('meta[name="offline"]');
    if (worker) { navigator.serviceWorker.register(worker.content).catch(function () {}); return; }
    navigator.serviceWorker.getRegistrations().then(function (found) {
      found.forEach(function (registration) { registration.unregister(); });
    }).catch(function () {});
  }

  /* Beside the text there is room for the contents list, so it starts open there. */
  if (window.matchMedia("(min-width: 64rem)").matches) {
    document.querySelectorAll(".contents details").forEach(function (list) { list.open = true; });
  }
  document.querySelectorAll(".question").forEach(Guidecoat.startQuestion);
  document.querySelectorAll(".group").forEach(Guidecoat.startLeaves);
  document.querySelectorAll(".keep-actions").forEach(startKeeping);
  Guidecoat.drawPanel();
  keepOffline();
})();
