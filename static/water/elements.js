import { LevelChart } from "./level-chart.js";
import { WaterPage } from "./water-page.js";
import { WhatIf } from "./what-if.js";
import { WhyDialog } from "../ui/why-dialog.js";

/** The water, its levels and what another feeding would do. @type {import("../types.js").Elements} */
export const elements = {
  "level-chart": LevelChart,
  "water-page": WaterPage,
  "what-if": WhatIf,
  "why-dialog": WhyDialog,
};
