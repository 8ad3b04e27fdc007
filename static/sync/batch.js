/** @import { Entry } from "../types.js" */

export const MOST_ENTRIES = 500;
const MOST_BYTES = 256 * 1024;
const ENVELOPE_BYTES = 64;

/**
 * The longest beginning of the queue that one push may carry. A single entry goes alone, however large: the server's
 * refusal is then about that entry and no other.
 * @param {Entry[]} queue
 * @returns {Entry[]}
 */
export function batchOf(queue) {
  const bytes = new TextEncoder();
  let size = ENVELOPE_BYTES;
  let count = 0;
  for (const entry of queue.slice(0, MOST_ENTRIES)) {
    size += bytes.encode(JSON.stringify(entry)).length + 1;
    if (count > 0 && size > MOST_BYTES) break;
    count++;
  }
  return queue.slice(0, count);
}
