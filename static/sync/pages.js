/** @import { Page } from "../types.js" */
import { MOST_ENTRIES } from "./batch.js";

const QUICK_MILLIS = 1_000;
const AT_ONCE = 3;

/**
 * The pages of a journal in their order. Places have no gaps, so it is known beforehand where each page begins: while one is put
 * away the next ones are on their way. A thin network carries one at a time, or each would come too late.
 * @param {(after: number) => Promise<Page>} ask
 * @param {number} after the place before the first
 * @param {number} head where the journal ended when it was last heard of
 * @returns {AsyncGenerator<Page, void, void>}
 */
export async function* pagesOf(ask, after, head) {
  /** @type {Promise<Page>[]} */
  const coming = [];
  let next = after;
  let atOnce = 1;
  const askAhead = () => {
    for (; coming.length < atOnce && (coming.length === 0 || next < head); next += MOST_ENTRIES) {
      const page = ask(next);
      // Whoever stops half-way waits for none of them.
      page.catch(() => {});
      coming.push(page);
    }
  };
  for (let more = true; more; ) {
    askAhead();
    const began = performance.now();
    const page = /** @type {Page} */ (await coming.shift());
    atOnce = performance.now() - began < QUICK_MILLIS ? AT_ONCE : 1;
    const last = page.entries.at(-1)?.seq ?? after;
    if (last !== after + MOST_ENTRIES) {
      // It ends sooner than a page may, so those behind it begin at the wrong place.
      coming.length = 0;
      next = last;
    }
    after = last;
    more = page.more && page.entries.length > 0;
    if (more) askAhead();
    yield page;
  }
}
