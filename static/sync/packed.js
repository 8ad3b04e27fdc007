const WORTH_PACKING_BYTES = 2_000;

/**
 * What is long, packed with gzip (RFC 1952) and whole, so that its length can be said; anything else as it is.
 * @param {string} text
 * @returns {Promise<{ body: string | ArrayBuffer, headers: Record<string, string> }>} headers: what has to be said of it
 */
export async function packed(text) {
  if (text.length < WORTH_PACKING_BYTES || !("CompressionStream" in globalThis)) return { body: text, headers: {} };
  const packing = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
  return { body: await new Response(packing).arrayBuffer(), headers: { "Content-Encoding": "gzip" } };
}
