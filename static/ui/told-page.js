import { Element } from "./element.js";
import { t } from "../text/index.js";
import { buzz } from "./buzz.js";
/** @import { Desk } from "../types.js" */

/** A page that does things and says what became of them, in the toast at its foot. */
export class ToldPage extends Element {
  /** What could not be done is said at once and stays on the screen. @param {() => Promise<void>} deed */
  async tried(deed) {
    try {
      await deed();
    } catch (problem) {
      buzz("failed");
      const isFull = problem instanceof DOMException && problem.name === "QuotaExceededError";
      const words = isFull ? t("toast.full") : t("toast.failed", { problem: problem instanceof Error ? problem.message : String(problem) });
      this.#toast().warn(words);
    }
  }

  /** @param {string} words @param {unknown} [subject] what Undo would take back */
  tell(words, subject) {
    if (subject !== undefined) buzz("saved");
    this.#toast().tell(words, subject);
  }

  /** @param {Desk} desk @param {string | string[]} ids of entries */
  takeBack(desk, ids) {
    return this.tried(async () => {
      for (const id of [ids].flat()) await desk.withdraw(id, true);
      this.tell(t("toast.takenBack"));
    });
  }

  /** Nothing brings it back, so there is no way back to offer. @param {Desk} desk @param {string} photo */
  erasePhoto(desk, photo) {
    return this.tried(async () => {
      await (await desk.album()).erase(photo);
      this.tell(t("photo.erase.done"));
    });
  }

  /** A deed may have led to another page by now, which then says what became of it. @returns {any} */
  #toast() {
    return (this.isConnected ? this : document.getElementById("main"))?.querySelector("undo-toast");
  }
}
