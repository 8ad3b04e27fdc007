import { FirstStart } from "./first-start.js";
import { HouseholdPeople } from "./household-people.js";
import { HouseholdTools } from "./household-tools.js";
import { JoinPage } from "./join-page.js";
import { MailboxPage } from "./mailbox-page.js";
import { MemberCard } from "./member-card.js";
import { OwnData } from "./own-data.js";
import { OwnMailbox } from "./own-mailbox.js";
import { OwnPasskeys } from "./own-passkeys.js";
import { OwnPhones } from "./own-phones.js";
import { PeoplePage } from "./people-page.js";
import { PlainAddress } from "./plain-address.js";
import { QrCode } from "./qr-code.js";
import { ResetPage } from "./reset-page.js";
import { SignIn } from "./sign-in.js";
import { TankList } from "./tank-list.js";
import { TrustPage } from "./trust-page.js";
import { RecordForm } from "../setup/record-form.js";

/** Coming in, people, households and their tanks. @type {import("../types.js").Elements} */
export const elements = {
  "first-start": FirstStart,
  "household-people": HouseholdPeople,
  "household-tools": HouseholdTools,
  "join-page": JoinPage,
  "mailbox-page": MailboxPage,
  "member-card": MemberCard,
  "own-data": OwnData,
  "own-mailbox": OwnMailbox,
  "own-passkeys": OwnPasskeys,
  "own-phones": OwnPhones,
  "people-page": PeoplePage,
  "plain-address": PlainAddress,
  "qr-code": QrCode,
  "record-form": RecordForm,
  "reset-page": ResetPage,
  "sign-in": SignIn,
  "tank-list": TankList,
  "trust-page": TrustPage,
};
