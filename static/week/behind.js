/** @import { Desk, Sums, Today } from "../types.js" */
/** @import { Week } from "./week-chart.js" */
import { endsBefore, week, weeksOf } from "./weeks.js";

/**
 * What the page of a week is held against.
 * @typedef {{ end: number, today: Today, before: Sums, weeks: Week[] }} Behind
 * end: its last day; today: how the tank stood then; before: a week earlier; weeks: a quarter of them
 */

/** @param {Desk} desk @param {Today} now @param {number} end @returns {Promise<Behind>} */
export async function behindDay(desk, now, end) {
  const sums = (/** @type {number} */ day) => (day === now.day ? now : desk.opened.sumsTo(day));
  const [today, before, ...ends] = await Promise.all([end === now.day ? now : desk.opened.endOf(end), sums(end - week), ...endsBefore(end).map(sums)]);
  return { end, today, before, weeks: weeksOf(end, ends) };
}
