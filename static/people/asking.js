import { NoAnswer, NotAllowed, SaidNo } from "../sync/http.js";
import { has, t } from "../text/index.js";
import { Element } from "../ui/element.js";

/** The ground for parts that ask the server about people: what came of it is said in one place, and nothing is done twice. */
export class Asking extends Element {
  /** @type {Record<string, object>} */
  static properties = { waiting: { state: true }, told: { state: true } };

  constructor() {
    super();
    this.waiting = false;
    /** What came of the last deed. */
    this.told = "";
  }

  /** @param {() => Promise<string | void>} deed says what came of it @param {Record<string, unknown>} [words] for what may go wrong */
  async tried(deed, words = {}) {
    this.waiting = true;
    this.told = "";
    try {
      this.told = (await deed()) ?? "";
    } catch (fault) {
      this.told = whatWasWrong(fault, words);
    } finally {
      this.waiting = false;
    }
  }
}

/** @param {unknown} fault @param {Record<string, unknown>} words */
function whatWasWrong(fault, words) {
  const kind = fault instanceof NotAllowed ? fault.kind : fault instanceof SaidNo ? fault.problem.kind : "";
  if (has(`people.kind.${kind}`)) return t(`people.kind.${kind}`, words);
  if (fault instanceof SaidNo && fault.problem.errors.length) {
    return fieldsRefused(fault.problem.errors);
  }
  return fault instanceof NoAnswer || fault instanceof NotAllowed ? t("people.needsNetwork") : String(fault);
}

/**
 * What the server would not take, field by field: in this phone's language where it knows the field, else as the server said it.
 * @param {{ field: string, takes: string }[]} errors
 * @param {Record<string, string>} [named] fields that have another name here
 */
export function fieldsRefused(errors, named = {}) {
  return errors.map(({ field, takes }) => {
    const known = `people.takes.${named[field] ?? field}`;
    return t("people.refused", { field: fieldName(named[field] ?? field), takes: has(known) ? t(known) : takes });
  }).join(" ");
}

/** @param {string} field */
function fieldName(field) {
  return field === "old" ? t("people.password.old") : has(`people.field.${field}`) ? t(`people.field.${field}`) : field;
}
