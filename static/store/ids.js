/** Identifiers minted on the phone: UUIDs of version 7 (RFC 9562, section 5.7), which sort by the time they were made. */

/** @returns {string} a new UUID of version 7 */
export function newId() {
  return uuid7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
}

/**
 * Lays out 48 bits of Unix milliseconds, the version, 12 random bits, the variant and 62 random bits.
 * @param {number} millis
 * @param {Uint8Array} random ten bytes
 */
export function uuid7(millis, random) {
  const bytes = new Uint8Array(16);
  // 48 bits do not fit the 32-bit shifts of JavaScript, so the upper 16 are divided off.
  new DataView(bytes.buffer).setUint16(0, Math.floor(millis / 2 ** 32));
  new DataView(bytes.buffer).setUint32(2, millis % 2 ** 32);
  bytes.set(random, 6);
  bytes[6] = 0x70 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
