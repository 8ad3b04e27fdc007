/** @import { PhotoShelf } from "../store/photo-shelf.js" */
import { deleteAt, NotAllowed, putPicture, SaidNo } from "./http.js";

/** The journal has not that entry after all: it goes out again, and so does its picture. */
const ENTRY_MISSING = 409;
/** Somebody has erased it while it was on its way. */
const ERASED = 410;
/** Who erased it here was a steward then and is none now: the server keeps the picture. */
const OF_ANOTHER = "picture-of-another";

/**
 * Sends pictures, and word of those that were erased, one by one, oldest first. One that the server does not take stands aside with its reason; whatever else
 * goes wrong ends this round, and the next one goes on where it stopped.
 * @param {PhotoShelf} shelf @param {string} tank @param {string[]} ids
 */
export async function sendPhotos(shelf, tank, ids) {
  for (const id of [...ids].sort()) {
    const photo = await shelf.find(id);
    if (!photo) continue;
    try {
      const path = `/api/v1/tanks/${encodeURIComponent(tank)}/photos/${id}`;
      await (photo.erased ? deleteAt(path) : putPicture(path, photo.bytes));
      await shelf.sent(id);
    } catch (fault) {
      const over = fault instanceof SaidNo ? fault.problem.status === ERASED : fault instanceof NotAllowed && fault.kind === OF_ANOTHER;
      if (over) await shelf.forget(id);
      else if (!(fault instanceof SaidNo)) throw fault;
      else if (fault.problem.status !== ENTRY_MISSING) await shelf.refused(id, fault.problem);
    }
  }
}
