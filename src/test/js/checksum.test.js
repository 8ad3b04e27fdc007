import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { checksumOf } from "../../../static/sync/checksum.js";

const vectors = JSON.parse(readFileSync(new URL("../resources/checksums.json", import.meta.url), "utf8"));

test("an entry adds up to what the server says it does", () => {
  for (const { entry, checksum } of vectors) assert.equal(checksumOf([entry]), checksum, JSON.stringify(entry));
});

test("a page adds up to the same in any order", () => {
  const entries = vectors.map((/** @type {any} */ one) => one.entry);
  assert.equal(checksumOf(entries), checksumOf([...entries].reverse()));
  assert.equal(checksumOf(entries), vectors.reduce((/** @type {number} */ sum, /** @type {any} */ one) => (sum + one.checksum) % 2 ** 32, 0));
});

test("one changed letter, number or place is another sum", () => {
  const entry = vectors[3].entry;
  for (const other of [{ ...entry, seq: 3 }, { ...entry, id: "ü🌚" }, { ...entry, body: { ...entry.body, deep: [] } }]) {
    assert.notEqual(checksumOf([other]), checksumOf([entry]));
  }
});
