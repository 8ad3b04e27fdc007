import assert from "node:assert/strict";
import { test } from "node:test";
import { shifted, tappedToday } from "../../../static/records/tapped-times.js";
import { offsetOf } from "../../../static/sync/phone-clock.js";

const NOW = Date.parse("2026-06-15T10:00:00Z");
const entry = (/** @type {object} */ more = {}) => /** @type {any} */ ({
  id: "a", device: "mine", kind: "feeding", happenedAt: "2026-06-15T11:30:00+02:00", recordedAt: "2026-06-15T09:30:01Z", zone: "Europe/Berlin", body: {}, ...more });
const found = (/** @type {any[]} */ ...entries) => tappedToday(entries, "mine", { now: NOW, followsSince: null }).map(({ id }) => id);

test("what was tapped here within the day is found, and nobody else's or yesterday's", () => {
  assert.deepEqual(found(entry(), entry({ id: "b", device: "another" }), entry({ id: "c", recordedAt: "2026-06-14T09:30:00Z", happenedAt: "2026-06-14T11:30:00+02:00" })), ["a"]);
});

test("a time given by hand, or set right already, is left alone", () => {
  assert.deepEqual(found(entry({ happenedAt: "2026-06-15T08:00:00+02:00" })), []);
  assert.deepEqual(found(entry(), entry({ id: "m", kind: "amendment", body: { entry: "a", set: { happenedAt: "2026-06-15T13:30:00+02:00" } } })), []);
});

test("what already carries the server's time is left alone", () => {
  assert.deepEqual(tappedToday([entry()], "mine", { now: NOW, followsSince: "2026-06-15T09:00:00Z" }), []);
});

test("a moved time keeps its zone, across midnight too", () => {
  assert.equal(shifted(entry({ happenedAt: "2026-06-15T23:30:00+02:00" }), 2 * 3600_000), "2026-06-16T01:30:00+02:00");
  assert.equal(shifted(entry(), -400 * 86_400_000), "2025-05-11T11:30:00+02:00");
});

test("the offset is measured against the middle of the way there and back", () => {
  assert.equal(offsetOf(NOW, NOW + 2000, "2026-06-15T10:03:01Z"), 180_000);
});
