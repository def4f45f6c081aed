/* Shows one question of each objective at a time, with Previous and Next.
   It starts at the first one that was not answered right yet. */
"use strict";

(() => {
  function show(group, place, moveFocus) {
    group.questions.forEach((question, number) => { question.hidden = number !== place; });
    group.place = place;
    group.words.textContent = (place + 1) + " of " + group.questions.length;
    if (moveFocus) { group.questions[place].scrollIntoView({ block: "nearest" }); }
  }

  function firstOpen(questions) {
    const place = questions.findIndex((question) =>
      !Guidecoat.progress.wasRight(question.dataset.objective, question.dataset.item));
    return place < 0 ? 0 : place;
  }

  function step(group, by) {
    const count = group.questions.length;
    show(group, (group.place + by + count) % count, true);
  }

  function asked(questions) {
    return questions.findIndex((question) => "#" + question.id === location.hash);
  }

  Guidecoat.startOneAtATime = (section) => {
    const bar = section.querySelector(".leaf");
    if (!bar) { return; }
    const group = {
      questions: Guidecoat.all(section, ".question"),
      words: bar.querySelector(".leaf-place")
    };
    bar.hidden = false;
    bar.querySelector(".leaf-before").addEventListener("click", () => { step(group, -1); });
    bar.querySelector(".leaf-next").addEventListener("click", () => { step(group, 1); });
    window.addEventListener("hashchange", () => {
      if (asked(group.questions) >= 0) { show(group, asked(group.questions), true); }
    });
    const wanted = asked(group.questions);
    show(group, wanted < 0 ? firstOpen(group.questions) : wanted, wanted >= 0);
  };
})();
