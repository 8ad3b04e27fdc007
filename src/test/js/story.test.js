import assert from "node:assert/strict";
import { test } from "node:test";
import { compare } from "../../../static/fish/compare.js";
import { condition, grown, masses, sizes, tastes } from "../../../static/fish/story.js";

const observed = (on, body) => ({ kind: "observation", by: "teo", happenedAt: `${on}T09:00:00+02:00`, body });
const desk = {
  reference: { constants: new Map([["glass_length_error_cm", { value: 2.1 }]]) },
  calc: (name, { lengthCm, lengthErrorCm = 0, weighedGrams, days }) => (name === "growth" ? { lengthCm: lengthCm + days / 100 }
    : { weightGrams: { value: lengthCm ** 3, low: (lengthCm - lengthErrorCm) ** 3, high: (lengthCm + lengthErrorCm) ** 3 }, relativeCondition: weighedGrams / lengthCm ** 3, why: [] }),
};

test("sizes come from the roster and from what was seen, on the day where the tank stands, oldest first", () => {
  const entries = [
    observed("2026-05-10", { saw: "weight", grams: 900 }),
    { kind: "record", by: "maren", happenedAt: "2026-04-01T00:30:00+02:00", body: { set: { lengthCm: 9, lengthErrorCm: 0.3, measuredOn: "2026-03-01" } } },
    observed("2026-05-01", { saw: "length", cm: 10 }),
    observed("2026-05-02", { saw: "ate", food: "nori_dried" }),
  ];
  assert.deepEqual(sizes(entries).map(({ day, cm, grams }) => [day, cm, grams]), [[20513, 9, undefined], [20574, 10, undefined], [20583, undefined, 900]]);
});

test("a day that was weighed needs no length", async () => {
  const found = await masses(desk, [{ day: 1, cm: 10, by: "" }, { day: 1, grams: 900, by: "" }, { day: 9, cm: 10, errorCm: 1, by: "" }], { species: "any" });
  assert.deepEqual(found, [{ day: 1, value: 900, low: 900, high: 900, weighed: true }, { day: 9, value: 1000, low: 729, high: 1331, weighed: false }]);
});

test("growth within the error of both readings is not called growth", async () => {
  const byEye = await grown(desk, [{ day: 0, cm: 20, by: "" }, { day: 100, cm: 22, by: "" }], { growth_k_per_year: 0.3, growth_linf_cm: 40 });
  assert.equal(byEye.shows, false);
  assert.ok(Math.abs(byEye.errorCm - Math.hypot(2.1, 2.1)) < 1e-12);
  assert.ok(Math.abs(byEye.expectedCm - 1) < 1e-12);
  assert.equal((await grown(desk, [{ day: 0, cm: 20, errorCm: 0.3, by: "" }, { day: 100, cm: 22, errorCm: 0.3, by: "" }])).shows, true);
  assert.equal((await grown(desk, [{ day: 0, cm: 20, by: "" }, { day: 3, cm: 22, by: "" }])), null);
});

test("condition holds a weighing against a length of about the same time, and against no other", async () => {
  const sizesOf = (day) => [{ day: 0, cm: 10, by: "" }, { day, grams: 950, by: "" }];
  assert.equal((await condition(desk, sizesOf(20), { species: "any" }))?.part, 0.95);
  assert.equal(await condition(desk, sizesOf(200), { species: "any" }), null);
});

test("what a fish took and refused is counted by food, refusals at feedings too", () => {
  const seen = [observed("2026-05-01", { saw: "ate", food: "nori_dried" }), observed("2026-05-03", { saw: "ate", food: "nori_dried" }), observed("2026-05-02", { saw: "refused" })];
  assert.deepEqual(tastes(seen, [{ day: 20600, foods: ["krill_frozen"] }]).map(({ food, ate, refused }) => [food, ate, refused]),
    [["nori_dried", 2, 0], ["krill_frozen", 0, 1], ["", 0, 1]]);
});

test("a length beside an object says how far it may be off: the distance, and both readings", () => {
  const { cm, errorCm } = compare({ objectCm: 10, object: 60, fish: 160, reading: 6, beside: 0.1 });
  assert.ok(Math.abs(cm - 80 / 3) < 1e-12);
  assert.ok(Math.abs(errorCm / cm - Math.sqrt(0.01 + 0.01 + (6 / 160) ** 2)) < 1e-12);
});
