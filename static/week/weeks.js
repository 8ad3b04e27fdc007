/** A quarter of weeks, read from how the tank stood at the ends of some of them. */
/** @import { Sums } from "../types.js" */

export const week = 7;
export const weeksBack = 13;
const weeksInAnEnd = 4;

/** @param {{ dueKj: number, givenKj: number, lowKj: number, highKj: number }[]} days */
export const sumOf = (days) => days.reduce((sum, { dueKj, givenKj, lowKj, highKj }) =>
  ({ due: sum.due + dueKj, given: sum.given + givenKj, low: sum.low + lowKj, high: sum.high + highKj }), { due: 0, given: 0, low: 0, high: 0 });

/** The days whose ends tell of all weeks shown, the oldest first: four weeks of days stand in each. @param {number} end */
export function endsBefore(end) {
  const ends = [];
  for (let back = 0; back < weeksBack; back += weeksInAnEnd) ends.unshift(end - week * back);
  return ends;
}

/** One week a row, the oldest first. @param {number} end @param {Pick<Sums, "days">[]} ends */
export function weeksOf(end, ends) {
  const days = new Map(ends.flatMap((at) => at.days).map((row) => [row.day, row]));
  return Array.from({ length: weeksBack }, (_, place) => {
    const day = end - week * (weeksBack - 1 - place);
    const rows = Array.from({ length: week }, (__, back) => days.get(day - back)).filter((row) => row !== undefined);
    return { day, ...sumOf(rows) };
  });
}
