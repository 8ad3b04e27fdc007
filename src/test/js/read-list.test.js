import assert from "node:assert/strict";
import { test } from "node:test";
import { findSpecies, readList } from "../../../static/setup/read-list.js";

const species = [
  { scientific_name: "Zebrasoma flavescens", common_name: "yellow tang" },
  { scientific_name: "Pomacanthus imperator", common_name: "emperor angelfish" },
  { scientific_name: "Chaetodon kleinii", common_name: "Klein's butterflyfish" },
];

test("a line is read as count, species and length, in whatever order and unit people write them", () => {
  const [tangs, emperor, inches] = readList("3 yellow tangs 12 cm\nEmperor angelfish, 25cm\n\nZebrasoma flavescens 5\" x2", species);
  assert.deepEqual([tangs.count, tangs.species?.common_name, tangs.length, tangs.lengthUnit], [3, "yellow tang", 12, "cm"]);
  assert.deepEqual([emperor.count, emperor.species?.common_name, emperor.length], [1, "emperor angelfish", 25]);
  assert.deepEqual([inches.count, inches.species?.common_name, inches.length, inches.lengthUnit], [2, "yellow tang", 5, "in"]);
});

test("a decimal comma is a decimal point", () => {
  assert.equal(readList("yellow tang 12,5 cm", species)[0].length, 12.5);
});

test("a line nobody can place is handed back with its words", () => {
  const [stray] = readList("2 moonfish 10 cm", species);
  assert.equal(stray.species, null);
  assert.equal(stray.words, "moonfish");
  assert.equal(stray.count, 2);
});

test("species are found by parts of either name, and nothing is found by nothing", () => {
  assert.equal(findSpecies("klein butterfly", species)[0].scientific_name, "Chaetodon kleinii");
  assert.deepEqual(findSpecies("", species), []);
});
