/* Lists what was answered wrong, newest first, each with its reason and another go. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  var element = Guidecoat.element;

  function said(name, text) {
    var row = element("div");
    row.append(element("dt", "", name), element("dd", "", text));
    return row;
  }

  function tryAgain(line, mistake, entry) {
    var tell = line.querySelector(".check-note");
    Guidecoat.part(Guidecoat.partOf(entry, mistake.item)).then(function (questions) {
      var question = questions.find(function (one) { return one.id === mistake.item; });
      if (!question) { tell.textContent = "This question is no longer among those asked here."; return; }
      var form = Guidecoat.form(question, "Once more");
      line.querySelector("button").remove();
      line.appendChild(form);
      Guidecoat.startQuestion(form);
      Guidecoat.showVariant(form, Guidecoat.progress.tries(mistake.objective, mistake.item).length);
      form.querySelector(".question-name").tabIndex = -1;
      form.querySelector(".question-name").focus();
      form.addEventListener("answered", function (event) {
        tell.textContent = event.detail.right ? "Mended. It leaves this list." : "";
      });
    }).catch(function () {
      tell.textContent = "The question could not be loaded. Open this page once with a network.";
    });
  }

  function lineOf(mistake, entry, number) {
    var line = element("li", "mistake");
    var name = line.appendChild(element("h2", "", mistake.asked));
    name.id = "mistake-" + number;
    var more = line.appendChild(element("dl", "mistake-said"));
    more.append(said("Your answer", mistake.given));
    if (mistake.why) { more.append(said("Why it fails", mistake.why)); }
    line.appendChild(element("p", "quiet", (entry ? entry.text + ". " : "") + "Answered " +
      Guidecoat.dayWords(Math.min(mistake.day, Guidecoat.today())) + "."));
    var tell = line.appendChild(element("p", "check-note"));
    tell.setAttribute("role", "status");
    if (entry) {
      var again = line.appendChild(element("button", "plain", "Try again"));
      again.type = "button";
      again.setAttribute("aria-describedby", name.id);
      again.addEventListener("click", function () { tryAgain(line, mistake, entry); });
    }
    return line;
  }

  Guidecoat.startLookBack = function (place) {
    var index = Guidecoat.indexOf(place);
    var mistakes = Guidecoat.progress.mistakes();
    place.querySelector(".look-back-count").textContent = mistakes.length
      ? Guidecoat.counted(mistakes.length, "question", "questions") + " to look at, newest first."
      : "Nothing here. What you answer wrong is listed with its reason until you get it right.";
    var list = place.querySelector(".mistakes");
    mistakes.forEach(function (mistake, number) {
      var entry = index.objectives.find(function (one) { return one.objective === mistake.objective; });
      list.appendChild(lineOf(mistake, entry, number));
    });
  };
})();
