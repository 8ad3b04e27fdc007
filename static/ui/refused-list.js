import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { Element } from "./element.js";
import { has, t } from "../text/index.js";
/** @import { Refusal } from "../types.js" */

/**
 * Records the server would not take, whole and with its reasons, so that none of them is lost unseen.
 * @fires refused-list-again - the id of one to be sent once more
 */
export class RefusedList extends Element {
  static properties = { refusals: { attribute: false } };

  constructor() {
    super();
    /** @type {Refusal[]} */
    this.refusals = [];
  }

  render() {
    if (this.refusals.length === 0) return "";
    return html`
      <h3>${t("status.refused.heading")}</h3>
      <p>${t("status.refused.means")}</p>
      <ul>${repeat(this.refusals, ({ id }) => id, (refusal) => this.#row(refusal))}</ul>`;
  }

  /** @param {Refusal} refusal */
  #row({ id, entry, problem }) {
    const kind = `status.kind.${entry.kind}`;
    return html`
      <li class="stack">
        <p><strong>${has(kind) ? t(kind) : entry.kind}</strong> <time>${entry.happenedAt.slice(0, 16).replace("T", " ")}</time></p>
        <p>${problem?.detail ?? problem?.title ?? t("status.refused.noReason")}</p>
        ${problem?.errors?.length ? html`<ul lang="en">${problem.errors.map(({ field, takes }) => html`<li>${field}: ${takes}</li>`)}</ul>` : ""}
        <details><summary>${t("status.refused.whole")}</summary><pre>${JSON.stringify(entry, null, 2)}</pre></details>
        <button type="button" class="firm" @click=${() => this.say("refused-list-again", id)}>${t("status.refused.again")}</button>
      </li>`;
  }
}
