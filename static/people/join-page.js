import { html } from "lit";
import { t } from "../text/index.js";
import { ComingIn, newPerson } from "./coming-in.js";

/** Follows an invitation; the code stands in the address. */
export class JoinPage extends ComingIn {
  render() {
    const { desk } = this;
    const code = decodeURIComponent(location.hash.split("/")[2] ?? "");
    if (desk?.keeper) {
      return this.page(t("people.join.heading"), t("people.join.known", { name: desk.keeper.name }), [], t("people.join.go"),
        async () => desk.door.comeIn("/api/v1/join", { code }));
    }
    return html`${this.page(t("people.join.heading"), t("people.join.intro"), newPerson(), t("people.join.go"),
      async (values) => desk?.door.comeIn("/api/v1/join", { code, ...values }))}
      <p class="page"><a href="#/sign-in">${t("people.join.signIn")}</a></p>`;
  }
}
