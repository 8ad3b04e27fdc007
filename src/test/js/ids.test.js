import assert from "node:assert/strict";
import { test } from "node:test";
import { newId, uuid7 } from "../../../static/store/ids.js";

test("the example of RFC 9562, appendix A.6, comes out to the digit", () => {
  const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
  assert.equal(uuid7(0x017f22e279b0, random), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
});

test("version and variant hold whatever the chance bits are", () => {
  for (const fill of [0x00, 0xff]) {
    assert.match(uuid7(2 ** 48 - 1, new Uint8Array(10).fill(fill)), /^ffffffff-ffff-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-/);
  }
});

test("a thousand minted at once are a thousand", () => {
  assert.equal(new Set(Array.from({ length: 1000 }, newId)).size, 1000);
});
