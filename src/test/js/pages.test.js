import assert from "node:assert/strict";
import { test } from "node:test";
import { pagesOf } from "../../../static/sync/pages.js";
/** @import { Page } from "../../../static/types.js" */

/** A journal of so many entries, of which a page holds so many. @param {number} length @param {number} [page] */
function journal(length, page = 500) {
  /** @type {number[]} */
  const asked = [];
  const ask = async (/** @type {number} */ after) => {
    asked.push(after);
    const entries = Array.from({ length: Math.min(page, Math.max(0, length - after)) }, (_, i) => ({ seq: after + i + 1 }));
    return /** @type {Page} */ (/** @type {unknown} */ ({ entries, more: after + entries.length < length }));
  };
  return { ask, asked };
}

/** @param {AsyncGenerator<Page>} pages @returns {Promise<number[]>} the places of all their entries */
async function places(pages) {
  const all = [];
  for await (const { entries } of pages) all.push(...entries.map(({ seq }) => Number(seq)));
  return all;
}

const upTo = (/** @type {number} */ last, first = 1) => Array.from({ length: last - first + 1 }, (_, i) => first + i);

test("every place comes once and in order, however the pages fall", async () => {
  for (const length of [0, 1, 499, 500, 501, 1_000, 2_345]) assert.deepEqual(await places(pagesOf(journal(length).ask, 0, length)), upTo(length));
});

test("pages are asked for ahead, and never beyond the end that is known of", async () => {
  const { ask, asked } = journal(2_345);
  const pages = pagesOf(ask, 0, 2_345);
  await pages.next();
  assert.deepEqual(asked, [0, 500, 1_000, 1_500]);
  await places(pages);
  assert.deepEqual(asked, [0, 500, 1_000, 1_500, 2_000]);
});

test("what was written since the end was heard of comes too", async () => {
  assert.deepEqual(await places(pagesOf(journal(1_700).ask, 200, 900)), upTo(1_700, 201));
});

test("a page shorter than it could be leaves nothing out", async () => {
  assert.deepEqual(await places(pagesOf(journal(2_000, 300).ask, 0, 2_000)), upTo(2_000));
});

test("a page that does not come ends it with its fault, and those behind it trouble nobody", async () => {
  const { ask } = journal(5_000);
  const broken = (/** @type {number} */ after) => (after < 1_000 ? ask(after) : Promise.reject(new Error(`no page after ${after}`)));
  await assert.rejects(places(pagesOf(broken, 0, 5_000)), /no page after 1000/);
});
