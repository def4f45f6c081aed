/* Holds the first picture until the typefaces are there, so that no line moves afterwards.
   Where they take too long, this page keeps to the device's own type and the next one has them. */
"use strict";

(function () {
  var LONGEST_WAIT = 700;
  var FACES = ['700 1em "Hepta Slab"', '400 1em "Familjen Grotesk"', '700 1em "Familjen Grotesk"',
    '400 1em "Sometype Mono"', '700 1em "Sometype Mono"', '400 1em "Guidecoat Symbols"'];
  var root = document.documentElement;

  function loaded(face) { return document.fonts.load(face, "a\u2713"); }

  /* What is on the screen already must not go away again. */
  if (!document.fonts || performance.getEntriesByType("paint").length) { return; }
  root.classList.add("waiting");
  var late = setTimeout(function () {
    root.classList.add("plain-type");
    root.classList.remove("waiting");
  }, LONGEST_WAIT);
  Promise.all(FACES.map(loaded)).catch(function () {}).then(function () {
    clearTimeout(late);
    root.classList.remove("waiting");
  });
})();
