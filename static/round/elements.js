import { RoundPage } from "./round-page.js";
import { RoundRow } from "./round-row.js";
import { VisitPlan } from "./visit-plan.js";

/** The round over many tanks. @type {import("../types.js").Elements} */
export const elements = {
  "round-page": RoundPage,
  "round-row": RoundRow,
  "visit-plan": VisitPlan,
};
