/* Loads questions of an objective when they are wanted. A part is a small script of its own, which
   works from a memory stick too. */
"use strict";
Guidecoat.parts = {};

(() => {
  const loading = {};
  let source = fetched;

  function fetched(name) {
    return new Promise((done, failed) => {
      const script = document.createElement("script");
      script.src = "parts/" + name.replace(/\/([0-9]+)$/, "-$1") + ".js";
      script.onload = () => { script.remove(); done(Guidecoat.parts[name] || []); };
      script.onerror = () => { script.remove(); delete loading[name]; failed(new Error(name)); };
      document.head.appendChild(script);
    });
  }

  /* Promise the questions of a part: [{id, method, html}, ...]. */
  Guidecoat.part = (name) => {
    loading[name] = loading[name] || source(name);
    return loading[name];
  };

  /* Take the questions from elsewhere; `other` promises those of a part. */
  Guidecoat.takePartsFrom = (other) => { source = other; };

  /* Read the list of objectives and parts that stands in the same article as a place. */
  Guidecoat.partsIndex = (place) =>
    JSON.parse(place.closest("article").querySelector("script.parts-index").textContent);

  /* The part of an objective that holds an item; items are sorted, and each part names its first. */
  Guidecoat.partOf = (entry, item) => {
    let place = 0;
    entry.parts.forEach((first, number) => { if (first <= item) { place = number; } });
    return entry.objective + "/" + (place + 1);
  };

  /* Make the form of a question, ready to be answered. */
  Guidecoat.form = (question, label) => {
    const holder = document.createElement("template");
    holder.innerHTML = question.html;
    const section = holder.content.querySelector(".question");
    const old = section.querySelector(".question-label").textContent;
    section.querySelectorAll(".question-label, legend").forEach((place) => {
      place.textContent = place.textContent.replace(old, label);
    });
    section.querySelectorAll("[aria-label]").forEach((place) => {
      place.setAttribute("aria-label", place.getAttribute("aria-label").replace(old, label));
    });
    return document.importNode(section, true);
  };
})();
