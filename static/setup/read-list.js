import { typed } from "../text/units.js";
/** @import { Row } from "../types.js" */

/** @typedef {{ line: string, count: number, words: string, length: number | null, lengthUnit: "cm" | "in" | null, species: Row | null }} ListedFish */

/**
 * Reads a list of fish, one to a line, as people keep them: "3 yellow tang 12 cm", "emperor angelfish, 25cm".
 * A line whose species is not known is handed back with its words, so that nothing is lost.
 * @param {string} text
 * @param {Row[]} species
 * @returns {ListedFish[]}
 */
export function readList(text, species) {
  return text.split(/\r?\n/).map((line) => line.trim()).filter(Boolean).map((line) => readLine(line, species));
}

/** @param {string} line @param {Row[]} species @returns {ListedFish} */
function readLine(line, species) {
  const size = /(\d+(?:[.,]\d+)?)\s*(cm|in|")(?![a-z])/i.exec(line);
  const without = size ? line.replace(size[0], " ") : line;
  const many = /^\s*(\d{1,3})\s*(?:x|×|\s)\s*/i.exec(without) ?? /\s*[x×]\s*(\d{1,3})\s*$/i.exec(without);
  const words = (many ? without.replace(many[0], " ") : without).replaceAll(/[,;]+/g, " ").replaceAll(/\s+/g, " ").trim();
  return {
    line, words,
    count: many ? Math.max(1, Number(many[1])) : 1,
    length: size ? typed(size[1]) : null,
    lengthUnit: size ? (size[2].toLowerCase() === "cm" ? "cm" : "in") : null,
    species: findSpecies(words, species)[0] ?? null,
  };
}

/**
 * Species whose names hold all the words, the closest first; a plural s is forgiven.
 * @param {string} words
 * @param {Row[]} species
 */
export function findSpecies(words, species) {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean).map(singular);
  if (!wanted.length) return [];
  return species
    .map((row) => ({ row, name: `${row.common_name ?? ""} ${row.scientific_name}`.toLowerCase() }))
    .filter(({ name }) => wanted.every((word) => name.includes(word)))
    .sort((a, b) => a.name.length - b.name.length)
    .map(({ row }) => row);
}

/** @param {string} word */
const singular = (word) => (word.length > 3 ? word.replace(/s$/, "") : word);
