import { html, svg } from "lit";

/** Our own pictures on a field of 24 by 24, drawn to be told apart by shape alone. */
const drawings = {
  // the six destinations
  feed: svg`<path d="M3 8.5h18M5 8.5c0 3 3 5 7 5s7-2 7-5"/><path d="M8.5 5.5 12 2.5l3.5 3"/><g class="solid"><circle cx="8" cy="17.5" r="1.2"/><circle cx="12" cy="20.5" r="1.2"/><circle cx="16" cy="17.5" r="1.2"/></g>`,
  today: svg`<path d="M2 16c2.5 0 2.5-2 5-2s2.5 2 5 2 2.5-2 5-2 2.5 2 5 2M2 20.5c2.5 0 2.5-2 5-2s2.5 2 5 2 2.5-2 5-2 2.5 2 5 2"/><path d="M12 11.5V3"/><path class="solid" d="M12 3l6 2.2-6 2.3z"/>`,
  fish: svg`<path d="M2.5 12C5.5 7 10 5.5 13 6.5c2.6.9 3.8 3 4.5 4.5l4-4v10l-4-4c-.7 1.5-1.9 3.6-4.5 4.5-3 1-7.5-.5-10.5-5.5z"/><circle class="solid" cx="7.5" cy="11" r="1.1"/>`,
  week: svg`<path d="M3.5 20.5h17M5.5 17v-4M9 17V9M12.5 17v-6M16 17V6M19.5 17v-8"/><path d="M3.5 5.5c3-2 5 1 8-1s5-1 9 0"/>`,
  water: svg`<path d="M12 3c4 5 6 8 6 11.2a6 6 0 0 1-12 0C6 11 8 8 12 3z"/><path d="M9 14.5a3 3 0 0 0 3 3"/>`,
  more: svg`<path d="M4 7h9M17 7h3M4 12h3M11 12h9M4 17h11M19 17h1"/><circle cx="15" cy="7" r="2"/><circle cx="9" cy="12" r="2"/><circle cx="17" cy="17" r="2"/>`,

  // what fish eat
  algae: svg`<path d="M12 22c0-5-3-6-3-10s3-5 3-10M12 22c0-4 5-5 5-9s-2-4-1-8M12 22c0-3-5-4-5.5-8C6.2 11.5 7.5 10.5 6.5 8"/>`,
  sponge: svg`<path d="M6 21c-2-5-2-10 .5-14l3.5 1.5L12 4l2 4.5L17.5 7c2.5 4 2.5 9 .5 14z"/><g class="solid"><circle cx="10" cy="13" r="1.3"/><circle cx="14.5" cy="12" r="1"/><circle cx="13" cy="17" r="1.3"/><circle cx="9" cy="17.5" r=".9"/></g>`,
  crustacean: svg`<path d="M19 6c-7-3-14 1-14 7 0 4 3 7 8 7h4l-2.5-2.5L18 15h-4.5c-2 0-3-1-3-2.5 0-2.5 3.5-3.5 8.5-6.5zM19 6l3-3M19 6c1-1.5 0-3-1-4"/><path d="M9 8l2.5 3M6 11.5l4 1M7.5 17.5l3.5-3"/>`,
  mollusc: svg`<path d="M12 20.5C6 17 2.5 13 3.5 9 4.5 5.5 8 4 12 4s7.5 1.5 8.5 5c1 4-2.5 8-8.5 11.5z"/><path d="M12 20V4M11 19.5 7 5.5M13 19.5l4-14M10 19 4 9.5M14 19l6-9.5"/>`,
  plankton: svg`<ellipse cx="10" cy="12" rx="3.2" ry="5.5"/><path d="M7.5 8C5 7 3.5 5 3 3M12.5 8c2.5-1 4-3 4.5-5M10 17.5V22M9 17.5 7 21.5M11 17.5l2 4"/><g class="solid"><circle cx="10" cy="9.5" r="1"/><circle cx="19" cy="12" r="1.2"/><circle cx="17.5" cy="18" r="1"/><circle cx="20.5" cy="6.5" r=".9"/></g>`,
  hard_shelled: svg`<path d="M3 16c0-6 4-11 9-11s9 5 9 11c-3 2.5-6 3.5-9 3.5S6 18.5 3 16z"/><path d="M12 5l-1.5 4 3 2.5-3 3 2 4.5"/>`,
  whole_prey: svg`<path d="M3 12h14M17 12l4-4v8zM6.5 8.5v7M10 7.5v9M13.5 9v6"/><path d="M3 12c0-1.8 1-3 3.5-3.5v7C4 15 3 13.8 3 12z"/>`,
  echinoderm: svg`<path d="M12 2.5 14 9l7 .5-5.5 4 2 7L12 16.5 6.5 20.5l2-7L3 9.5 10 9z"/>`,
  cnidarian: svg`<path d="M7 21c-1-4-1-6 0-8h10c1 2 1 4 0 8zM7 13C5 11 5 8 3 6M10 13c-1-3 0-5-1.5-9M14 13c1-3 0-5 1.5-9M17 13c2-2 2-5 4-7"/>`,
  carotenoid: svg`<path d="M12 3c4 5 6 8 6 11.5A6 6 0 0 1 6 14.5C6 11 8 8 12 3z"/><path class="solid" d="M12 20.5v-17c4 5 6 7.5 6 11a6 6 0 0 1-6 6z"/>`,
  n3_hufa: svg`<path d="M9 3c3 4 5 6.5 5 9.5a5 5 0 0 1-10 0C4 9.5 6 7 9 3zM18 12c2 2.6 3 4 3 5.8a3 3 0 0 1-6 0c0-1.8 1-3.2 3-5.8z"/>`,
  greens: svg`<path d="M4 20C4 10 9 4 20 4c0 11-6 16-16 16zM4 20 14 10M9 15v-4M9 15h5"/>`,
  prepared: svg`<path d="M12 3l8 4.5v9L12 21l-8-4.5v-9zM4 7.5l8 4.5 8-4.5M12 12v9"/>`,
  dry: svg`<g class="solid"><circle cx="7" cy="7" r="2.2"/><circle cx="16" cy="6" r="2.2"/><circle cx="11.5" cy="12.5" r="2.2"/><circle cx="19" cy="14" r="2.2"/><circle cx="5.5" cy="17" r="2.2"/><circle cx="14" cy="19" r="2.2"/></g>`,
  other: svg`<circle cx="12" cy="12" r="8"/><path d="M8 12h8"/>`,

  // where a feeding is
  sent: svg`<path d="M3 20h18M12 16V4M7 8.5 12 3.5l5 5"/><path d="M8 16h8"/>`,
  onPhone: svg`<rect x="7" y="2.5" width="10" height="19" rx="2"/><path d="M10.5 18.5h3"/><circle class="solid" cx="12" cy="9.5" r="2"/>`,
  needsYou: svg`<path d="M12 2.5 21.5 12 12 21.5 2.5 12z"/><path d="M12 7v6.5M12 16.5v.5"/>`,

  // how much a finding weighs
  high: svg`<path class="solid" d="M12 2 22 12 12 22 2 12z"/><path class="cut" d="M12 7v6M12 16.5v.5"/>`,
  medium: svg`<path d="M12 3 21 12l-9 9-9-9z"/><path class="solid" d="M12 3v18l-9-9z"/>`,
  low: svg`<path d="M12 5 19 12l-7 7-7-7z"/>`,

  photo: svg`<path d="M3 7.5h4.5L9.5 5h5l2 2.5H21v12H3z"/><circle cx="12" cy="13.2" r="3.6"/>`,
  search: svg`<circle cx="10.5" cy="10.5" r="6.5"/><path d="M15.5 15.5 21 21"/>`,
  plus: svg`<path d="M12 4v16M4 12h16"/>`,
  minus: svg`<path d="M4 12h16"/>`,
  close: svg`<path d="M5 5l14 14M19 5 5 19"/>`,
  back: svg`<path d="M15 4 7 12l8 8"/>`,
  isolation: svg`<path d="M4 4h16v16H4z"/><path d="M4 9h16"/><path class="solid" d="M7 14.5c2-2.5 5-2.5 7 0l2.5-1.5v3.5L14 15c-2 2-5 2-7-.5z"/>`,
  warm: svg`<path d="M10 13.5V5a2 2 0 0 1 4 0v8.5a4.5 4.5 0 1 1-4 0z"/><path d="M12 9v8"/><circle class="solid" cx="12" cy="17.5" r="1.8"/>`,
};

const forFoodCategory = new Map([
  ["macroalgae", "algae"],
  ["zooplankton", "plankton"],
  ["sponge-bearing", "sponge"],
]);

/**
 * One picture. Decoration only: the words stand beside it.
 * @param {string} name
 */
export function icon(name) {
  const drawing = drawings[/** @type {keyof typeof drawings} */ (name)] ?? drawings.other;
  return html`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${drawing}</svg>`;
}

/**
 * The picture of a food's category.
 * @param {string | undefined} category
 */
export function foodIcon(category) {
  return icon(forFoodCategory.get(category ?? "") ?? category ?? "other");
}
