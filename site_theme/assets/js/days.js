/* Days as whole numbers, by this device's calendar, and how they are said. */
"use strict";

/* Today: days since 1 January 1970. */
Guidecoat.today = () => {
  const now = new Date();
  return Math.floor((now.getTime() - now.getTimezoneOffset() * 60000) / 86400000);
};

/* Say when a day was or will be, seen from today. */
Guidecoat.dayWords = (day) => {
  const away = day - Guidecoat.today();
  if (away === 0) { return "today"; }
  if (away === -1) { return "yesterday"; }
  if (away === 1) { return "tomorrow"; }
  return away < 0 ? -away + " days ago" : "in " + away + " days";
};
