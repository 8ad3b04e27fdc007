import { html } from "lit";
import { guard } from "lit-html/directives/guard.js";
import { ToldPage } from "../ui/told-page.js";
import { inTurn } from "../ui/turns.js";
import { foodName, fishName, supplementName } from "../ui/names.js";
import { clock, dayName, grams, t } from "../text/index.js";
import { bodyOf, isMoreThanGiven, onceMore } from "./feeding-body.js";
import { countOf, foodsForNow, gramsOf, measuresOf, minutesInDay, usualItem } from "./measures.js";
import { rationLine } from "./ration-line.js";
import { namesFrom } from "./row-names.js";
import { nearBy, remember, unansweredPair } from "./same-feeding.js";
import { Tray } from "./tray.js";
/** @import { Desk, Feeding, Food, Glance, Row, Shot, Today } from "../types.js" */
/** @import { TrayExtras, TrayItem } from "./measures.js" */

const rawFoods = ["crustacean", "mollusc", "fish", "zooplankton"];

/** The page at the tank: tap what goes in, record it, see the ration move. */
export class FeedPage extends ToldPage {
  #tray = new Tray();
  #saving = false;
  /** @type {Map<string, Shot[]>} photos by feeding */
  #shots = new Map();
  /** The day whose photos are shown, and how many waited then. @type {{ today: Today | null, photos: number }} */
  #shotsOf = { today: null, photos: 0 };
  /** The answer is awaited whether what is about to be recorded is what another already did. */
  #asking = false;

  render() {
    const { desk } = this;
    const glance = desk?.glance;
    if (!desk || !glance) return html`<p role="status">${t("page.opening")}</p>`;
    const { today, mayRecord } = desk;
    const { items, open, extras } = this.#tray;
    // What each part says follows from these; a part is drawn again when one of them is another.
    const known = [today, desk.reference, desk.tank, mayRecord];
    return html`
      <page-head .tank=${glance.tank.name} .heading=${t("nav.feed")} .when=${clock(glance.minute)} .status=${desk.status}></page-head>
      ${today ? this.#same(desk, today) : ""}
      <div class="columns">
        <div class="stack">
          ${guard(known, () => (today ? rationLine(desk, today) : html`<section class="ration" aria-label=${t("ration.label")}><p role="status">${t("page.opening")}</p></section>`))}
          ${mayRecord ? guard([glance, desk.reference, items], () => this.#tiles(desk, glance)) : html`<p>${t("page.guest")}</p>`}
        </div>
        ${mayRecord ? guard([glance, desk.reference, items, open, extras], () => this.#besides(desk, glance)) : ""}
        ${guard([...known, this.#shots], () => (today ? inTurn(() => this.#given(desk, today)) : ""))}
      </div>
      <undo-toast @undo-toast-undo=${(/** @type {CustomEvent<string | { photo: string }>} */ { detail }) =>
        (typeof detail === "string" ? this.#undo(detail) : this.#bringBack(detail.photo))}></undo-toast>`;
  }

