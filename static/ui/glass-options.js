import { html } from "lit";
import { Element } from "./element.js";
import { canKeepAwake, chooseAwake, staysAwake } from "./awake.js";
import { buzz, buzzes, canBuzz, chooseBuzz } from "./buzz.js";
import { t } from "../text/index.js";

/** What a phone does at the glass besides showing: stay lit, and be felt. */
export class GlassOptions extends Element {
  render() {
    return html`<h2>${t("glass.heading")}</h2>
      <div class="choices">
        ${this.#choice("awake", canKeepAwake(), staysAwake(), chooseAwake)}
        ${this.#choice("buzz", canBuzz(), canBuzz() && buzzes(), (wanted) => {
          chooseBuzz(wanted);
          buzz("saved");
        })}
      </div>`;
  }

  /** @param {string} name @param {boolean} can @param {boolean} chosen @param {(wanted: boolean) => unknown} choose */
  #choice(name, can, chosen, choose) {
    return html`<label><input type="checkbox" name=${name} .checked=${chosen} ?disabled=${!can}
      @change=${(/** @type {Event} */ event) => choose(/** @type {HTMLInputElement} */ (event.target).checked)}>
      <span>${t(`glass.${name}`)}<small>${t(can ? `glass.${name}.means` : "glass.cannot")}</small></span></label>`;
  }
}
