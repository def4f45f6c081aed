/* Loads questions of an objective when they are wanted. A part is a small script of its own, which
   works from a memory stick too. */
"use strict";
var Guidecoat = window.Guidecoat || {};
Guidecoat.parts = {};

(function () {
  var loading = {};

  function fetched(name) {
    return new Promise(function (done, failed) {
      var script = document.createElement("script");
      script.src = "parts/" + name.replace(/\/([0-9]+)$/, "-$1") + ".js";
      script.onload = function () { script.remove(); done(Guidecoat.parts[name] || []); };
      script.onerror = function () { script.remove(); delete loading[name]; failed(new Error(name)); };
      document.head.appendChild(script);
    });
  }

  /* Promise the questions of a part: [{id, method, html}, ...]. */
  Guidecoat.part = function (name) {
    loading[name] = loading[name] || fetched(name);
    return loading[name];
  };

  /* The part of an objective that holds an item; items are sorted, and each part names its first. */
  Guidecoat.partOf = function (entry, item) {
    var place = 0;
    entry.parts.forEach(function (first, number) { if (first <= item) { place = number; } });
    return entry.objective + "/" + (place + 1);
  };

  /* Make the form of a question, ready to be answered. */
  Guidecoat.form = function (question, label) {
    var holder = document.createElement("template");
    holder.innerHTML = question.html;
    var section = holder.content.querySelector(".question");
    var old = section.querySelector(".question-label").textContent;
    section.querySelectorAll(".question-label, legend").forEach(function (place) {
      place.textContent = place.textContent.replace(old, label);
    });
    section.querySelectorAll("[aria-label]").forEach(function (place) {
      place.setAttribute("aria-label", place.getAttribute("aria-label").replace(old, label));
    });
    return document.importNode(section, true);
  };
})();
