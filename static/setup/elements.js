import { FishAdder } from "./fish-adder.js";
import { RecordForm } from "./record-form.js";
import { SetupPage } from "./setup-page.js";

/** Everything that is set up once and changed at times. @type {import("../types.js").Elements} */
export const elements = {
  "fish-adder": FishAdder,
  "record-form": RecordForm,
  "setup-page": SetupPage,
};
