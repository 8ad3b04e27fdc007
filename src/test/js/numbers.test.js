import assert from "node:assert/strict";
import { afterEach, test } from "node:test";
import { clock, dayName, grams, kj, percent, plain, range, setLanguage, written } from "../../../static/text/numbers.js";

afterEach(() => setLanguage("en"));

const said = (/** @type {string} */ text) => text.replaceAll("\u202f", " ");

test("no more digits than are known", () => {
  assert.deepEqual([0, 0.1234, 2.345, 12.345, 234.5, 2345.6].map(grams).map(said),
    ["0 g", "0.12 g", "2.3 g", "12.3 g", "235 g", "2.35 kg"]);
  assert.deepEqual([1.26, 987.6, 43210].map(kj).map(said), ["1.3 kJ", "988 kJ", "43.2 MJ"]);
  assert.equal(said(percent(0.1449)), "14 %");
  assert.equal(plain(12.3456), "12.3");
});

test("what is counted is said to the last one", () => assert.equal(plain(12345), "12,345"));

test("a span names its unit once and its value once when both ends read the same", () => {
  assert.equal(said(range(3, 7.04, grams)), "3–7 g");
  assert.equal(said(range(900, 1100, grams)), "900 g–1.1 kg");
  assert.equal(said(range(2.31, 2.33, grams)), "2.3 g");
  assert.equal(range(0.5, 1), "0.5–1");
});

test("minutes of the day are clock times", () => {
  assert.deepEqual([0, 490, 1439].map(clock), ["00:00", "08:10", "23:59"]);
});

test("where people count to twelve twice, so does the clock", () => {
  setLanguage("en-US", () => "h12");
  assert.deepEqual([0, 490, 1110].map(clock).map(said), ["12:00 AM", "8:10 AM", "6:30 PM"]);
  setLanguage("en-GB", () => "h12");
  assert.deepEqual([0, 490, 1110].map(clock).map(said), ["12:00 am", "8:10 am", "6:30 pm"]);
});

test("a date stands as it does where the reader lives", () => {
  const today = Date.parse("2026-11-25") / 86_400_000;
  setLanguage("en-GB");
  assert.equal(dayName(today - 30, today), "26 Oct");
  setLanguage("en-US");
  assert.equal(dayName(today - 30, today), "Oct 26");
});

test("near days have names, far ones dates, the year only when it helps", () => {
  const today = Date.parse("2026-11-25") / 86_400_000;
  assert.deepEqual([0, -1, 1, -3, -30, -400].map((away) => dayName(today + away, today)),
    ["today", "yesterday", "tomorrow", "Sunday", "Oct 26", "Oct 21, 2025"]);
});

test("in German a comma stands before the decimals, a point between thousands, and days have German names", () => {
  setLanguage("de");
  assert.deepEqual([2.345, 2345.6].map(grams).map(said), ["2,3 g", "2,35 kg"]);
  assert.equal(plain(12345), "12.345");
  assert.equal(said(range(0.5, 1.25, kj)), "0,5–1,3 kJ");
  const today = Date.parse("2026-11-25") / 86_400_000;
  assert.deepEqual([0, -1, 1, -3, -30].map((away) => dayName(today + away, today)), ["heute", "gestern", "morgen", "Sonntag", "26. Okt."]);
});

test("what stands in a field to be changed has the language's decimal sign and nothing between thousands", () => {
  assert.deepEqual([1234.5, 0.005, 12].map(written), ["1234.5", "0.005", "12"]);
  setLanguage("de");
  assert.deepEqual([1234.5, 0.005, 12].map(written), ["1234,5", "0,005", "12"]);
});
