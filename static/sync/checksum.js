/** @import { Entry } from "../types.js" */

const OFFSET = 0x811c9dc5;
const PRIME = 0x01000193;
const bits = new DataView(new ArrayBuffer(8));

/**
 * What a page of entries, each in its place, adds up to; the server reckons the same (Checksum.java). Order does not matter,
 * nor how the JSON was spelt.
 * @param {Entry[]} entries
 * @returns {number} 0 to 2^32 - 1
 */
export function checksumOf(entries) {
  let sum = 0;
  for (const entry of entries) {
    const { receivedAt, ...sent } = /** @type {Entry & { receivedAt?: string }} */ (entry);
    sum = (sum + value(sent)) >>> 0;
  }
  return sum;
}

/** @param {unknown} it @returns {number} */
function value(it) {
  if (typeof it === "string") return text("s", it);
  if (typeof it === "number") return number(it);
  if (Array.isArray(it)) return it.reduce((hash, item) => mix(hash, value(item)), mix(OFFSET, code("a")));
  if (it !== null && typeof it === "object") {
    let sum = 0;
    for (const [name, inner] of Object.entries(it)) {
      if (inner !== undefined) sum = (sum + mix(text("k", name), value(inner))) | 0;
    }
    return mix(mix(OFFSET, code("o")), sum);
  }
  return mix(OFFSET, code(it === true ? "t" : it === false ? "f" : "z"));
}

/** @param {string} tag @param {string} it */
function text(tag, it) {
  let hash = mix(OFFSET, code(tag));
  for (let i = 0; i < it.length; i++) hash = mix(hash, it.charCodeAt(i));
  return hash;
}

/** @param {number} it */
function number(it) {
  bits.setFloat64(0, it === 0 ? 0 : it);
  return mix(mix(mix(OFFSET, code("n")), bits.getInt32(0)), bits.getInt32(4));
}

/** @param {string} letter */
const code = (letter) => letter.charCodeAt(0);

/** @param {number} hash @param {number} word */
const mix = (hash, word) => Math.imul(hash ^ word, PRIME);
