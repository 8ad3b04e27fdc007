/** @import { Desk, Fish } from "../types.js" */
/** @import { Story } from "./fish-story.js" */
import { summon } from "../ui/summon.js";
import { condition, grown, masses, relationOf, sizes, tastes } from "./story.js";

/** Fetches what shows the story of a fish. */
export async function summonStory() {
  await summon("growth-chart", async () => (await import("./growth-chart.js")).GrowthChart);
  await summon("fish-story", async () => (await import("./fish-story.js")).FishStory);
}

/** Everything that this phone knows of one fish's past. @param {Desk} desk @param {Fish} fish @returns {Promise<Story>} */
export async function storyOf(desk, fish) {
  const { entries, shots } = await (await desk.album()).ofFish(fish.id);
  const relation = relationOf(desk, fish, entries);
  const measured = sizes(entries);
  const refusals = (desk.today?.feedings ?? []).filter(({ refusedBy }) => refusedBy?.includes(fish.id))
    .map(({ day, items }) => ({ day, foods: items.map(({ food }) => food) }));
  return {
    entries, shots, masses: await masses(desk, measured, relation), grown: await grown(desk, measured, desk.reference.species.get(fish.species)),
    condition: await condition(desk, measured, relation), tastes: tastes(entries, refusals),
  };
}
