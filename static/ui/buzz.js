const kept = "provender.buzz";
const PATTERNS = { saved: [18], failed: [45, 70, 45] };

/** Whether this phone can be felt at all. */
export const canBuzz = () => typeof navigator.vibrate === "function";

/** A wet thumb feels that a tap was saved without looking; a matter of this phone, never sent. */
export const buzzes = () => localStorage.getItem(kept) !== "off";

/** @param {boolean} wanted */
export const chooseBuzz = (wanted) => localStorage.setItem(kept, wanted ? "on" : "off");

/** @param {keyof PATTERNS} what */
export function buzz(what) {
  if (canBuzz() && buzzes()) navigator.vibrate(PATTERNS[what]);
}
