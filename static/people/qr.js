import { dataCodewords, totalCodewords, withCorrection } from "./qr-blocks.js";

/** Where the middles of the alignment patterns stand, by version. */
const alignments = [[], [6, 18], [6, 22], [6, 26], [6, 30], [6, 34], [6, 22, 38], [6, 24, 42], [6, 26, 46], [6, 28, 50]];
const FORMAT_LEVEL_M = 0;
const FORMAT_DIVISOR = 0x537;
const FORMAT_MASK = 0x5412;
const VERSION_DIVISOR = 0x1f25;
const PADS = [0xec, 0x11];

/** The eight masks; a light module is turned dark where one holds. @type {((y: number, x: number) => boolean)[]} */
const masks = [
  (y, x) => (y + x) % 2 === 0,
  (y) => y % 2 === 0,
  (y, x) => x % 3 === 0,
  (y, x) => (y + x) % 3 === 0,
  (y, x) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0,
  (y, x) => y * x % 2 + y * x % 3 === 0,
  (y, x) => (y * x % 2 + y * x % 3) % 2 === 0,
  (y, x) => ((y + x) % 2 + y * x % 3) % 2 === 0,
];

/**
 * A text as a QR code (ISO/IEC 18004), in bytes, level M.
 * @param {string} text at most 213 bytes
 * @returns {boolean[][]} rows of modules, true is dark
 */
export function qrOf(text) {
  const bytes = [...new TextEncoder().encode(text)];
  const version = totalCodewords.findIndex((_, at) => bytes.length + (at + 1 < 10 ? 2 : 3) <= dataCodewords(at + 1)) + 1;
  if (version === 0) throw new Error("too long for a code that a phone reads easily");
  const words = withCorrection(dataOf(bytes, version), version);
  const drawn = masks.map((mask, number) => draw(version, words, mask, number));
  return drawn.reduce((best, one) => (unrest(one) < unrest(best) ? one : best));
}

/** Mode, length, the bytes, and padding. @param {number[]} bytes @param {number} version */
function dataOf(bytes, version) {
  const lengthBits = version < 10 ? 8 : 16;
  let bits = "0100" + bytes.length.toString(2).padStart(lengthBits, "0") + bytes.map((byte) => byte.toString(2).padStart(8, "0")).join("");
  const room = dataCodewords(version) * 8;
  bits += "0".repeat(Math.min(4, room - bits.length));
  bits += "0".repeat((8 - bits.length % 8) % 8);
  const words = bits.match(/.{8}/g)?.map((word) => parseInt(word, 2)) ?? [];
  for (let i = 0; words.length < room / 8; i++) words.push(PADS[i % 2]);
  return words;
}

/** @param {number} version @param {number[]} words @param {(y: number, x: number) => boolean} mask @param {number} number */
function draw(version, words, mask, number) {
  const size = 17 + 4 * version;
  /** @type {(boolean | undefined)[][]} undefined: free for data */
  const grid = Array.from({ length: size }, () => new Array(size).fill(undefined));
  const set = (/** @type {number} */ y, /** @type {number} */ x, /** @type {boolean} */ dark) => {
    if (y >= 0 && x >= 0 && y < size && x < size) grid[y][x] = dark;
  };
  for (let i = 0; i < size; i++) grid[6][i] = grid[i][6] = i % 2 === 0;
  for (const [y, x] of [[3, 3], [3, size - 4], [size - 4, 3]]) square(y, x, 4, [2, 4], set);
  const middles = alignments[version - 1];
  for (const y of middles) {
    for (const x of middles) {
      const meetsFinder = (y < 9 && (x < 9 || x > size - 9)) || (x < 9 && y > size - 9);
      if (!meetsFinder) square(y, x, 2, [1], set);
    }
  }
  formatBits(number).forEach((dark, i) => {
    // Once around the corner at the upper left, once split between the two other corners.
    set(i < 6 ? i : i < 8 ? i + 1 : 8, i < 8 ? 8 : i === 8 ? 7 : 14 - i, dark);
    set(i < 8 ? 8 : size - 15 + i, i < 8 ? size - 1 - i : 8, dark);
  });
  set(size - 8, 8, true);
  if (version >= 7) {
    checked(version, 12, VERSION_DIVISOR).forEach((dark, i) => {
      set(Math.floor(i / 3), size - 11 + i % 3, dark);
      set(size - 11 + i % 3, Math.floor(i / 3), dark);
    });
  }
  fill(grid, words, mask);
  return /** @type {boolean[][]} */ (grid);
}

/** Rings around a middle, light where told. @param {number} y @param {number} x @param {number} reach @param {number[]} light @param {(y: number, x: number, dark: boolean) => void} set */
function square(y, x, reach, light, set) {
  for (let down = -reach; down <= reach; down++) {
    for (let right = -reach; right <= reach; right++) set(y + down, x + right, !light.includes(Math.max(Math.abs(down), Math.abs(right))));
  }
}

/** Level and mask, the lowest bit first. @param {number} mask */
function formatBits(mask) {
  return checked(FORMAT_LEVEL_M << 3 | mask, 10, FORMAT_DIVISOR, FORMAT_MASK);
}

/** A value with its check bits behind it, the lowest bit first. @param {number} value @param {number} length @param {number} divisor @param {number} [turned] */
function checked(value, length, divisor, turned = 0) {
  let rest = value;
  for (let i = 0; i < length; i++) rest = rest << 1 ^ (rest >> (length - 1)) * divisor;
  const bits = (value << length | rest) ^ turned;
  return Array.from({ length: length === 10 ? 15 : 18 }, (_, i) => (bits >> i & 1) === 1);
}

/** Up and down in pairs of columns from the lower right. @param {(boolean | undefined)[][]} grid @param {number[]} words @param {(y: number, x: number) => boolean} mask */
function fill(grid, words, mask) {
  const size = grid.length;
  let bit = 0;
  for (let right = size - 1; right > 0; right -= right === 8 ? 3 : 2) {
    const upward = (right + 1 & 2) === 0 ? right > 6 : right < 6;
    for (let step = 0; step < size; step++) {
      const y = upward ? size - 1 - step : step;
      for (const x of [right, right - 1]) {
        if (grid[y][x] !== undefined) continue;
        const dark = bit < words.length * 8 && (words[bit >> 3] >> (7 - (bit & 7)) & 1) === 1;
        bit += 1;
        grid[y][x] = dark !== mask(y, x);
      }
    }
  }
}

/** How much a reader could be misled: long runs, blocks of four, and too much of one shade. @param {boolean[][]} grid */
function unrest(grid) {
  const size = grid.length;
  let sum = 0;
  let dark = 0;
  for (let y = 0; y < size; y++) {
    for (const line of [grid[y], grid.map((row) => row[y])]) {
      for (const run of line.map(Number).join("").match(/0{5,}|1{5,}/g) ?? []) sum += run.length - 2;
      sum += 40 * (line.map(Number).join("").match(/(?=10111010000|00001011101)/g)?.length ?? 0);
    }
    for (let x = 0; x < size; x++) {
      dark += Number(grid[y][x]);
      if (y && x && grid[y][x] === grid[y - 1][x] && grid[y][x] === grid[y][x - 1] && grid[y][x] === grid[y - 1][x - 1]) sum += 3;
    }
  }
  return sum + 10 * Math.floor(Math.abs(dark * 20 / (size * size) - 10));
}
