/* Shows one question of each objective at a time, with Before and Next.
   It starts at the first one that was not answered right yet. */
"use strict";
var Guidecoat = window.Guidecoat || {};

(function () {
  function show(group, place, moveFocus) {
    group.questions.forEach(function (question, number) { question.hidden = number !== place; });
    group.place = place;
    group.words.textContent = (place + 1) + " of " + group.questions.length;
    if (moveFocus) { group.questions[place].scrollIntoView({ block: "nearest" }); }
  }

  function firstOpen(questions) {
    var place = questions.findIndex(function (question) {
      return !Guidecoat.progress.wasRight(question.dataset.objective, question.dataset.item);
    });
    return place < 0 ? 0 : place;
  }

  function step(group, by) {
    var count = group.questions.length;
    show(group, (group.place + by + count) % count, true);
  }

  function asked(questions) {
    return questions.findIndex(function (question) { return "#" + question.id === location.hash; });
  }

  Guidecoat.startOneAtATime = function (section) {
    var bar = section.querySelector(".leaf");
    if (!bar) { return; }
    var group = {
      questions: Array.prototype.slice.call(section.querySelectorAll(".question")),
      words: bar.querySelector(".leaf-place")
    };
    bar.hidden = false;
    bar.querySelector(".leaf-before").addEventListener("click", function () { step(group, -1); });
    bar.querySelector(".leaf-next").addEventListener("click", function () { step(group, 1); });
    window.addEventListener("hashchange", function () {
      if (asked(group.questions) >= 0) { show(group, asked(group.questions), true); }
    });
    var wanted = asked(group.questions);
    show(group, wanted < 0 ? firstOpen(group.questions) : wanted, wanted >= 0);
  };
})();
