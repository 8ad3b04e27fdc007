/** @import { Bench, ReferenceMaps, ReferenceTables, Row } from "../types.js" */
import { open } from "/engine/engine.js";
import { getJson } from "../sync/http.js";

/**
 * The engine with the published tables read, and the tables themselves by key.
 * @returns {Promise<{ bench: Bench, reference: ReferenceMaps }>}
 */
export async function openEngine() {
  /** @type {ReferenceTables} */
  const tables = await getJson("/shared/reference.json");
  return {
    bench: open(tables),
    reference: {
      foods: byKey(tables.foods, "key"),
      supplements: byKey(tables.supplements, "key"),
      species: byKey(tables.species, "scientific_name"),
      guilds: byKey(tables.guilds, "guild"),
      sources: byKey(tables.sources, "key"),
      families: byKey(tables.families, "family"),
      constants: byKey(tables.constants, "key"),
    },
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
