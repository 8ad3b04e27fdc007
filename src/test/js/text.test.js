import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";

const root = new URL("../../../", import.meta.url);
const written = readFileSync(new URL("shared/text/en.json", root), "utf8");
const phrases = JSON.parse(written);

const sources = readdirSync(new URL("static/", root), { recursive: true })
  .map(String)
  .filter((name) => name.endsWith(".js") && name !== "sw.js")
  .map((name) => ({ name, text: readFileSync(new URL(`static/${name}`, root), "utf8") }));

test("every sentence that the pages ask for by its whole key is there", () => {
  const missing = sources.flatMap(({ name, text }) =>
    [...text.matchAll(/\bt\("([^"]+)"/g)].filter(([, key]) => !(key in phrases)).map(([, key]) => `${name}: ${key}`));
  assert.deepEqual(missing, []);
});

test("no key is given twice, where the later would silently win", () => {
  const keys = [...written.matchAll(/^  "([^"]+)":/gm)].map(([, key]) => key);
  assert.deepEqual(keys.filter((key, place) => keys.indexOf(key) !== place), []);
});

test("every plural has a form for the rest", () => {
  const without = Object.entries(phrases).filter(([, phrase]) => typeof phrase !== "string" && !phrase.other);
  assert.deepEqual(without, []);
});
