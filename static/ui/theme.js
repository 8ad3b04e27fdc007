const kept = "provender.theme";
export const themes = ["auto", "light", "dark", "red"];

/** How this phone wants to look; a matter of the eye at the glass, so it stays on the phone and is never sent. */
export function theme() {
  const chosen = localStorage.getItem(kept) ?? "auto";
  return themes.includes(chosen) ? chosen : "auto";
}

/** @param {string} chosen */
export function chooseTheme(chosen) {
  localStorage.setItem(kept, chosen);
  showTheme();
}

/** Puts the chosen theme on the page; "auto" follows the phone. */
export function showTheme() {
  const chosen = theme();
  if (chosen === "auto") delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = chosen;
}
