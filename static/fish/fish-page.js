import { html } from "lit";
import { guard } from "lit-html/directives/guard.js";
import { repeat } from "lit-html/directives/repeat.js";
import { inTurn } from "../ui/turns.js";
import { ToldPage } from "../ui/told-page.js";
import { harmOf } from "./harm.js";
import { fishName, fishNamed, foodName, guildName, guildWarning, keeperName } from "../ui/names.js";
import { clock, t } from "../text/index.js";
/** @import { Desk, Finding, Fish, Step, Today } from "../types.js" */

const filterFrom = 10;

/** The roster: who is here, how each one fares, and one fish in full beside it. The address names the open fish. */
export class FishPage extends ToldPage {
  #wanted = "";
  /** @type {import("./fish-story.js").Story | null} */
  #story = null;
  /** The fish and the day that the story was told for, and how many photos waited then. @type {unknown[]} */
  #storyOf = [];
  #moved = () => {
    this.requestUpdate();
    this.updateComplete.then(() => this.#chosen() && this.#heading()?.focus());
  };

  #heading() {
    return /** @type {HTMLElement | null} */ (this.querySelector("fish-detail h2"));
  }

  connectedCallback() {
    super.connectedCallback();
    addEventListener("hashchange", this.#moved);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    removeEventListener("hashchange", this.#moved);
  }

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    const chosen = today.fish.find(({ id }) => id === this.#chosen());
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("nav.fish")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      <div class="columns ${chosen ? "chosen" : ""}">
        ${guard([today, desk.reference, desk.tank, chosen, this.#wanted], () => this.#roster(today, chosen))}
        <fish-detail .fish=${chosen ?? null} .guild=${chosen ? guildName(desk, chosen.guild) : ""}
          .harm=${chosen ? harmOf(desk, chosen.species) : ""} .warning=${chosen?.warning ? guildWarning(desk, chosen.guild) : ""} .day=${today.day} .mayRecord=${desk.mayRecord}
          .findings=${chosen ? findingsOf(today, chosen) : []}
          .foods=${today.tank.usualFoods.map((key) => ({ key, name: foodName(desk, key), category: "" }))}
          .story=${this.#storyOf[0] === chosen?.id ? this.#story : null} .names=${namesFrom(desk)}
          @fish-story-condition=${(/** @type {CustomEvent<number>} */ { detail }) => chosen && this.#note(desk, { fish: chosen.id, saw: "condition", score: detail })}
          @fish-story-photo=${(/** @type {CustomEvent<Blob>} */ { detail }) => chosen && this.#photograph(desk, chosen, detail)}
          @photo-strip-away=${(/** @type {CustomEvent<string>} */ { detail }) => this.#takeAway(desk, detail)}
          @photo-strip-erase=${(/** @type {CustomEvent<string>} */ { detail }) => this.erasePhoto(desk, detail)}
          @fish-detail-close=${() => (location.hash = "#/fish")}
          @fish-detail-saw=${(/** @type {CustomEvent} */ { detail }) => chosen && this.#saw(desk, chosen, detail)}
          @fish-detail-why=${(/** @type {CustomEvent} */ { detail }) => this.#why(detail.heading, detail.steps)}></fish-detail>
      </div>
      <undo-toast @undo-toast-undo=${(/** @type {CustomEvent<string | string[] | { photo: string }>} */ { detail }) => this.#undo(desk, detail)}></undo-toast>
      <why-dialog .sources=${desk.reference.sources}
        .fishName=${(/** @type {string} */ key) => fishNamed(desk, key)}></why-dialog>`;
  }

  /** @param {Today} today @param {Fish | undefined} chosen */
  #roster(today, chosen) {
    const desk = /** @type {Desk} */ (this.desk);
    const wanted = this.#wanted.toLowerCase();
    const roster = today.fish
      .filter((fish) => `${fish.name} ${fish.commonName} ${fish.species} ${guildName(desk, fish.guild)}`.toLowerCase().includes(wanted))
      .map((fish) => ({ fish, findings: findingsOf(today, fish) }))
      .sort((a, b) => rank(today, a.findings) - rank(today, b.findings) || fishName(a.fish).localeCompare(fishName(b.fish)));
    return html`<section class="roster" aria-label=${t("fish.roster")}>
      ${today.fish.length < filterFrom ? "" : html`<label><span class="unseen">${t("fish.filter")}</span>
        <input type="search" placeholder=${t("fish.filter")} .value=${this.#wanted} @input=${this.#filter}></label>`}
      ${this.desk?.mayRecord ? html`<p><a class="firm" href="#/setup/add-fish">${t("setup.add.fish")}</a></p>` : ""}
      ${roster.length ? html`<p><small>${t("fish.ringKey")}</small></p>` : html`<p>${t(today.fish.length ? "fish.noneFound" : "fish.none")}</p>`}
      <ul>${repeat(roster, ({ fish }) => fish.id, ({ fish, findings }) => inTurn(() => html`<li>
        <fish-row .fish=${fish} .findings=${findings} .guild=${guildName(desk, fish.guild)} .chosen=${fish === chosen}
          @fish-row-open=${(/** @type {CustomEvent<string>} */ { detail }) => (location.hash = `#/fish/${encodeURIComponent(detail)}`)}></fish-row></li>`))}</ul>
    </section>`;
  }

  #chosen() {
    return decodeURIComponent(location.hash.split("/")[2] ?? "");
  }

  /** @param {InputEvent} event */
  #filter(event) {
    this.#wanted = /** @type {HTMLInputElement} */ (event.target).value;
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {Fish} fish @param {{ saw: "ate" | "refused", food?: string }} detail */
  async #saw(desk, fish, { saw, food }) {
    await this.tried(async () => {
      const entry = await desk.record("observation", { fish: fish.id, saw, ...(food ? { food } : {}) });
      this.tell(t(`toast.${saw}`, { fish: fishName(fish) }), entry.id);
    });
  }

  /** The story comes when the page stands: nothing waits for it. */
  async updated() {
    const { desk } = this;
    const fish = desk?.today?.fish.find(({ id }) => id === this.#chosen());
    const now = [fish?.id, desk?.today, desk?.status.photos];
    if (!desk || !fish || now.every((part, place) => part === this.#storyOf[place])) return;
    this.#storyOf = now;
    const { storyOf, summonStory } = await import("./tell-story.js");
    await summonStory();
    const story = await storyOf(desk, fish);
    if (this.#storyOf[0] === fish.id) this.#story = story;
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {Record<string, unknown>} body of an observation */
  #note(desk, body) {
    return this.tried(async () => this.tell(t("toast.saved"), (await desk.record("observation", body)).id));
  }

  /** @param {Desk} desk @param {Fish} fish @param {Blob} picture */
  #photograph(desk, fish, picture) {
    return this.tried(async () => this.tell(t("toast.saved"), (await (await desk.album()).add({ fish: fish.id }, picture)).id));
  }

  /** @param {Desk} desk @param {string | string[] | { photo: string }} taken entries, or a photo that was taken away */
  #undo(desk, taken) {
    if (typeof taken === "string" || Array.isArray(taken)) return this.takeBack(desk, taken);
    return this.tried(async () => {
      await desk.withdraw(taken.photo, false);
      this.tell(t("toast.restored"));
    });
  }

  /** @param {Desk} desk @param {string} photo */
  #takeAway(desk, photo) {
    return this.tried(async () => {
      await desk.withdraw(photo, true);
      this.tell(t("photo.gone"), { photo });
    });
  }

  /** @param {string} heading @param {Step[]} steps */
  #why(heading, steps) {
    /** @type {any} */ (this.querySelector("why-dialog")).open(heading, steps);
  }
}

/** @param {Today} today @param {Fish} fish */
const findingsOf = ({ findings }, { id }) => findings.filter(({ fish }) => fish.includes(id));

/** @param {Today} today @param {Finding[]} own */
const rank = ({ findings }, own) => (own.length ? findings.indexOf(own[0]) : findings.length);

/** @param {Desk} desk */
const namesFrom = (desk) => ({
  food: (/** @type {string} */ key) => foodName(desk, key),
  keeper: (/** @type {string} */ id) => keeperName(desk, id),
  picture: async (/** @type {string} */ id) => (await desk.album()).picture(id),
});
