import assert from "node:assert/strict";
import { test } from "node:test";
import { endsBefore, weeksBack, weeksOf } from "../../../static/week/weeks.js";

/** Four weeks of days, each due what its number says. @param {number} end @returns {any} */
const endOf = (end) => ({ days: Array.from({ length: 28 }, (_, place) => end - 27 + place)
  .map((day) => ({ day, dueKj: day, givenKj: day / 2, lowKj: 0, highKj: day * 2 })) });

test("four ends tell of every day of a quarter of weeks", () => {
  const ends = endsBefore(1000);
  assert.deepEqual(ends, [916, 944, 972, 1000]);
  const weeks = weeksOf(1000, ends.map(endOf));
  assert.equal(weeks.length, weeksBack);
  assert.deepEqual(weeks.at(-1), { day: 1000, due: 994 + 995 + 996 + 997 + 998 + 999 + 1000, given: 3489.5, low: 0, high: 13958 });
  assert.deepEqual(weeks.map(({ day, due }) => due - 7 * (day - 3)), Array(weeksBack).fill(0));
});
