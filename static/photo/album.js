/** @import { Desk, Entry, Feeding, Shot } from "../types.js" */
/** @import { PhotoShelf } from "../store/photo-shelf.js" */
import { getPicture } from "../sync/http.js";

/** The open tank's photos, and what was noted of each of its fish. */
export class Album {
  #desk;
  #shelf;

  /** @param {Desk} desk @param {PhotoShelf} shelf */
  constructor(desk, shelf) {
    this.#desk = desk;
    this.#shelf = shelf;
  }

  /** A photo, kept on this phone and sent when it can be. @param {{ feeding: string } | { fish: string }} shows @param {Blob} picture */
  async add(shows, picture) {
    return this.#desk.record("photo", shows, { picture: await picture.arrayBuffer() });
  }

  /** Its picture goes for good, here at once and elsewhere with the next exchange; its entry is taken back. @param {string} photo */
  async erase(photo) {
    const { tank } = this.#desk;
    if (!tank) throw new Error("no tank is open");
    await this.#shelf.erase(photo, tank.id);
    await this.#desk.record("withdrawal", { entry: photo, withdrawn: true, erased: true });
  }

  /** The photos of some feedings, by feeding. @param {Feeding[]} feedings @returns {Promise<Map<string, Shot[]>>} */
  async ofFeedings(feedings) {
    const ids = feedings.map(({ id }) => id).filter(Boolean).sort();
    const { tank } = this.#desk;
    /** @type {Map<string, Shot[]>} */
    const found = new Map();
    if (!tank || !ids.length) return found;
    for (const entry of await this.#standing(tank.id, await this.#shelf.ofFeedings(tank.id, ids[0]))) {
      const shots = found.get(entry.body.feeding) ?? [];
      found.set(entry.body.feeding, [...shots, await this.#shot(entry)]);
    }
    return found;
  }

  /** Everything noted of a fish by name, oldest first, with its photos apart. @param {string} fish */
  async ofFish(fish) {
    const tank = this.#desk.tank?.id ?? "";
    const [notes, changes] = await Promise.all([this.#shelf.ofFish(tank, fish), this.#shelf.changesOf(tank, fish)]);
    const entries = (await this.#standing(tank, [...notes, ...changes])).sort((a, b) => Date.parse(a.happenedAt) - Date.parse(b.happenedAt));
    const shots = await Promise.all(entries.filter(({ kind }) => kind === "photo").map((entry) => this.#shot(entry)));
    return { entries: entries.filter(({ kind }) => kind !== "photo"), shots: shots.reverse() };
  }

  /**
   * The picture itself: from this phone, else from the server; null while it has not reached the server.
   * @param {string} id
   */
  async picture(id) {
    const tank = this.#desk.tank?.id ?? "";
    const kept = await this.#shelf.find(id);
    if (kept?.erased) return null;
    const bytes = kept?.bytes ?? (await getPicture(`/api/v1/tanks/${encodeURIComponent(tank)}/photos/${id}`));
    if (bytes && !kept) await this.#shelf.fetched(id, tank, bytes);
    return bytes ? new Blob([bytes], { type: "image/jpeg" }) : null;
  }

  /** Entries as corrected, without those that were taken back. @param {string} tank @param {Entry[]} entries @returns {Promise<Entry[]>} */
  async #standing(tank, entries) {
    const changes = await this.#shelf.after(tank, entries.map(({ id }) => id));
    return entries.flatMap((entry, place) => {
      const after = changes[place];
      const last = after.findLast(({ kind }) => kind === "withdrawal");
      if (last?.body.withdrawn) return [];
      const standing = after.filter(({ kind }) => kind === "amendment").reduce(corrected, entry);
      return [after.some(({ kind, body }) => kind === "withdrawal" && body.erased) ? { ...standing, body: { ...standing.body, erased: true } } : standing];
    });
  }

  /** @param {Entry} entry @returns {Promise<Shot>} */
  async #shot({ id, by, happenedAt, body }) {
    const kept = await this.#shelf.find(id);
    const { keeper, tank } = this.#desk;
    return { id, by, happenedAt, note: String(body.note ?? ""), sent: !kept?.waits, problem: kept?.problem?.title ?? "",
      erased: body.erased === true, mayErase: by === keeper?.id || tank?.role === "steward" };
  }
}

/** @param {Entry} entry @param {Entry} amendment */
function corrected(entry, { body: { set = {} } }) {
  const next = { ...entry, body: { ...entry.body } };
  for (const [path, value] of Object.entries(set)) {
    if (path === "happenedAt") next.happenedAt = String(value);
    else if (/^body\.[^.]+$/.test(path)) next.body[path.slice(5)] = value;
  }
  return next;
}
