/** @import { ReferenceMaps, ReferenceTables, Row } from "../types.js" */
import { getJson } from "../sync/http.js";

/** The engine, at work in a thread of its own: asked here, answered when it is done. */
export class Engine {
  /** Begins with the first question: who is only signing in needs no engine. @type {Worker | null} */
  #worker = null;
  /** @type {Map<number, { done: (answer: any) => void, failed: (fault: Error) => void }>} */
  #open = new Map();
  #asked = 0;

  /** @param {"open" | "take" | "today" | "endOf" | "sumsTo" | "water" | "shares" | "history" | "calc"} ask @param {...unknown} args @returns {Promise<any>} */
  ask(ask, ...args) {
    return new Promise((done, failed) => {
      this.#open.set(++this.#asked, { done, failed });
      this.#worker ??= this.#begun();
      this.#worker.postMessage({ id: this.#asked, ask, args });
    });
  }

  #begun() {
    const worker = new Worker("/engine/worker.js", { type: "module" });
    worker.addEventListener("message", ({ data: { id, answer, fault } }) => {
      const question = this.#open.get(id);
      this.#open.delete(id);
      if (fault === undefined) question?.done(answer);
      else question?.failed(new Error(fault));
    });
    worker.addEventListener("error", () => this.#stopped());
    return worker;
  }

  /** Nothing more will be asked. */
  end() {
    this.#worker?.terminate();
  }

  #stopped() {
    for (const { failed } of this.#open.values()) failed(new Error("the engine stopped"));
    this.#open.clear();
  }
}

/** The published tables by key. @returns {Promise<ReferenceMaps>} */
export async function readReference() {
  /** @type {ReferenceTables} */
  const tables = await getJson("/shared/reference.json");
  return {
    foods: byKey(tables.foods, "key"),
    supplements: byKey(tables.supplements, "key"),
    species: byKey(tables.species, "scientific_name"),
    guilds: byKey(tables.guilds, "guild"),
    sources: byKey(tables.sources, "key"),
    families: byKey(tables.families, "family"),
    constants: byKey(tables.constants, "key"),
  };
}

/**
 * @template {Row} R
 * @param {R[]} rows
 * @param {string} column
 * @returns {Map<string, R>}
 */
function byKey(rows, column) {
  return new Map(rows.map((row) => [String(row[column]), row]));
}
