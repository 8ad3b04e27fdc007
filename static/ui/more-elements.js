import { MorePage } from "./more-page.js";
import { PlainAddress } from "../people/plain-address.js";

/** More: what has no page of its own. @type {import("../types.js").Elements} */
export const elements = {
  "more-page": MorePage,
  "plain-address": PlainAddress,
};
