import { language, regional } from "./language.js";

/** Whether this phone tells the time by twenty-four hours or twice twelve; a matter of whoever holds it, so it is never sent. */

const kept = "provender.hours";
export const hourCycles = ["h23", "h12"];

/** What is usual, by place: the browser is slow to say, and every page asks. @type {Map<string, string>} */
const usualIn = new Map();

/** What was chosen here, else what is usual where the browser's owner lives. */
export function hours() {
  const chosen = localStorage.getItem(kept) ?? "";
  if (hourCycles.includes(chosen)) return chosen;
  const place = regional(language());
  if (!usualIn.has(place)) usualIn.set(place, usualCycle(place));
  return usualIn.get(place) ?? "h23";
}

/** @param {string} place such as en-GB */
function usualCycle(place) {
  const usual = new Intl.DateTimeFormat(place, { hour: "numeric" }).resolvedOptions().hourCycle;
  return usual === "h12" || usual === "h11" ? "h12" : "h23";
}

/** @param {string} chosen */
export const chooseHours = (chosen) => localStorage.setItem(kept, chosen);
