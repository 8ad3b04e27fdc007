import { FishDetail } from "./fish-detail.js";
import { FishPage } from "./fish-page.js";
import { FishRow } from "./fish-row.js";
import { WhyDialog } from "../ui/why-dialog.js";

/** The roster and one fish. @type {import("../types.js").Elements} */
export const elements = {
  "fish-detail": FishDetail,
  "fish-page": FishPage,
  "fish-row": FishRow,
  "why-dialog": WhyDialog,
};
