import { html } from "lit";
import { gapRing, isOver, shareBand } from "../fish/component-pictures.js";
import { icon } from "../ui/icons.js";
import { fishName, label } from "../ui/names.js";
import { dayName, grams, percent, t } from "../text/index.js";
/** @import { Fish, FishComponent, Today } from "../types.js" */

/** @param {Fish} fish @param {Pick<Fish, "weekDueKj" | "weekGotKj"> | undefined} before as it stood a week earlier */
export function fishHeading(fish, before) {
  const share = fish.weekDueKj ? fish.weekGotKj / fish.weekDueKj : 0;
  const then = before?.weekDueKj ? before.weekGotKj / before.weekDueKj : null;
  return html`<header class="row apart"><h3>${fishName(fish)}</h3><span>≈ ${percent(share)} <small>${t("week.ofItsDue")}${then === null ? "" : t("week.wasBefore", { part: percent(then) })}</small></span></header>`;
}

/** @param {Fish} fish @param {Today} today */
export function fishDiet(fish, today) {
  const findings = today.findings.filter((finding) => finding.fish.includes(fish.id));
  const wanted = fish.components.filter(({ gapDays, min, max }) => (gapDays > 0 && min > 0) || max > 0);
  return html`<p><small>${grams(fish.weightGrams.value)}${fish.lastTookDay === undefined ? "" : ` · ${t("week.lastAte", { day: dayName(fish.lastTookDay, today.day) })}`}</small></p>
    ${findings.length ? html`<p class="flag">${findings.map((finding) => html`${icon(finding.severity)} ${t(`finding.${finding.rule}.short`)} `)}</p>` : ""}
    <table><thead class="unseen"><tr><th scope="col">${t("week.component")}</th><th scope="col">${t("week.share")}</th><th scope="col">${t("week.gap")}</th></tr></thead>
      <tbody>${wanted.map((row) => html`<tr class=${isOver(row) ? "over" : ""}><th scope="row">${label("component", row.component)}</th>
        <td>${shareBand(row)}<span class="unseen">${said(row)}</span></td><td>${row.gapDays > 0 && row.min > 0 ? gapRing(row) : ""}</td></tr>`)}</tbody></table>`;
}

/** @param {FishComponent} row */
const said = ({ share }) => (share === undefined ? t("band.nothing") : percent(share));
