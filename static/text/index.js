/** @import { Phrase } from "../types.js" */
import { getJson } from "../sync/http.js";
import { hours } from "./hours.js";
import { regional } from "./language.js";
import { plain, setLanguage } from "./numbers.js";

export { clock, dayName, figure, grams, kj, moment, percent, plain, range, written } from "./numbers.js";

/** What the app is called on the phone's own pages, by language. @type {Record<string, string>} */
const manifests = { en: "/manifest.webmanifest", de: "/manifest.de.webmanifest" };

/** @type {Record<string, Phrase>} */
let phrases = {};
let spoken = "en";
/** What knows a language's rules is slow to make, and not every page needs it. @type {Intl.PluralRules | undefined} */
let plurals;
/** @type {Intl.ListFormat | undefined} */
let lists;

/** Reads the sentences of one language; nothing else speaks before this is done, and what was spoken stays when it fails. @param {string} lang */
export async function loadText(lang) {
  phrases = await getJson(`/shared/text/${lang}.json`);
  plurals = lists = undefined;
  spoken = lang;
  tellTime();
  document.documentElement.lang = lang;
  for (const link of document.querySelectorAll("link[rel=manifest]")) link.setAttribute("href", manifests[lang] ?? manifests.en);
}

/** Numbers, dates and times from now on as this phone wants them, and as it was just told. */
export const tellTime = () => setLanguage(regional(spoken), hours);

/** @param {string} key */
export function has(key) {
  return key in phrases;
}

/**
 * The sentence of that key with its holes filled. A missing one shows its key, so that it is noticed and not silent.
 * What ends in a full stop itself, as a short month does in some languages, brings the sentence's own.
 * @param {string} key
 * @param {Record<string, unknown>} [params] `count` chooses the plural; arrays are joined as the language does
 * @returns {string}
 */
export function t(key, params = {}) {
  const phrase = phrases[key];
  if (phrase === undefined) return key;
  const text = typeof phrase === "string" ? phrase : phrase[pluralOf(Number(params.count))] ?? phrase.other;
  return text.replace(/\{(\w+)\}(\.?)/g, (hole, name, stop) => {
    if (!(name in params)) return hole;
    const words = said(params[name]);
    return words.endsWith(".") ? words : words + stop;
  });
}

/** @param {number} count */
const pluralOf = (count) => (plurals ??= new Intl.PluralRules(spoken)).select(count);

/** @param {unknown} value @returns {string} */
function said(value) {
  if (Array.isArray(value)) return (lists ??= new Intl.ListFormat(spoken)).format(value.map(said));
  return typeof value === "number" ? plain(value) : String(value);
}
