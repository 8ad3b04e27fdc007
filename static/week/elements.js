import { WeekChart } from "./week-chart.js";
import { WeekPage } from "./week-page.js";
import { WhyDialog } from "../ui/why-dialog.js";

/** The week and its chart. @type {import("../types.js").Elements} */
export const elements = {
  "week-chart": WeekChart,
  "week-page": WeekPage,
  "why-dialog": WhyDialog,
};