  /** @param {Desk} desk @param {Today} today */
  #given(desk, today) {
    return html`<feeding-list .feedings=${today.feedings} .withdrawn=${today.withdrawn} .day=${today.day} .minute=${today.minute}
          .mayChange=${desk.mayRecord} .names=${namesFrom(desk)}
          @feeding-row-again=${(/** @type {CustomEvent<Feeding>} */ { detail }) => this.#again(desk, detail)}
          @feeding-row-undo=${(/** @type {CustomEvent} */ event) => this.#undo(event.detail)}
          .shots=${this.#shots} @photo-strip-away=${(/** @type {CustomEvent<string>} */ { detail }) => this.#takeAway(detail)}
          @photo-strip-erase=${(/** @type {CustomEvent<string>} */ { detail }) => this.erasePhoto(desk, detail)}
          @feeding-row-correct=${this.#correct} @feeding-list-restore=${(/** @type {CustomEvent<string>} */ { detail }) => this.#bringBack(detail)}></feeding-list>`;
  }

  /** @param {Desk} desk @param {Today} today */
  #same(desk, today) {
    const me = desk.keeper?.id ?? "";
    if (!desk.mayRecord) return "";
    if (this.#asking) {
      const theirs = this.#nearBy(desk);
      return theirs ? html`<same-feeding .theirs=${theirs} .names=${namesFrom(desk)}
        @same-feeding-answer=${(/** @type {CustomEvent<string>} */ { detail }) => this.#answered(desk, detail)}></same-feeding>` : "";
    }
    const pair = unansweredPair(today.feedings, me);
    return pair ? html`<same-feeding .mine=${pair.mine} .theirs=${pair.theirs} .names=${namesFrom(desk)}
      @same-feeding-answer=${(/** @type {CustomEvent<string>} */ { detail }) => this.#settled(pair, detail)}></same-feeding>` : "";
  }

  /** What another fed near the time of what lies on the tray. @param {Desk} desk */
  #nearBy({ today, keeper }) {
    if (!today) return undefined;
    const { day, minute } = this.#tray.givenAt(today);
    return nearBy(today.feedings, keeper?.id ?? "", day, minute);
  }

  /** Before it is recorded: another one, or the same. @param {Desk} desk @param {string} answer */
  async #answered(desk, answer) {
    const theirs = this.#nearBy(desk);
    this.#asking = false;
    if (answer === "both") {
      const entry = this.#tray.items.length ? await this.#write(desk) : undefined;
      if (entry && theirs) remember(/** @type {any} */ ({ id: entry.id }), theirs);
    } else this.#tray.clear();
    this.requestUpdate();
  }

  /** After both were recorded. @param {{ mine: Feeding, theirs: Feeding }} pair @param {string} answer */
  async #settled({ mine, theirs }, answer) {
    remember(mine, theirs);
    if (answer !== "both") await this.#undo(answer === "mine" ? mine.id : theirs.id);
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {Glance} today */
  #tiles(desk, today) {
    const { foods } = desk;
    const usual = foodsForNow(today).map((key) => foods.get(key)).filter((food) => food !== undefined);
    const amounts = new Map(usual.map((food) => {
      const { count, measure } = usualItem(food, today);
      return [food.key, countOf(count, measure.name)];
    }));
    return html`${today.recipes.length ? html`<div class="chips" role="group" aria-label=${t("recipes.label")}>
      ${today.recipes.map((recipe) => html`<button type="button" class="chip" @click=${() => this.#onTray(() => this.#tray.cook(recipe))}>${recipe.name}</button>`)}</div>` : ""}
      ${usual.length ? "" : html`<p class="empty">${t("tiles.noUsual")} <a href="#/setup/tank/">${t("tiles.choose")}</a></p>`}
      <food-tiles .usual=${usual} .all=${[...foods.values()]} .amounts=${amounts}
      .chosen=${new Set(this.#tray.items.map(({ food }) => food))}
      @food-tiles-pick=${(/** @type {CustomEvent<Food>} */ event) => this.#onTray(() => this.#tray.pick(event.detail, today))}></food-tiles>`;
  }

  /** @param {Desk} desk @param {Glance} today */
  #besides(desk, today) {
    const { items, open, extras } = this.#tray;
    const food = desk.foods.get(this.#tray.food ?? "");
    const raw = items.some((one) => rawFoods.includes(desk.foods.get(one.food)?.category ?? ""));
    return html`<feeding-tray class="beside" .items=${items} .open=${open} .extras=${extras} .now=${today.day * minutesInDay + today.minute}
      .measures=${food ? measuresOf(food, today) : []}
      .supplements=${[...desk.reference.supplements.values()].filter(isSoaked)
        .map(({ key }) => ({ key, name: supplementName(desk, key) }))}
      .foodNames=${new Map(items.map((one) => [one.food, foodName(desk, one.food)]))}
      .fish=${today.fish.map((fish) => ({ key: fish.id, name: fishName(fish) }))}
      .cautions=${raw ? [t("caution.raw")] : []}
      @measure-steps-change=${(/** @type {CustomEvent<TrayItem>} */ { detail }) => this.#onTray(() => this.#tray.change(detail))}
      @feeding-tray-open=${(/** @type {CustomEvent<number>} */ { detail }) => this.#onTray(() => (this.#tray.open = detail))}
      @feeding-tray-drop=${(/** @type {CustomEvent<number>} */ { detail }) => this.#onTray(() => this.#tray.drop(detail))}
      @feeding-tray-extras=${(/** @type {CustomEvent<TrayExtras>} */ { detail }) => this.#onTray(() => (this.#tray.extras = detail))}
      @feeding-tray-record=${() => this.#record(desk)}></feeding-tray>`;
  }

  /** @param {() => void} change */
  #onTray(change) {
    change();
    // What was asked about lay otherwise on it.
    this.#asking = false;
    this.requestUpdate();
  }

  /** @param {Desk} desk */
  async #record(desk) {
    if (this.#saving || !this.#tray.items.length) return;
    const given = gramsOf(this.#tray.items);
    if (isMoreThanGiven(this.#tray.extras.leftoverGrams ?? 0, given)) {
      return this.tried(() => Promise.reject(new Error(t("tray.tooMuchLeft", { given: grams(given) }))));
    }
    if (this.#nearBy(desk)) {
      this.#asking = true;
      this.requestUpdate();
      await this.updateComplete;
      /** @type {HTMLElement | null} */ (this.querySelector("same-feeding button"))?.focus();
      return;
    }
    await this.#write(desk);
  }

  /** @param {Desk} desk */
  async #write(desk) {
    /** @type {import("../types.js").Entry | undefined} */
    let written;
    this.#saving = true;
    await this.tried(async () => {
      const { minutesAgo, then, picture } = this.#tray.extras;
      const now = desk.glance ?? { day: 0, minute: 0 };
      const { day, minute } = this.#tray.givenAt(now);
      written = await desk.record("feeding", bodyOf(this.#tray), minutesAgo || then !== null ? { happenedAt: desk.opened.isoAt(day, minute) } : {});
      const lastFood = this.#tray.food;
      this.#tray.clear();
      this.tell(then === null ? t("toast.saved") : t("toast.savedThen", { day: dayName(day, now.day), at: clock(minute) }), written.id);
      await this.#backTo(lastFood);
      this.#saving = false;
      if (picture) await this.#photograph(desk, written.id, picture);
    });
    this.#saving = false;
    return written;
  }

  /** The button that recorded is gone: the next tap starts where the last one was. @param {string | undefined} food */
  async #backTo(food) {
    this.requestUpdate();
    await this.updateComplete;
    const tile = /** @type {HTMLElement | null} */ (this.querySelector(`.tile[data-food="${CSS.escape(food ?? "")}"]`) ?? this.querySelector("food-tiles input"));
    tile?.focus({ preventScroll: true });
  }

  /** The feeding is saved whatever becomes of its picture. @param {Desk} desk @param {string} feeding @param {Blob} picture */
  async #photograph(desk, feeding, picture) {
    try {
      await (await desk.album()).add({ feeding }, picture);
    } catch {
      this.tell(t("photo.notKept"));
    }
  }

  /** Photos come when the page stands: nothing waits for them. */
  async updated() {
    const { desk } = this;
    if (!desk?.today || (desk.today === this.#shotsOf.today && desk.status.photos === this.#shotsOf.photos)) return;
    this.#shotsOf = { today: desk.today, photos: desk.status.photos };
    const shots = await (await desk.album()).ofFeedings(desk.today.feedings);
    if (!shots.size && !this.#shots.size) return;
    this.#shots = shots;
    this.requestUpdate();
  }

  /** The same once more, now. @param {Desk} desk @param {Feeding} feeding */
  #again(desk, feeding) {
    return this.tried(async () => {
      const entry = await desk.record("feeding", onceMore(feeding));
      this.tell(t("toast.saved"), entry.id);
    });
  }

  /** @param {string} id */
  #undo(id) {
    return this.tried(async () => {
      await this.desk?.withdraw(id, true);
      this.tell(t("toast.undone"));
    });
  }

  /** @param {string} id of a feeding or a photo */
  #bringBack(id) {
    return this.tried(async () => {
      await this.desk?.withdraw(id, false);
      this.tell(t("toast.restored"));
    });
  }

  /** @param {string} photo */
  #takeAway(photo) {
    return this.tried(async () => {
      await this.desk?.withdraw(photo, true);
      this.tell(t("photo.gone"), { photo });
    });
  }

  /** @param {CustomEvent<{ feeding: Feeding, items?: object[], leftoverGrams?: number, minute?: number, note?: string, picture?: Blob }>} event */
  #correct({ detail: { feeding: { id, day }, items, leftoverGrams, minute, note, picture } }) {
    return this.tried(async () => {
      const desk = /** @type {Desk} */ (this.desk);
      const set = {
        ...(minute === undefined ? {} : { happenedAt: desk.opened.isoAt(day, minute) }),
        ...(note === undefined ? {} : { "body.note": note }),
        ...(items === undefined ? {} : { "body.items": items }),
        ...(leftoverGrams === undefined ? {} : { "body.leftoverGrams": leftoverGrams }),
      };
      if (Object.keys(set).length) await desk.amend(id, set);
      this.tell(minute === undefined ? t("toast.corrected") : t("toast.retimed", { at: clock(minute) }));
      if (picture) await this.#photograph(desk, id, picture);
    });
  }
}

/** Some supplements of the table are whole foods, offered every few days; those have tiles. @param {Row} supplement */
const isSoaked = ({ dose_unit: unit }) => unit !== undefined && unit !== "days";
