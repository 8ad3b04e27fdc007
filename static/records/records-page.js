import { html } from "lit";
import { icon } from "../ui/icons.js";
import { feederNamed, fishNamed, keeperName } from "../ui/names.js";
import { saveAs } from "../ui/save-as.js";
import { ToldPage } from "../ui/told-page.js";
import { clock, figure, percent, t } from "../text/index.js";
import { agoOf, spanOf } from "./spans.js";
/** @import { Conflict, CopyCheck, Desk, Refusal } from "../types.js" */

/** Where the records are and what of them waits for a person: the one place to look when the mark at the top says so. */
export class RecordsPage extends ToldPage {
  /** @type {Refusal[]} */
  #refusals = [];
  /** @type {CopyCheck | undefined} */
  #copy;
  /** @type {{ id: string, happenedAt: string }[]} */
  #wronglyTimed = [];
  /** @type {Awaited<ReturnType<import("./records.js").Records["storage"]>>} */
  #storage = null;
  #looking = false;
  #lookAgain = () => this.#look();

  connectedCallback() {
    super.connectedCallback();
    this.desk?.addEventListener("changed", this.#lookAgain);
    this.#look();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.desk?.removeEventListener("changed", this.#lookAgain);
  }

  async #look() {
    const { desk } = this;
    if (!desk?.tank || this.#looking) return;
    this.#looking = true;
    const { records } = desk;
    [this.#refusals, this.#copy, this.#wronglyTimed, this.#storage] = await Promise.all([records.refusals(),
      records.copyCheck(desk.tank.id), records.wronglyTimed(desk.tank.id), records.storage()]).finally(() => (this.#looking = false));
    this.requestUpdate();
  }

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("records.heading")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      <p><a class="quiet" href="#/more">${t("nav.more")}</a></p>
      <div class="columns">
        <div class="stack">${this.#needsYou(desk)}${this.#sending(desk)}</div>
        <div class="stack">${this.#clock(desk)}${this.#copyOf(desk)}${this.#kept(desk)}</div>
      </div>
      <undo-toast></undo-toast>`;
  }

  /** @param {Desk} desk */
  #needsYou(desk) {
    const conflicts = desk.today?.conflicts ?? [];
    const { why } = desk.status;
    const calm = !desk.cleared && !conflicts.length && !this.#refusals.length && !desk.records.waitsTooLong && why !== "signIn" && why !== "notAllowed";
    return html`<section><h2>${t("records.needsYou")}</h2>
      ${calm ? html`<p class="marked">${icon("sent")} ${t("records.calm")}</p>` : ""}
      ${why === "signIn" || why === "notAllowed" ? html`<p>${t(`sync.why.${why}`)}</p>` : ""}
      ${why === "signIn" ? html`<p><a class="firm" href="#/sign-in">${t("people.signIn.go")}</a></p>` : ""}
      ${desk.cleared ? html`<article class="card"><h3>${icon("needsYou")} ${t("records.cleared")}</h3>
        <p>${t("records.clearedMeans", { when: agoOf(desk.cleared.at) })}
          ${desk.cleared.unsent ? t("records.clearedUnsent", { count: desk.cleared.unsent }) : t("records.clearedNone")}</p>
        <p><button type="button" class="firm" @click=${() => desk.acknowledgeCleared()}>${t("records.clearedRead")}</button></p></article>` : ""}
      ${desk.records.waitsTooLong ? html`<p class="marked">${icon("needsYou")} ${t("records.waitsLong", { since: agoOf(desk.status.oldestUnsent ?? "") })}</p>` : ""}
      <conflict-list .conflicts=${conflicts} .mayPick=${desk.mayRecord} .nameOf=${(/** @type {Conflict} */ { record, key }) =>
        (record === "fish" ? fishNamed(desk, key) : feederNamed(desk, key))} .keeperName=${(/** @type {string} */ keeper) => keeperName(desk, keeper)}
        @conflict-list-pick=${(/** @type {CustomEvent<{ conflict: Conflict, value: unknown }>} */ { detail: { conflict: { record, key, field, seen }, value } }) =>
          this.tried(async () => void (await desk.record("record", { record, key, set: { [field]: value }, saw: { [field]: seen } })))}></conflict-list>
      <refused-list .refusals=${this.#refusals}
        @refused-list-again=${(/** @type {CustomEvent<string>} */ event) => desk.tryAgain(event.detail)}></refused-list>
    </section>`;
  }

  /** @param {Desk} desk */
  #sending(desk) {
    const { unsent, refused, photos, lastContact } = desk.status;
    return html`<section><h2>${t("records.sending")}</h2>
      ${unsent + refused ? html`<p class="marked">${icon("onPhone")} ${t("more.unsent", { count: unsent + refused })}</p>`
        : html`<p class="marked">${icon("sent")} ${t("more.allSent")}</p>`}
      ${photos ? html`<p class="marked">${icon("photo")} ${t("more.photosWait", { count: photos })}</p>` : ""}
      <p><small>${lastContact ? t("records.lastContact", { when: agoOf(lastContact) }) : t("records.noContact")}</small></p>
      <p class="row"><button type="button" class="firm" @click=${() => desk.syncNow()}>${t("more.sendNow")}</button>
        ${unsent + refused ? html`<button type="button" class="firm" @click=${() => this.#save(desk)}>${t("more.saveFile")}</button>` : ""}</p>
      <label>${t("records.bring")}
        <input type="file" accept="application/json,.json" @change=${(/** @type {Event} */ event) => this.#bring(desk, event)}></label>
      <p><small>${t("records.bringMeans")}</small></p>
    </section>`;
  }

  /** @param {Desk} desk */
  #clock(desk) {
    const { clock: phone } = desk.records;
    const words = phone.offset === null ? t("records.clockUnknown")
      : !phone.isOff ? t("records.clockRight")
      : t(phone.offset > 0 ? "records.clockBehind" : "records.clockAhead", { span: spanOf(Math.abs(phone.offset)) });
    return html`<section><h2>${t("records.clock")}</h2>
      <p class="marked">${phone.isOff ? icon("needsYou") : ""} ${words}</p>
      ${!phone.isOff ? "" : html`<p>${t(phone.followsSince ? "records.clockFollowed" : "records.clockMeans")}</p>
        <p class="row"><button type="button" class="firm" @click=${() => this.#follow(desk, !phone.followsSince)}>${t(
          phone.followsSince ? "records.clockLeave" : "records.clockFollow")}</button>
        ${this.#wronglyTimed.length && desk.mayRecord ? html`<button type="button" class="firm" @click=${() => this.#shift(desk)}>${t("records.clockShift", {
          count: this.#wronglyTimed.length, span: spanOf(Math.abs(phone.offset ?? 0)) })}</button>` : ""}</p>`}
    </section>`;
  }

  /** @param {Desk} desk */
  #copyOf(desk) {
    const copy = this.#copy;
    return html`<section><h2>${t("records.copy")}</h2>
      <p>${!copy ? t("records.copyUnknown") : t(copy.mended ? "records.copyMended" : "records.copySound",
        { when: agoOf(copy.at), entries: copy.entries, count: copy.mended })}</p>
      <p><button type="button" class="firm" @click=${() => desk.tank && desk.records.checkCopy(desk.tank.id)}>${t("records.copyCheck")}</button></p>
    </section>`;
  }

  /** What the browser says, and no more: none of them promises against its owner. @param {Desk} desk */
  #kept(desk) {
    const storage = this.#storage;
    return html`<section><h2>${t("records.storage")}</h2>
      <p>${storage === null ? t("records.storageUnknown") : t(storage.lasting ? "records.storageLasting" : "records.storageLoose")}</p>
      ${storage?.used !== null && storage?.room ? html`<p><small>${t("records.storageUsed", {
        used: figure(storage.used / 1e6, "MB"), share: percent(storage.used / storage.room) })}</small></p>` : ""}
      ${storage && !storage.lasting ? html`<p><button type="button" class="firm" @click=${() => this.#ask(desk)}>${t("records.storageAsk")}</button></p>` : ""}
    </section>`;
  }

  /** @param {Desk} desk */
  #save(desk) {
    return this.tried(async () => saveAs(await desk.records.unsentFile(), "provender-unsent.json"));
  }

  /** @param {Desk} desk @param {Event} event */
  async #bring(desk, event) {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const file = input.files?.[0];
    if (!file) return;
    await this.tried(async () => {
      const { accepted, known, refused } = await desk.records.bringFile(await file.text()).catch((fault) => {
        throw fault instanceof SyntaxError || fault instanceof TypeError ? new Error(t("records.bringNot")) : fault;
      });
      this.tell(t("records.brought", { count: accepted, known, refused: refused.length }));
    });
    input.value = "";
  }

  /** @param {Desk} desk @param {boolean} follows */
  #follow(desk, follows) {
    return this.tried(async () => {
      await desk.records.clock.follow(follows);
      this.tell(t(follows ? "records.clockFollowed" : "records.clockLeft"));
    });
  }

  /** @param {Desk} desk */
  #shift(desk) {
    return this.tried(async () => {
      const moved = this.#wronglyTimed;
      this.#wronglyTimed = [];
      for (const { id, happenedAt } of moved) await desk.amend(id, { happenedAt });
      this.tell(t("records.clockShifted", { count: moved.length }));
    });
  }

  /** @param {Desk} desk */
  #ask(desk) {
    return this.tried(async () => {
      this.tell(t((await desk.records.askToKeep()) ? "records.storageLasting" : "records.storageRefused"));
      await this.#look();
    });
  }
}
