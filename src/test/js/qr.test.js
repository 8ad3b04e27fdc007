import assert from "node:assert/strict";
import { test } from "node:test";
import { qrOf } from "../../../static/people/qr.js";
import { dataCodewords, withCorrection } from "../../../static/people/qr-blocks.js";

const size = (/** @type {number} */ bytes) => qrOf("x".repeat(bytes)).length;

// Byte capacities of level M, ISO/IEC 18004:2015, table 7; from memory.
test("each version is used up to the last byte that it holds", () => {
  const most = [14, 26, 42, 62, 84, 106, 122, 152, 180, 213];
  most.forEach((bytes, at) => {
    assert.equal(size(bytes), 21 + 4 * at);
    if (at < 9) assert.equal(size(bytes + 1), 25 + 4 * at);
  });
  assert.throws(() => qrOf("x".repeat(214)), /too long/);
});

test("three corners carry the finder, and rulers run between them", () => {
  const code = qrOf("https://tanks.example/#/join/some-code");
  const last = code.length - 1;
  for (const [y, x] of [[0, 0], [0, last - 6], [last - 6, 0]]) {
    const ring = [...Array(7).keys()].map((i) => code[y][x + i]);
    assert.deepEqual(ring, Array(7).fill(true));
    assert.equal(code[y + 1][x + 1], false);
    assert.equal(code[y + 3][x + 3], true);
  }
  for (let i = 8; i < last - 7; i++) assert.equal(code[6][i], i % 2 === 0);
});

test("a block and its correction together are divisible by the code's polynomial", () => {
  // Every power of two up to the number of correction bytes is a root, so the word read as a polynomial is zero there.
  const data = Array.from({ length: dataCodewords(1) }, (_, i) => i * 7 % 256);
  const word = withCorrection(data, 1);
  const times = (/** @type {number} */ one, /** @type {number} */ other) => {
    let product = 0;
    for (let a = one, b = other; b; b >>= 1, a = a << 1 ^ (a & 0x80 ? 0x11d : 0)) if (b & 1) product ^= a;
    return product;
  };
  for (let i = 0, root = 1; i < 10; i++, root = times(root, 2)) {
    assert.equal(word.reduce((sum, byte) => times(sum, root) ^ byte, 0), 0);
  }
});
