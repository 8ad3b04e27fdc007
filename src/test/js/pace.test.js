import assert from "node:assert/strict";
import { test } from "node:test";
import { Pace } from "../../../static/sync/pace.js";

const failedTimes = (/** @type {number} */ times, /** @type {number} */ chance) => {
  const pace = new Pace(() => chance);
  for (let i = 0; i < times; i++) pace.failed();
  return pace.next();
};

test("waits double from two seconds and never pass five minutes", () => {
  assert.deepEqual([1, 2, 3, 4].map((n) => failedTimes(n, 1)), [2000, 4000, 8000, 16000]);
  assert.equal(failedTimes(50, 1), 300_000);
});

test("chance spreads the phones over the second half of the wait", () => {
  assert.equal(failedTimes(3, 0), 4000);
});

test("one success ends the waiting for the next failure", () => {
  const pace = new Pace(() => 1);
  for (let i = 0; i < 9; i++) pace.failed();
  pace.succeeded();
  pace.failed();
  assert.equal(pace.next(), 2000);
});
