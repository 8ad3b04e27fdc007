import { html } from "lit";
import { Element } from "./element.js";
import { label } from "./names.js";
import { t } from "../text/index.js";
/** @import { Refusal } from "../types.js" */

/**
 * What the server would not take, each with its reason; all of it is kept on the phone.
 * @fires refusal-list-again - the id of the entry to send once more
 */
export class RefusalList extends Element {
  static properties = { refusals: { attribute: false } };

  constructor() {
    super();
    /** @type {Refusal[]} */
    this.refusals = [];
  }

  render() {
    return html`<section>
      <h2>${t("refusal.heading")}</h2>
      <ul>${this.refusals.map(({ id, entry, problem }) => html`<li>
        <h3>${t("refusal.of", { kind: label("kind", entry.kind), when: entry.happenedAt.slice(0, 16).replace("T", " ") })}</h3>
        <p>${problem?.detail ?? problem?.title ?? t("refusal.unknown")}</p>
        ${problem?.errors?.map(({ field, takes }) => html`<p><small>${t("refusal.field", { field, takes })}</small></p>`) ?? ""}
        <button type="button" class="firm" @click=${() => this.say("refusal-list-again", id)}>${t("refusal.again")}</button>
      </li>`)}</ul>
    </section>`;
  }
}
