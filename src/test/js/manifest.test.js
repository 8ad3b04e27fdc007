import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { languages } from "../../../static/text/language.js";

const words = ["lang", "description", "label"];

/** @param {string} lang @returns {any} */
const read = (lang) => JSON.parse(readFileSync(new URL(`../../../static/manifest${lang === "en" ? "" : `.${lang}`}.webmanifest`, import.meta.url), "utf8"));

/** @param {any} part @returns {any} without what is said in a language; a shortcut is known by its address */
function bare(part) {
  if (Array.isArray(part)) return part.map(bare);
  if (typeof part !== "object") return part;
  return Object.fromEntries(Object.entries(part).filter(([key]) => !words.includes(key) && !(key === "name" && "url" in part))
    .map(([key, value]) => [key, bare(value)]));
}

test("the app is the same one in each language's manifest, said in that language", () => {
  for (const lang of languages) {
    assert.equal(read(lang).lang, lang);
    assert.deepEqual(bare(read(lang)), bare(read("en")));
  }
  assert.notEqual(read("de").description, read("en").description);
});
