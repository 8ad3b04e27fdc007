/** @import { Problem } from "../types.js" */
import { packed } from "./packed.js";

const PATIENCE_MILLIS = 20_000;
const PICTURE_PATIENCE_MILLIS = 120_000;

/** Nothing usable came back: no network, no server, too late, or a page in its place. Trying later is right. */
export class NoAnswer extends Error {}

/** The server does not know who asks. */
export class SignInNeeded extends Error {}

/** The server knows who asks, and does not let them; why stands in the kind of the problem. */
export class NotAllowed extends Error {
  /** @param {string} said @param {string} [kind] */
  constructor(said, kind = "") {
    super(said);
    this.kind = kind;
  }
}

/** The server understood and said no (RFC 9457). */
export class SaidNo extends Error {
  /** @param {Problem} problem */
  constructor(problem) {
    super(problem.title);
    this.problem = problem;
  }
}

/** @param {string} path */
export const getJson = (path) => exchange(path, { method: "GET" });

/**
 * @param {string} path
 * @param {unknown} body
 */
export const postJson = (path, body) =>
  exchange(path, { method: "POST", body: JSON.stringify(body), headers: { "Content-Type": "application/json" } });

/** The same, packed when it is long. @param {string} path @param {unknown} body */
export async function postPacked(path, body) {
  const { body: sent, headers } = await packed(JSON.stringify(body));
  return exchange(path, { method: "POST", body: sent, headers: { "Content-Type": "application/json", ...headers } });
}

/**
 * @param {string} path
 * @param {unknown} body
 */
export const putJson = (path, body) =>
  exchange(path, { method: "PUT", body: JSON.stringify(body), headers: { "Content-Type": "application/json" } });

/** A picture on its way: it may take as long as a thin network needs. @param {string} path @param {ArrayBuffer} jpeg */
export const putPicture = (path, jpeg) =>
  exchange(path, { method: "PUT", body: jpeg, headers: { "Content-Type": "image/jpeg" }, signal: AbortSignal.timeout(PICTURE_PATIENCE_MILLIS) });

/** @param {string} path @returns {Promise<ArrayBuffer | null>} null when the server has none (yet) */
export async function getPicture(path) {
  const answer = await fetch(path, { headers: { Accept: "image/jpeg" }, signal: AbortSignal.timeout(PICTURE_PATIENCE_MILLIS) })
    .catch((fault) => Promise.reject(new NoAnswer(`no answer from ${path}`, { cause: fault })));
  if (answer.status === 404) return null;
  if (!answer.ok || answer.headers.get("Content-Type") !== "image/jpeg") throw new NoAnswer(`${path} answers ${answer.status}`);
  return answer.arrayBuffer();
}

/** @param {string} path */
export const deleteAt = (path) => exchange(path, { method: "DELETE" });

/**
 * @param {string} path
 * @param {RequestInit} request
 * @returns {Promise<any>} the JSON of the answer, null when the answer is empty by design
 */
async function exchange(path, request) {
  const headers = { Accept: "application/json, application/problem+json", ...request.headers };
  const options = { signal: AbortSignal.timeout(PATIENCE_MILLIS), ...request, headers, credentials: /** @type {const} */ ("same-origin") };
  let answer, text;
  try {
    answer = await fetch(path, options);
    text = await answer.text();
  } catch (fault) {
    throw new NoAnswer(`no answer from ${path}`, { cause: fault });
  }
  if (answer.status === 401) throw new SignInNeeded(`${path} answers 401`);
  if (answer.status === 403) throw new NotAllowed(`${path} answers 403`, kindIn(text));
  if (answer.status === 202 || answer.status === 204) return null;
  const json = parsed(answer, text);
  if (answer.ok) return json;
  // A full or failing server may be well again later; what it says then is no verdict on what was sent.
  if (answer.status >= 500 || answer.status === 429) throw new NoAnswer(`${path} answers ${answer.status}`);
  throw new SaidNo({ title: `${answer.status}`, errors: [], ...json, status: answer.status });
}

/** @param {string} text of a problem, or of a page in its place */
function kindIn(text) {
  try {
    return JSON.parse(text).kind;
  } catch {
    return undefined;
  }
}

/**
 * Hotel and station networks answer everything with a page of their own and status 200: such an answer is none.
 * @param {Response} answer
 * @param {string} text
 */
function parsed(answer, text) {
  const type = answer.headers.get("Content-Type") ?? "";
  if (!/^application\/([\w.-]+\+)?json\b/.test(type)) throw new NoAnswer(`${answer.url} answers ${type || "nothing"}`);
  try {
    return JSON.parse(text);
  } catch (fault) {
    throw new NoAnswer(`${answer.url} answers broken JSON`, { cause: fault });
  }
}
