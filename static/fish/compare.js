/**
 * The length of a fish from two lengths read in the same way, of which one is known, with all that makes it unsure: how the
 * ends were read, and that fish and object never hang at quite the same distance.
 * @param {{ objectCm: number, object: number, fish: number, reading: number, beside: number }} read reading: the error of both
 *   readings, in their own unit; beside: the part by which a length beside an object is off
 */
export function compare({ objectCm, object, fish, reading, beside }) {
  const cm = (objectCm * fish) / object;
  return { cm, errorCm: cm * Math.hypot(beside, reading / object, reading / fish) };
}
