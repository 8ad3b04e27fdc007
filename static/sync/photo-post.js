/** @import { PhotoShelf } from "../store/photo-shelf.js" */
import { putPicture, SaidNo } from "./http.js";

/** The journal has not that entry after all: it goes out again, and so does its picture. */
const ENTRY_MISSING = 409;

/**
 * Sends pictures one by one, oldest first. One that the server does not take stands aside with its reason; whatever else
 * goes wrong ends this round, and the next one goes on where it stopped.
 * @param {PhotoShelf} shelf @param {string} tank @param {string[]} ids
 */
export async function sendPhotos(shelf, tank, ids) {
  for (const id of [...ids].sort()) {
    const photo = await shelf.find(id);
    if (!photo) continue;
    try {
      await putPicture(`/api/v1/tanks/${encodeURIComponent(tank)}/photos/${id}`, photo.bytes);
      await shelf.sent(id);
    } catch (fault) {
      if (!(fault instanceof SaidNo)) throw fault;
      if (fault.problem.status !== ENTRY_MISSING) await shelf.refused(id, fault.problem);
    }
  }
}
