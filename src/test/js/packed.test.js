import assert from "node:assert/strict";
import { test } from "node:test";
import { gunzipSync } from "node:zlib";
import { packed } from "../../../static/sync/packed.js";

test("what is long travels as gzip and is the same again when unpacked", async () => {
  const text = JSON.stringify({ notes: Array.from({ length: 300 }, (_, i) => `für Tag ${i}`) });
  const { body, headers } = await packed(text);
  assert.deepEqual(headers, { "Content-Encoding": "gzip" });
  assert.ok(body instanceof ArrayBuffer && body.byteLength < text.length / 4);
  assert.equal(gunzipSync(body).toString("utf8"), text);
});

test("what is short travels as it is", async () => {
  assert.deepEqual(await packed('{"entries":[]}'), { body: '{"entries":[]}', headers: {} });
});

test("a browser that cannot pack sends it as it is", async (context) => {
  const { CompressionStream } = globalThis;
  context.after(() => Object.assign(globalThis, { CompressionStream }));
  Reflect.deleteProperty(globalThis, "CompressionStream");
  const text = "x".repeat(10_000);
  assert.deepEqual(await packed(text), { body: text, headers: {} });
});
