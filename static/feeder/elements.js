import { DropScale } from "./drop-scale.js";
import { FeederCard } from "./feeder-card.js";
import { FeederPage } from "./feeder-page.js";
import { WhyDialog } from "../ui/why-dialog.js";

/** The auto-feeders. @type {import("../types.js").Elements} */
export const elements = {
  "drop-scale": DropScale,
  "feeder-card": FeederCard,
  "feeder-page": FeederPage,
  "why-dialog": WhyDialog,
};
