import { SourcesPage } from "./sources-page.js";

/** Where the figures come from. @type {import("../types.js").Elements} */
export const elements = {
  "sources-page": SourcesPage,
};
