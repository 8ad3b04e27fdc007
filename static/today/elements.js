import { DayChart } from "./day-chart.js";
import { FindingCard } from "./finding-card.js";
import { RationPanel } from "./ration-panel.js";
import { TodayPage } from "./today-page.js";
import { ConflictList } from "../ui/conflict-list.js";
import { WhyDialog } from "../ui/why-dialog.js";

/** Today, its chart and its findings. @type {import("../types.js").Elements} */
export const elements = {
  "conflict-list": ConflictList,
  "day-chart": DayChart,
  "finding-card": FindingCard,
  "ration-panel": RationPanel,
  "today-page": TodayPage,
  "why-dialog": WhyDialog,
};
