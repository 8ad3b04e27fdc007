import { t } from "../text/index.js";
/** @import { Desk } from "../types.js" */

/** How fish of a family hurt a hand: common knowledge of the trade, from memory, without a figure. @type {Record<string, string>} */
const harms = {
  Scorpaenidae: "venom", Synanceiidae: "venom", Siganidae: "venom", Plotosidae: "venom", Dasyatidae: "venom", Trachinidae: "venom",
  Acanthuridae: "blade", Pomacanthidae: "spine", Holocentridae: "spine",
  Muraenidae: "bite", Balistidae: "bite", Tetraodontidae: "bite", Diodontidae: "bite",
};

/** What to mind with a fish of a species; empty when nothing special is known. @param {Desk} desk @param {string} species */
export function harmOf(desk, species) {
  const harm = harms[String(desk.reference.species.get(species)?.family)];
  return harm ? t(`caution.harm.${harm}`) : "";
}
