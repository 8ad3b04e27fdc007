/**
 * The key of a food by its whole name, its key, or every word of a part of its name; null when nothing fits.
 * @param {string} words
 * @param {{ key: string, name: string }[]} foods
 */
export function findNamed(words, foods) {
  const wanted = words.trim().toLowerCase();
  const exact = foods.find(({ name, key }) => name.toLowerCase() === wanted || key === wanted);
  const parts = wanted.split(/\s+/);
  return (exact ?? foods.find(({ name }) => parts.every((part) => name.toLowerCase().includes(part))))?.key ?? null;
}
