import { summon } from "../ui/summon.js";

/** The two elements for photos, fetched when the first is needed. */
export const summonPicker = () => summon("photo-picker", async () => (await import("./photo-picker.js")).PhotoPicker);
export const summonStrip = () => summon("photo-strip", async () => (await import("./photo-strip.js")).PhotoStrip);
