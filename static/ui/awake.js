const kept = "provender.awake";
/** @type {{ release(): Promise<void> } | null} */
let held = null;
let watching = false;

/** Whether this browser can keep a screen from going dark; it takes a trusted connection. */
export const canKeepAwake = () => "wakeLock" in navigator;

export const staysAwake = () => localStorage.getItem(kept) === "on";

/** @param {boolean} wanted */
export async function chooseAwake(wanted) {
  localStorage.setItem(kept, wanted ? "on" : "off");
  if (wanted) return keepAwake();
  await held?.release();
  held = null;
}

/** The system lets go whenever the page is hidden, and refuses when the battery is low: it is asked again each time the page shows. */
export async function keepAwake() {
  if (!canKeepAwake()) return;
  if (!watching) document.addEventListener("visibilitychange", () => !document.hidden && staysAwake() && keepAwake());
  watching = true;
  try {
    held = await /** @type {any} */ (navigator).wakeLock.request("screen");
  } catch (fault) {
    console.info("provender: the screen may go dark:", fault);
  }
}
