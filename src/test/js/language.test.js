import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { beforeEach, test } from "node:test";
import { chooseHours, hours } from "../../../static/text/hours.js";
import { chooseLanguage, language, regional } from "../../../static/text/language.js";
import { loadText, t } from "../../../static/text/index.js";

const root = new URL("../../../", import.meta.url);

/** @param {string[]} languages as the browser asks for them */
function phone(languages) {
  const kept = new Map();
  Object.defineProperty(globalThis, "navigator", { configurable: true, value: { languages } });
  Object.assign(globalThis, {
    localStorage: {
      getItem: (/** @type {string} */ key) => kept.get(key) ?? null,
      setItem: (/** @type {string} */ key, /** @type {string} */ value) => kept.set(key, value),
    },
    document: { documentElement: { lang: "" }, querySelectorAll: () => [] },
    fetch: async (/** @type {string} */ path) => new Response(readFileSync(new URL(`.${path}`, root)), { headers: { "Content-Type": "application/json" } }),
  });
}

beforeEach(() => phone(["en-GB"]));

test("the first language that the browser asks for and that there is, is spoken", () => {
  phone(["fr-CH", "de-CH", "en"]);
  assert.equal(language(), "de");
  phone(["fr"]);
  assert.equal(language(), "en");
});

test("what was chosen on the phone goes before what the browser asks for", () => {
  chooseLanguage("de");
  assert.equal(language(), "de");
  chooseLanguage("xx");
  assert.equal(language(), "en");
});

test("a language is written as where the browser's owner lives, and no tag that is none gets in the way", () => {
  phone(["en-US@posix", "de-AT", "en-GB", "en-US"]);
  assert.equal(regional("en"), "en-GB");
  assert.equal(regional("de"), "de-AT");
  phone(["fr-CA"]);
  assert.equal(regional("en"), "en");
});

test("hours are counted as usual there, until another way is chosen", () => {
  assert.equal(hours(), "h23");
  phone(["en-US"]);
  assert.equal(hours(), "h12");
  chooseHours("h23");
  assert.equal(hours(), "h23");
});

test("sentences, lists, plurals and the document follow the language", async () => {
  await loadText("de");
  assert.equal(document.documentElement.lang, "de");
  assert.equal(t("row.soaked", { supplements: ["A", "B", "C"] }), "getränkt mit A, B und C");
  assert.equal(t("nav.findings", { count: 1 }), "1 Hinweis");
  assert.equal(t("nav.findings", { count: 1200 }), "1.200 Hinweise");
});

test("a short month at the end of a sentence does not stop it twice", async () => {
  await loadText("de");
  assert.equal(t("week.since", { day: "26. Okt." }), "Seit 26. Okt.");
  assert.equal(t("week.since", { day: "gestern" }), "Seit gestern.");
});
