import { newId } from "../store/ids.js";
/** @import { Field, Values } from "./record-form.js" */

/** @typedef {{ kind: string, body: Record<string, unknown> }} Writing one entry to be written */

/**
 * A form of the set-up: what it asks, and the entries that follow from the answers.
 * @typedef {object} SetupForm
 * @property {string} heading
 * @property {string} [intro]
 * @property {string} [caution]
 * @property {string} [deed]
 * @property {Field[]} fields
 * @property {{ to: string, words: string }[]} [links]
 * @property {(values: Values) => Writing[]} write
 */

/**
 * A change to a shared record, field by field.
 * @param {string} record
 * @param {string} key
 * @param {Record<string, unknown>} set
 * @returns {Writing}
 */
export const change = (record, key, set) => ({ kind: "record", body: { record, key, set } });

/** A key of its own for a new record: its name, made plain, and something no other phone has. @param {string} name */
export function newKey(name) {
  const plain = name.toLowerCase().normalize("NFKD").replaceAll(/[^a-z0-9]+/g, "-").replaceAll(/^-|-$/g, "").slice(0, 24);
  return `${plain || "record"}-${newId().slice(-8)}`;
}
