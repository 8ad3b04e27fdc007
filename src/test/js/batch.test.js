import assert from "node:assert/strict";
import { test } from "node:test";
import { batchOf } from "../../../static/sync/batch.js";

const noted = (/** @type {string} */ note) => ({ id: "x", body: { note } });
const bytesOf = (/** @type {object} */ value) => new TextEncoder().encode(JSON.stringify(value)).length;

test("small entries go five hundred at a time, the oldest first", () => {
  const queue = Array.from({ length: 501 }, (_, i) => noted(`${i}`));
  assert.deepEqual(batchOf(queue), queue.slice(0, 500));
});

test("large ones, counted as they travel and not by letters, stay within 256 KiB", () => {
  const queue = Array.from({ length: 300 }, () => noted("ü".repeat(1000)));
  const batch = batchOf(queue);
  assert.ok(bytesOf({ entries: batch }) <= 256 * 1024);
  assert.ok(bytesOf({ entries: queue.slice(0, batch.length + 1) }) > 256 * 1024 - 100);
});

test("one too large for any batch goes alone, so that the answer is about it", () => {
  const queue = [noted("x".repeat(300_000)), noted("small")];
  assert.deepEqual(batchOf(queue), queue.slice(0, 1));
});

test("an empty queue is an empty batch", () => assert.deepEqual(batchOf([]), []));
