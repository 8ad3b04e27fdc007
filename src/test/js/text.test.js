import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { languages } from "../../../static/text/language.js";

const root = new URL("../../../", import.meta.url);
const texts = Object.fromEntries(languages.map((code) => [code, readFileSync(new URL(`shared/text/${code}.json`, root), "utf8")]));
const phrases = JSON.parse(texts.en);
const others = languages.slice(1);

/** @param {import("../../../static/types.js").Phrase} phrase @returns {Record<string, string>} */
const forms = (phrase) => (typeof phrase === "string" ? { other: phrase } : phrase);
/** @param {import("../../../static/types.js").Phrase} phrase */
const holes = (phrase) => [...new Set(Object.values(forms(phrase)).flatMap((text) => text.match(/\{\w+\}/g) ?? []))].sort();

const sources = readdirSync(new URL("static/", root), { recursive: true })
  .map(String)
  .filter((name) => name.endsWith(".js") && name !== "sw.js")
  .map((name) => ({ name, text: readFileSync(new URL(`static/${name}`, root), "utf8") }));

test("every sentence that the pages ask for by its whole key is there", () => {
  const missing = sources.flatMap(({ name, text }) =>
    [...text.matchAll(/\bt\("([^"]+)"/g)].filter(([, key]) => !(key in phrases)).map(([, key]) => `${name}: ${key}`));
  assert.deepEqual(missing, []);
});

for (const [code, text] of Object.entries(texts)) {
  test(`no key is given twice in ${code}, where the later would silently win`, () => {
    const keys = [...text.matchAll(/^  "([^"]+)":/gm)].map(([, key]) => key);
    assert.deepEqual(keys.filter((key, place) => keys.indexOf(key) !== place), []);
  });

  test(`every plural in ${code} has each form that the language asks for`, () => {
    const asked = new Intl.PluralRules(code).resolvedOptions().pluralCategories;
    const without = Object.entries(JSON.parse(text))
      .filter(([, phrase]) => typeof phrase !== "string" && asked.some((form) => !phrase[form])).map(([key]) => key);
    assert.deepEqual(without, []);
  });
}

test("every file of sentences is a language that can be chosen", () => {
  assert.deepEqual(readdirSync(new URL("shared/text/", root)).filter((name) => name.endsWith(".json")).sort(),
    languages.map((code) => `${code}.json`).sort());
});

test("every guild of the tables has its name, and its warning where the tables warn", () => {
  const [header, ...rows] = readFileSync(new URL("shared/reference/guilds.csv", root), "utf8").trim().split("\n");
  const guilds = rows.map((row) => row.slice(0, row.indexOf(",")));
  assert.equal(header.split(",")[0], "guild");
  assert.ok(guilds.length > 10);
  assert.deepEqual(guilds.filter((guild) => !(`guild.${guild}` in phrases)), []);
  assert.deepEqual(guilds.filter((guild) => guild !== "general_carnivore" && !(`guild.${guild}.warning` in phrases)), []);
});

test("every food, supplement and household measure of the tables has its name", () => {
  const keysOf = (/** @type {string} */ table) => readFileSync(new URL(`shared/reference/${table}.csv`, root), "utf8").trim().split("\n").slice(1)
    .map((row) => row.slice(0, row.indexOf(",")));
  assert.ok(keysOf("foods").length > 40);
  assert.deepEqual(keysOf("foods").filter((key) => !(`food.${key}` in phrases)), []);
  assert.deepEqual(keysOf("supplements").filter((key) => !(`supplement.${key}` in phrases)), []);
  const measures = readFileSync(new URL("shared/reference/foods.csv", root), "utf8").match(/(?<=[,"])1 [a-z][^,"]*/g) ?? [];
  assert.ok(measures.length > 40);
  assert.deepEqual(measures.map((text) => text.slice(2).toLowerCase().replaceAll(/[^a-z0-9]+/g, "_")).filter((key) => !(`measure.of.${key}` in phrases)), []);
});

for (const code of others) {
  const said = JSON.parse(texts[code]);

  test(`${code} has the keys of en in the same order, and no others`, () => {
    assert.deepEqual(Object.keys(said), Object.keys(phrases));
  });

  test(`${code} fills the same holes as en, and is plural where en is`, () => {
    const differ = Object.keys(phrases).filter((key) => typeof said[key] !== typeof phrases[key] || String(holes(said[key])) !== String(holes(phrases[key])));
    assert.deepEqual(differ, []);
  });

  test(`${code} leaves no whole sentence in en`, () => {
    const same = Object.keys(phrases).filter((key) => forms(phrases[key]).other === forms(said[key]).other
      && forms(said[key]).other.replaceAll(/\{\w+\}/g, "").trim().split(/\s+/).length > 2);
    assert.deepEqual(same, []);
  });
}
