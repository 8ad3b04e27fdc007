import assert from "node:assert/strict";
import { test } from "node:test";
import { isoAt, isoOf } from "../../../static/text/local-time.js";

const day = (/** @type {string} */ date) => Date.parse(date) / 86_400_000;

test("a moment carries the offset of where the tank stands, not of the phone", () => {
  const moment = Date.parse("2026-11-25T07:10:00Z");
  assert.equal(isoOf(moment, "Europe/Vienna"), "2026-11-25T08:10:00+01:00");
  assert.equal(isoOf(moment, "America/St_Johns"), "2026-11-25T03:40:00-03:30");
  assert.equal(isoOf(moment, "Asia/Kathmandu"), "2026-11-25T12:55:00+05:45");
  assert.equal(isoOf(moment, "UTC"), "2026-11-25T07:10:00+00:00");
});

test("a minute of a local day is that minute, in summer and in winter", () => {
  assert.equal(isoAt(day("2026-07-01"), 490, "Europe/Vienna"), "2026-07-01T08:10:00+02:00");
  assert.equal(isoAt(day("2026-11-25"), 0, "Pacific/Auckland"), "2026-11-25T00:00:00+13:00");
  assert.equal(isoAt(day("2026-11-25"), 1439, "Pacific/Honolulu"), "2026-11-25T23:59:00-10:00");
});

test("an hour that the clocks leap over lands after the leap", () => {
  assert.equal(isoAt(day("2026-03-29"), 150, "Europe/Vienna"), "2026-03-29T03:30:00+02:00");
});

test("an hour that comes twice is still the hour that was said", () => {
  assert.match(isoAt(day("2026-10-25"), 150, "Europe/Vienna"), /^2026-10-25T02:30:00/);
});
