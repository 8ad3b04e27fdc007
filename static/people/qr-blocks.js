/**
 * The error correction of a QR code (ISO/IEC 18004): Reed-Solomon over the field of 256 with the polynomial 285.
 * Level M, which bears 15 % of damage; versions 1 to 10 are enough for an address of 213 bytes.
 */
export const totalCodewords = [26, 44, 70, 100, 134, 172, 196, 242, 292, 346];
const correctionPerBlock = [10, 16, 26, 18, 24, 16, 18, 22, 22, 26];
const blockCount = [1, 1, 1, 2, 2, 4, 4, 4, 5, 5];

const PRIMITIVE = 0x11d;
const exponents = new Uint8Array(510);
const logarithms = new Uint8Array(256);
for (let power = 0, value = 1; power < 255; power++) {
  exponents[power] = exponents[power + 255] = value;
  logarithms[value] = power;
  value = value << 1 ^ (value & 0x80 ? PRIMITIVE : 0);
}

/** @param {number} one @param {number} other */
const times = (one, other) => (one && other ? exponents[logarithms[one] + logarithms[other]] : 0);

/** How many bytes of data a version holds. @param {number} version */
export const dataCodewords = (version) => totalCodewords[version - 1] - correctionPerBlock[version - 1] * blockCount[version - 1];

/** Data in blocks, each with its correction, woven into one another. @param {number[]} data @param {number} version */
export function withCorrection(data, version) {
  const count = blockCount[version - 1];
  const correction = correctionPerBlock[version - 1];
  const short = Math.floor(data.length / count);
  const longOnes = data.length % count;
  const divisor = divisorOf(correction);
  /** @type {number[][]} */
  const blocks = [];
  for (let block = 0, from = 0; block < count; block++) {
    const size = short + (block >= count - longOnes ? 1 : 0);
    blocks.push(data.slice(from, from + size));
    from += size;
  }
  const remainders = blocks.map((block) => remainderOf(block, divisor));
  const woven = [];
  for (let i = 0; i <= short; i++) for (const block of blocks) if (i < block.length) woven.push(block[i]);
  for (let i = 0; i < correction; i++) for (const remainder of remainders) woven.push(remainder[i]);
  return woven;
}

/** The product of (x - 2^i), its leading one left out. @param {number} degree */
function divisorOf(degree) {
  const divisor = new Array(degree).fill(0);
  divisor[degree - 1] = 1;
  for (let root = 0; root < degree; root++) {
    for (let i = 0; i < degree; i++) divisor[i] = times(divisor[i], exponents[root]) ^ (divisor[i + 1] ?? 0);
  }
  return divisor;
}

/** @param {number[]} data @param {number[]} divisor */
function remainderOf(data, divisor) {
  const rest = new Array(divisor.length).fill(0);
  for (const byte of data) {
    const factor = byte ^ rest.shift();
    rest.push(0);
    divisor.forEach((coefficient, i) => (rest[i] ^= times(coefficient, factor)));
  }
  return rest;
}
