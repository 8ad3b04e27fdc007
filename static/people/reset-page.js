import { t } from "../text/index.js";
import { ComingIn, newPerson } from "./coming-in.js";

/** Chooses a new password by a link from a steward; the code stands in the address. */
export class ResetPage extends ComingIn {
  render() {
    const code = decodeURIComponent(location.hash.split("/")[2] ?? "");
    return this.page(t("people.reset.heading"), t("people.reset.intro"), newPerson().slice(1), t("people.reset.go"),
      async (values) => this.desk?.door.comeIn("/api/v1/reset", { code, ...values }));
  }
}
