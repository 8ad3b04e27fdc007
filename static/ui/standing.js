/**
 * How far a source may be trusted, in four words: read, memory, practice or entered.
 * @param {string} key
 * @param {{ status?: unknown } | undefined} known its row among the sources
 */
export function standingOf(key, known) {
  if (key === "practice" || key === "entered") return key;
  if (key.startsWith("memory:") || known?.status === "memory") return "memory";
  return known?.status === "practice" ? "practice" : "read";
}
