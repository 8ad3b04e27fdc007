import { html } from "lit";
import { FormPage } from "../ui/form-page.js";
import { figure } from "../ui/figure.js";
import { summon } from "../ui/summon.js";
import { fishName, foodName } from "../ui/names.js";
import { clock, grams, plain, t } from "../text/index.js";
import { shown, unitOf } from "../text/units.js";
import { fishForm, newFishForm, sizeForm } from "./fish-forms.js";
import { foodForm, measureForm, recipeForm } from "./larder-forms.js";
import { tankForm } from "./tank-form.js";
/** @import { Desk, Today } from "../types.js" */
/** @import { SetupForm, Writing } from "./forms.js" */

/** @type {Record<string, (desk: Desk, today: Today, key: string) => SetupForm>} */
const forms = {
  tank: tankForm, fish: fishForm, "new-fish": newFishForm, size: sizeForm, measure: measureForm, food: foodForm, recipe: recipeForm,
};

/** From nothing to the first feeding: the tank, its fish, what is fed and what it is measured with. The address names the form. */
export class SetupPage extends FormPage {
  /** A fish that is measured, or changed from its own page, is gone back to. */
  home() {
    const [place = "", key = "", from = ""] = this.address();
    if (!place) return { to: "#/more", words: t("nav.more") };
    const ofFish = place === "size" || (place === "fish" && from === "page");
    return ofFish ? { to: `#/fish/${encodeURIComponent(key)}`, words: t("setup.backToFish") } : { to: "#/setup", words: t("setup.back") };
  }

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    const [place = "", key = ""] = this.address();
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("setup.heading")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      ${!desk.mayRecord ? html`<p>${t("page.guest")}</p>`
        : place === "add-fish" ? this.#adder(desk, today)
        : place === "size" ? this.#measuring(desk, today, key)
        : place in forms ? this.form(desk, forms[place](desk, today, key), `${place}/${key}`) : this.#overview(desk, today)}
      ${this.toast(desk)}`;
  }

  /** @param {Desk} desk @param {Today} today */
  #overview(desk, today) {
    const { tank } = today;
    return html`${this.back()}${this.#next(today)}
    <div class="columns"><div class="stack">
      ${this.#part("tank", [{ key: "", words: tank.name || t("setup.tank.unnamed"), more: tank.volumeLitres
        ? `${plain(Math.round(shown("volume", tank.volumeLitres)))} ${unitOf("volume")}` : t("setup.tank.noVolume") }])}
      ${this.#part("fish", today.fish.map((fish) => ({ key: fish.id, words: fishName(fish), more: figure(fish.weightGrams, grams) })), "add-fish")}
    </div><div class="stack">
      ${this.#part("measure", today.measures.map(({ key, name, food, grams: mass, basis }) => ({
        key, words: name, more: `${foodName(desk, food)} · ${grams(mass)} · ${t(`setup.basis.${basis}`)}` })), "measure/new")}
      ${this.#part("recipe", today.recipes.map(({ key, name, items }) => ({
        key, words: name, more: items.map(({ food }) => foodName(desk, food)).join(", ") })), "recipe/new")}
      ${this.#part("food", today.ownFoods.map(({ key, name, category }) => ({
        key, words: name, more: t(`category.${category}`) })), "food/new")}
    </div></div>`;
  }

  /** What a new tank lacks before it can be fed, one thing at a time. @param {Today} today */
  #next({ tank, fish, lastFeeding }) {
    if (lastFeeding) return "";
    const [step, to] = !tank.volumeLitres ? ["tank", "#/setup/tank/"] : !fish.length ? ["fish", "#/setup/add-fish"] : ["feed", "#/feed"];
    return html`<section class="next"><h2>${t("setup.next")}</h2><p>${t(`setup.next.${step}.means`)}</p>
      <a class="deed" href=${to}>${t(`setup.next.${step}`)}</a></section>`;
  }

  /** @param {string} place @param {{ key: string, words: string, more: unknown }[]} rows @param {string} [adds] */
  #part(place, rows, adds) {
    return html`<section>
      <h2>${t(`setup.part.${place}`)}</h2>
      ${rows.length ? "" : html`<p class="empty">${t(`setup.none.${place}`)}</p>`}
      <ul class="entries">${rows.map(({ key, words, more }) => html`<li>
        <a href=${`#/setup/${place}/${encodeURIComponent(key)}`}><strong>${words}</strong> <small>${more}</small></a></li>`)}</ul>
      ${adds ? html`<p><a class="firm" href=${`#/setup/${adds}`}>${t(`setup.add.${place}`)}</a></p>` : ""}
    </section>`;
  }

  /** @param {Desk} desk @param {Today} today @param {string} key of a fish */
  #measuring(desk, today, key) {
    summon("glass-ruler", async () => (await import("../fish/glass-ruler.js")).GlassRuler);
    return html`<div class="columns"><div>${this.form(desk, sizeForm(desk, today, key), `size/${key}`)}</div>
      <section><glass-ruler .constants=${desk.reference.constants} .key=${key}
        @glass-ruler-measured=${(/** @type {CustomEvent} */ { detail }) => this.#measured(desk, key, detail)}></glass-ruler></section></div>`;
  }

  /** @param {Desk} desk @param {string} fish @param {{ cm: number, errorCm: number, picture: Blob | null }} measured */
  async #measured(desk, fish, { cm, errorCm, picture }) {
    await this.write(desk, [{ kind: "observation", body: { fish, saw: "length", cm, lengthType: "TL", errorCm, how: "beside" } }]);
    if (picture) await this.tried(async () => void (await (await desk.album()).add({ fish }, picture)));
  }

  /** @param {Desk} desk @param {Today} today */
  #adder(desk, today) {
    return html`${this.back()}<fish-adder .species=${[...desk.reference.species.values()]} .empty=${today.fish.length === 0}
      @fish-adder-list=${(/** @type {CustomEvent<Writing[]>} */ { detail }) => this.write(desk, detail)}></fish-adder>`;
  }
}
