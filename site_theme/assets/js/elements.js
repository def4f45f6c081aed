/* The one name that all scripts share, and short ways to make and find elements. A generated list
   may stand before it and bring the name with it. */
"use strict";
window.Guidecoat = /** @type {GuidecoatScripts} */ (window.Guidecoat || {});

Guidecoat.element = (name, className, text) => {
  const made = document.createElement(name);
  if (className) { made.className = className; }
  if (text) { made.textContent = text; }
  return made;
};

Guidecoat.link = (address, text) => {
  const made = Guidecoat.element("a", "", text);
  made.href = address;
  return made;
};

Guidecoat.button = (className, text, press) => {
  const made = Guidecoat.element("button", className, text);
  made.type = "button";
  made.addEventListener("click", press);
  return made;
};

Guidecoat.all = (root, selector) => [...root.querySelectorAll(selector)];

/* The words of an element on one line. */
Guidecoat.words = (part) => part ? part.textContent.replace(/\s+/g, " ").trim() : "";

Guidecoat.counted = (number, one, more) => number + " " + (number === 1 ? one : more);

/* Offer a text as a file for the folder of downloads. */
Guidecoat.saveText = (name, text) => {
  const link = Guidecoat.link(URL.createObjectURL(new Blob([text], { type: "application/json" })));
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(link.href); }, 60000);
};
