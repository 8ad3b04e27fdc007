import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { chooseUnits, metric, shown, typed, unitOf } from "../../../static/text/units.js";

beforeEach(() => {
  const kept = new Map();
  Object.assign(globalThis, { localStorage: {
    getItem: (/** @type {string} */ key) => kept.get(key) ?? null,
    setItem: (/** @type {string} */ key, /** @type {string} */ value) => kept.set(key, value),
  } });
});

// NIST Handbook 44 (2024), Appendix C: 1 inch = 2.54 cm exactly, 1 US gallon = 3.785411784 L; from memory.
test("inches, gallons and degrees Fahrenheit are what the handbook says", () => {
  chooseUnits("us");
  assert.equal(unitOf("length"), "in");
  assert.ok(Math.abs(metric("length", 10) - 25.4) < 1e-12);
  assert.ok(Math.abs(metric("volume", 100) - 378.5411784) < 1e-9);
  assert.ok(Math.abs(metric("temperature", 77) - 25) < 1e-12);
});

test("what is shown and entered again comes back the same", () => {
  for (const system of ["metric", "us"]) {
    chooseUnits(system);
    for (const quantity of ["length", "volume", "temperature", "mass"]) {
      assert.ok(Math.abs(metric(quantity, shown(quantity, 26.3)) - 26.3) < 1e-12, `${system} ${quantity}`);
    }
  }
});

test("numbers are read with comma or point, and words are no numbers", () => {
  assert.equal(typed(" 1 200,5 "), 1200.5);
  assert.equal(typed(".5"), 0.5);
  assert.ok(Number.isNaN(typed("12 cm")));
  assert.ok(Number.isNaN(typed("")));
});
