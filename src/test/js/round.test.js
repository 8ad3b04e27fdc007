import assert from "node:assert/strict";
import { test } from "node:test";
import { added, inOrder, standingOf } from "../../../static/round/standing.js";

const DAY = 20_000;
const NOW = Date.parse("2026-11-25T12:00:00Z");
const row = { id: "hall", name: "Hall", household: "house", role: "keeper", zone: "Europe/Berlin", head: 9, epoch: "e", keepers: [] };

function today(changes = {}) {
  const days = Array.from({ length: 28 }, (_, back) => ({ day: DAY - 27 + back, dueKj: 100, lowKj: 80, highKj: 120, givenKj: 100 }));
  return { day: DAY, lastFeeding: { day: DAY, minute: 500, by: "teo" }, findings: [], days, feeders: [], conflicts: [], ownFoods: [],
    ration: { givenKj: { value: 40 }, dueKj: { value: 100 } }, ...changes };
}
const finding = (severity, ...offer) => ({ severity, offer, rule: "no-algae" });

test("a tank that is fed and well asks for no visit", () => {
  const standing = standingOf(row, today(), 0, NOW);
  assert.deepEqual(standing.reasons, []);
  assert.equal(standing.daysSinceFed, 0);
  assert.equal(standing.today, 0.4);
  assert.equal(standing.week, 1);
});

test("the week is the seven full days before this one", () => {
  const days = today().days.map((one) => ({ ...one, givenKj: one.day === DAY ? 0 : one.day >= DAY - 7 ? 60 : 100 }));
  const standing = standingOf(row, today({ days }), 0, NOW);
  assert.ok(Math.abs((standing.week ?? 0) - 0.6) < 1e-12);
  assert.deepEqual(standing.reasons, ["underfed"]);
});

test("days without a feeding count by the calendar at the tank, and never fed is never", () => {
  assert.equal(standingOf(row, today({ lastFeeding: { day: DAY - 4, minute: 1439, by: "teo" } }), 0, NOW).daysSinceFed, 4);
  const never = standingOf(row, today({ lastFeeding: null }), 0, NOW);
  assert.equal(never.daysSinceFed, null);
  assert.deepEqual(never.reasons, ["fed"]);
});

test("a hopper is refilled by the earliest day on which it may be empty, and what it can take is brought", () => {
  const feeder = (name, low, running = true) => ({ key: name, name, running, hopperDays: { value: low + 2, low, high: low + 4 }, hopperGrams: 100,
    levelGrams: { value: 20 }, mix: [{ food: "pellet", share: 0.75 }, { food: "flake", share: 0.25 }] });
  const standing = standingOf(row, today({ feeders: [feeder("late", 9.9), feeder("soon", 2.7), feeder("off", 0, false)] }), 0, NOW);
  assert.deepEqual(standing.refills.map(({ feeder: name, day }) => [name, day - DAY]), [["soon", 2], ["late", 9]]);
  assert.deepEqual(standing.bring, [{ food: "pellet", grams: 60 }, { food: "flake", grams: 20 }]);
  assert.deepEqual(standing.reasons, ["refill"]);
});

test("one food for two findings is brought once, the larger amount", () => {
  const nori = (grams) => ({ food: "nori", grams });
  const standing = standingOf(row, today({ findings: [finding("high", nori(4), { food: "kelp", grams: 9 }), finding("low", nori(6))] }), 0, NOW);
  assert.deepEqual(standing.bring, [nori(6)]);
  assert.deepEqual(added(standing.bring, [nori(2)]), [nori(8)]);
});

test("a keeper's phone is quiet after three days, and who was never heard of says nothing", () => {
  const keepers = [{ id: "a", name: "Ada", seenAt: "2026-11-24T12:00:00Z" }, { id: "b", name: "Bo", seenAt: "2026-11-20T12:00:00Z" },
    { id: "c", name: "Cy", seenAt: null }, { id: "d", name: "Di" }];
  assert.deepEqual(standingOf({ ...row, keepers }, today(), 0, NOW).quiet, [{ name: "Bo", days: 5 }]);
});

test("a round is ordered by weight, by hunger, by ration, by refill or by name, and shows only what asks for a visit", () => {
  const make = (name, changes) => ({ ...standingOf({ ...row, id: name, name }, today(changes), 0, NOW) });
  const calm = make("A calm", {});
  const many = make("B many", { findings: [finding("medium"), finding("medium"), finding("low")] });
  const heavy = make("C heavy", { findings: [finding("high")], lastFeeding: { day: DAY - 1, minute: 0, by: "t" } });
  const never = make("D never", { lastFeeding: null });
  const names = (order, due = false) => inOrder([never, calm, heavy, many], order, due).map(({ name }) => name[0]).join("");
  assert.equal(names("weight"), "CBAD");
  assert.equal(names("fed"), "DCAB");
  assert.equal(names("name"), "ABCD");
  assert.equal(names("weight", true), "CD");
});
