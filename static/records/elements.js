import { HistoryPage } from "./history-page.js";
import { RecordsPage } from "./records-page.js";
import { ConflictList } from "../ui/conflict-list.js";
import { RefusedList } from "../ui/refused-list.js";

/** The records that wait for a person, and the history of one. @type {import("../types.js").Elements} */
export const elements = {
  "conflict-list": ConflictList,
  "history-page": HistoryPage,
  "records-page": RecordsPage,
  "refused-list": RefusedList,
};
