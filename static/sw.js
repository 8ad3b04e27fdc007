/// <reference lib="webworker" />
// The build fills the next two lines: every file the phone needs to work with the server gone, with its hash.
const VERSION = "dev";
const SHELL = [];

const CACHE = `provender ${VERSION}`;
const HELD = new Set(SHELL.map(({ url }) => url));

self.addEventListener("install", (event) => event.waitUntil(fill()));

self.addEventListener("activate", (event) => event.waitUntil(settle()));

self.addEventListener("fetch", (event) => {
  const url = heldAt(event.request);
  if (url) event.respondWith(fromCache(url, event.request));
});

// A page asks for this after its keeper agreed; until then the old version goes on undisturbed.
self.addEventListener("message", ({ data }) => {
  if (data?.type === "take-over") self.skipWaiting();
});

/** All files or none: one that is missing or not of this version stops the installation, and the old version stays. */
async function fill() {
  const files = await Promise.all(SHELL.map(async (file) => [file.url, await fetched(file)]));
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(files.map(([url, answer]) => cache.put(url, answer)));
  } catch (fault) {
    await caches.delete(CACHE);
    throw fault;
  }
}

/** What the browser has just fetched for the page, or for the version before, need not come over the wire again. */
async function fetched(file) {
  return fitting(file, "force-cache").catch(() => fitting(file, "reload"));
}

async function fitting({ url, hash }, cache) {
  const answer = await fetch(url, { cache });
  if (!answer.ok || answer.redirected) throw new Error(`${url} answers ${answer.status}`);
  const found = await hashOf(await answer.clone().arrayBuffer());
  if (found !== hash) throw new Error(`${url} is ${found}, version ${VERSION} needs ${hash}`);
  return answer;
}

/** The first eight bytes of SHA-256, as the build writes them. */
async function hashOf(content) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", content), 0, 8);
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Only caches are cleared away here; what keepers wrote is not touched by any version. */
async function settle() {
  for (const name of await caches.keys()) {
    if (name.startsWith("provender ") && name !== CACHE) await caches.delete(name);
  }
  await self.clients.claim();
}

/** The held address that answers a request, or null when the network is to answer. */
function heldAt(request) {
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin || pathname.startsWith("/api/")) return null;
  const url = request.mode === "navigate" && (pathname === "/" || pathname === "/index.html") ? "/" : pathname;
  return HELD.has(url) ? url : null;
}

async function fromCache(url, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(url)) ?? fetch(request);
}
