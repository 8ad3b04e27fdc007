/** @type {Map<string, Promise<void>>} */
const asked = new Map();

/**
 * Fetches an element when it is first needed. Its tag may stand in the page before, with properties set: it comes to life
 * when it is here. Without a network and without a kept copy it stays away, and is asked for again the next time.
 * @param {string} tag
 * @param {() => Promise<CustomElementConstructor>} load
 * @returns {Promise<void>} when it is here
 */
export function summon(tag, load) {
  if (customElements.get(tag)) return Promise.resolve();
  const coming = asked.get(tag) ?? load().then((element) => {
    if (!customElements.get(tag)) customElements.define(tag, element);
  });
  asked.set(tag, coming);
  coming.catch(() => asked.delete(tag));
  return coming;
}
