/**
 * Registers the service worker and tells when a new version waits.
 * @param {(takeOver: () => void) => void} ready called with what to do once the keeper agrees
 */
export async function watchForUpdates(ready) {
  // Pages without a trusted connection have none; everything but opening without network works all the same.
  if (!navigator.serviceWorker) return;
  const registration = await navigator.serviceWorker.register("/sw.js", { type: "classic", updateViaCache: "none" });
  const tell = () => {
    const { waiting } = registration;
    // Without a controller this is the first installation: nothing is being replaced.
    if (waiting && navigator.serviceWorker.controller) ready(() => takeOver(waiting));
  };
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", tell);
  });
  tell();
  document.addEventListener("visibilitychange", () => !document.hidden && registration.update().catch(() => {}));
}

/** @param {ServiceWorker} waiting */
function takeOver(waiting) {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  waiting.postMessage({ type: "take-over" });
}
