/** Which language this phone speaks; a matter of whoever holds it, so it stays on the phone and is never sent. */

const kept = "provender.language";

/** A file of that name stands in shared/text for each; the first is spoken where none was asked for. */
export const languages = ["en", "de"];

/** What was chosen here, else the first that the browser asks for and that there is. @returns {string} */
export function language() {
  const wanted = [localStorage.getItem(kept) ?? "", ...navigator.languages].map((tag) => tag.toLowerCase().split("-")[0]);
  return wanted.find((tag) => languages.includes(tag)) ?? languages[0];
}

/** @param {string} chosen */
export const chooseLanguage = (chosen) => localStorage.setItem(kept, chosen);

const tag = /^[a-z]{2,3}(-[a-z0-9]{2,8})*$/i;

/** A language as it is written where the browser's owner lives, such as en-GB: dates, clocks and decimals differ between places. @param {string} spoken */
export const regional = (spoken) => navigator.languages.find((wanted) => tag.test(wanted) && wanted.toLowerCase().split("-")[0] === spoken) ?? spoken;
