/* Short ways to make and find elements, and how time is said. */
"use strict";
var Guidecoat = window.Guidecoat || {};

Guidecoat.element = function (name, className, text) {
  var made = document.createElement(name);
  if (className) { made.className = className; }
  if (text) { made.textContent = text; }
  return made;
};

Guidecoat.link = function (address, text) {
  var made = Guidecoat.element("a", "", text);
  made.href = address;
  return made;
};

Guidecoat.all = function (root, selector) { return Array.prototype.slice.call(root.querySelectorAll(selector)); };

/* The words of an element on one line. */
Guidecoat.words = function (part) { return part ? part.textContent.replace(/\s+/g, " ").trim() : ""; };

Guidecoat.counted = function (number, one, more) { return number + " " + (number === 1 ? one : more); };

/* Read the list of objectives and parts: that of the page, or else that of the whole course. */
Guidecoat.indexOf = function (place) {
  var own = place.closest("article").querySelector("script.parts-index");
  return own ? JSON.parse(own.textContent) : Guidecoat.wholeIndex;
};

/* Say when a day was or will be, seen from today. */
Guidecoat.dayWords = function (day) {
  var away = day - Guidecoat.today();
  if (away === 0) { return "today"; }
  if (away === -1) { return "yesterday"; }
  if (away === 1) { return "tomorrow"; }
  return away < 0 ? -away + " days ago" : "in " + away + " days";
};
