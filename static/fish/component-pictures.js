import { html, svg } from "lit";
import { icon } from "../ui/icons.js";
import { label } from "../ui/names.js";
import { percent, t } from "../text/index.js";
/** @import { FishComponent } from "../types.js" */

const around = 100;

/**
 * Days since a component was last taken, as a ring that closes at the longest gap allowed; past it, a solid disc.
 * @param {FishComponent} row
 */
export function gapRing(row) {
  const name = label("component", row.component);
  const days = row.daysSinceTaken;
  const over = isOver(row);
  const part = days === undefined || over ? around : (around * days) / Math.max(1, row.gapDays);
  const words = days === undefined ? t("gap.never", { name, limit: row.gapDays })
    : t("gap.days", { name, count: days, limit: row.gapDays });
  return html`<span class="gap ${over ? "over" : ""}" role="img" aria-label=${words} title=${words}>
    <svg class="ring" viewBox="0 0 40 40" aria-hidden="true" focusable="false">
      <circle class="limit" cx="20" cy="20" r="18"/>
      ${part > 0 ? svg`<circle class="passed" cx="20" cy="20" r="18" pathLength=${around}
        stroke-dasharray=${`${part} ${around}`} transform="rotate(-90 20 20)"/>` : ""}
    </svg>
    ${icon(row.component)}
    <small aria-hidden="true">${days === undefined ? "–" : t("gap.short", { days, limit: row.gapDays })}</small>
  </span>`;
}

/**
 * A share of 28 days' dry matter against its band: hatched from least to most, a notch at the target, a bead for the fish.
 * @param {FishComponent} row
 */
export function shareBand({ share, min, target, max, component }) {
  if (!max) return "";
  const most = Math.max(0.4, max, share ?? 0) * 1.05;
  const at = (/** @type {number} */ part) => `${(100 * part) / most}%`;
  const words = t("band.label", { name: label("component", component), least: percent(min), target: percent(target),
    most: percent(max), share: share === undefined ? t("band.nothing") : percent(share) });
  return html`<svg class="band" role="img" aria-label=${words} width="100%" height="1.5em">
    <line class="bed" x1="0" x2="100%" y1="0.75em" y2="0.75em"/>
    <rect class="span" x=${at(min)} width=${at(max - min)} y="0.35em" height="0.8em"/>
    <line class="target" x1=${at(target)} x2=${at(target)} y1="0.1em" y2="1.4em"/>
    ${share === undefined ? "" : svg`<circle class="bead" cx=${at(share)} cy="0.75em" r="0.32em"/>`}
  </svg>`;
}

/** @param {FishComponent} row */
export function isOver({ daysSinceTaken, gapDays }) {
  return gapDays > 0 && daysSinceTaken !== undefined && daysSinceTaken > gapDays;
}
