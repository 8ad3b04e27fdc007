import { t } from "../text/index.js";
import { ComingIn, newPerson } from "./coming-in.js";

/** A server that nobody has set up yet: the first household and its steward. */
export class FirstStart extends ComingIn {
  render() {
    return this.page(t("people.firstStart.heading"), t("people.firstStart.intro"), [
      { name: "code", label: t("people.field.code"), needed: true, hint: t("people.firstStart.codeHint") },
      { name: "household", label: t("people.field.household"), needed: true, hint: t("people.firstStart.householdHint") },
      ...newPerson(),
    ], t("people.firstStart.go"), async (values) => this.desk?.door.comeIn("/api/v1/first-start", values));
  }
}
