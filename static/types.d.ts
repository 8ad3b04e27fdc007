/** The shapes that the phone's parts hand to each other. */
export type { Desk } from "./desk/desk.js";

export type Row = Record<string, any>;
/** Elements by their tags. */
export type Elements = Record<string, CustomElementConstructor>;
export type Phrase = string | ({ other: string } & Partial<Record<Intl.LDMLPluralRule, string>>);

/* The journal */

export interface Entry {
  id: string;
  tank: string;
  device: string;
  deviceSeq: number;
  kind: string;
  v: number;
  happenedAt: string;
  zone: string;
  recordedAt: string;
  by: string;
  body: Record<string, any>;
  seq?: number;
  receivedAt?: string;
}

export interface Waiting {
  tank: string;
  deviceSeq: number;
  id: string;
  recordedAt: string;
}

export interface Cursor {
  tank: string;
  after: number;
  /** null: never pulled yet */
  epoch: string | number | null;
}

export interface Refusal {
  id: string;
  entry: Entry;
  problem: Problem | null;
  refusedAt: string;
}

/** A picture on this phone, under the id of its entry. */
export interface KeptPhoto {
  id: string;
  tank: string;
  /** a JPEG; empty once it was erased here */
  bytes: ArrayBuffer;
  /** erased with this phone: what waits or was sent is word of that */
  erased?: true;
  /** taken with this phone */
  own: boolean;
  /** its tank again, while it waits to be sent */
  waits?: string;
  /** when it was sent or fetched */
  seenAt?: number;
  /** why the server did not take it */
  problem?: Problem;
}

/** A photo as a page shows it. */
export interface Shot {
  id: string;
  by: string;
  happenedAt: string;
  note: string;
  sent: boolean;
  /** why the server did not take it, if it did not */
  problem: string;
  /** its entry was brought back, its picture is gone */
  erased: boolean;
  mayErase: boolean;
}

/* The server's answers */

export interface Problem {
  /** guest and steward-only: signing in anew changes nothing; sign-in: it does. */
  kind?: string;
  title: string;
  status: number;
  detail?: string;
  errors: { field: string; takes: string }[];
}

export interface Answer {
  id: string;
  outcome: "accepted" | "duplicate" | "conflicted" | "refused";
  seq?: number;
  /** Of a conflicted one: what stays as it stood until a person decides. */
  fields?: string[];
  problem?: Problem;
}

export interface PushAnswers {
  answers: Answer[];
  head: number;
  epoch: string | number;
}

export interface Page {
  entries: Entry[];
  head: number;
  epoch: string | number;
  more: boolean;
  /** Of the entries, each in its place: checksumOf in sync/checksum.js. */
  checksum: number;
}

export interface PageSum {
  from: number;
  to: number;
  count: number;
  checksum: number;
}

export interface JournalSums {
  pages: PageSum[];
  head: number;
  epoch: string | number;
}

/** What was lost when a phone's storage was cleared. */
export interface Cleared {
  at: string;
  /** records that had not been sent, as far as is known */
  unsent: number;
}

export interface ClockNote {
  offset: number | null;
  followsSince: string | null;
}

/** How a phone's copy of a journal was found beside the server's. */
export interface CopyCheck {
  at: string;
  entries: number;
  /** how many were not as on the server and were fetched again */
  mended: number;
}

export interface Keeper {
  id: string;
  name: string;
  /** When a phone of theirs was last heard of; only of those who may record in the tank. */
  seenAt?: string | null;
}

export type Role = "guest" | "keeper" | "steward";

export interface Household {
  id: string;
  name: string;
  role: Role;
}

/** A passkey of this keeper. */
export interface OwnPasskey {
  id: string;
  name: string;
  /** the name in the address it was made at */
  place: string;
  madeAt: string;
  usedAt: string | null;
}

/** The authority with which a house trusts its server, if there is one. */
export interface Trust {
  offered: boolean;
  names: string[];
  fingerprint: string;
  /** of the encrypted address */
  port: number;
}

/** Who belongs to a household, who did, and what changed among them. */
export interface HouseholdPeople {
  people: Member[];
  former: (Keeper & { endedAt: string })[];
  changes: { at: string; by: string; about?: string; what: string; role?: Role }[];
  /** for stewards only */
  invitations?: { id: string; role: Role; expiresAt: string }[];
}

export interface Member extends Keeper {
  role: Role;
}

/** A phone on which this keeper is signed in. */
export interface OwnPhone {
  id: string;
  name: string;
  openedAt: string;
  lastUsedAt: string | null;
  /** this one */
  asking: boolean;
}

export interface Tank {
  id: string;
  name: string;
  role: Role;
  zone: string;
  keepers?: Keeper[];
}

export interface TankRow extends Tank {
  household: string;
  /** one of the demo's */
  invented?: boolean;
  head: number;
  epoch: string | number;
}

/* How things stand between phone and server */

export interface SyncStatus {
  unsent: number;
  /** pictures that wait to be sent */
  photos: number;
  refused: number;
  oldestUnsent: string | null;
  state: "sent" | "onPhone" | "needsYou";
  why: "offline" | "signIn" | "notAllowed" | "refused" | null;
  lastContact: string | null;
}
export type DeskStatus = SyncStatus;

export type TabNews =
  | { type: "nudge" }
  | { type: "status"; status: SyncStatus }
  | { type: "entries"; tank: string; entries: Entry[] }
  | { type: "reread"; tank: string }
  | { type: "tanks"; tanks: TankRow[] }
  | { type: "clock"; offset: number };

/* The round */

/** How one tank of a round stands, from its journal on this phone. */
export interface Standing {
  id: string;
  name: string;
  household: string;
  /** local epoch day at the tank */
  day: number;
  /** null: nobody ever fed by hand */
  daysSinceFed: number | null;
  /** given of due, as a part; null: nothing is due */
  today: number | null;
  week: number | null;
  weights: Record<"high" | "medium" | "low", number>;
  findings: Finding[];
  conflicts: number;
  refills: Refill[];
  /** keepers whose phones were not heard of for so many days */
  quiet: { name: string; days: number }[];
  /** entries of this tank that only this phone has */
  unsent: number;
  /** why somebody should go there today */
  reasons: string[];
  bring: FoodGrams[];
  foods: Map<string, string>;
  about: Map<string, string>;
}

export interface Refill {
  feeder: string;
  /** when the hopper may be empty, at the earliest */
  day: number;
  missing: FoodGrams[];
}

/* The engine */

export interface Book {
  take(entries: Entry[]): void;
  today(now: string): Today;
  water(now: string): Water;
  /** The entry and every amendment and withdrawal of it, in the order in which they count. */
  history(entry: string): Entry[];
  shares(now: string, feeding: string): Share[];
}

export interface Bench {
  tank(): Book;
  calc(name: string, input: object): any;
}

export interface ReferenceTables {
  foods: Food[];
  supplements: Row[];
  species: Row[];
  guilds: Row[];
  sources: Source[];
  constants: Constant[];
  families: Row[];
}

export interface Constant extends Row {
  key: string;
  value: number;
  low?: number;
  high?: number;
  unit: string;
  what: string;
  source: string;
  status: string;
  note?: string;
}

export interface Food extends Row {
  key: string;
  name: string;
  category: string;
}

export interface Source extends Row {
  key: string;
  citation: string;
  status: string;
  read_as?: string;
  licence?: string;
}

export interface ReferenceMaps {
  foods: Map<string, Food>;
  supplements: Map<string, Row>;
  species: Map<string, Row>;
  guilds: Map<string, Row>;
  sources: Map<string, Source>;
  constants: Map<string, Constant>;
  families: Map<string, Row>;
}

export interface Step {
  what: string;
  formula: string;
  value: number;
  unit: string;
  source: string;
  inputs: { name: string; value: number; unit: string }[];
}

export interface Band {
  value: number;
  low: number;
  high: number;
}

export interface Figure extends Band {
  basis: "measured" | "estimated" | "assumed";
  why: Step[];
}

export interface FoodGrams {
  food: string;
  grams: number;
}

export interface FishComponent {
  component: string;
  /** Missing as long as nothing was eaten. */
  share?: number;
  min: number;
  target: number;
  max: number;
  gapDays: number;
  daysSinceOffered?: number;
  daysSinceTaken?: number;
}

export interface Fish {
  id: string;
  name: string;
  species: string;
  commonName: string;
  guild: string;
  place: "display" | "isolation";
  count: number;
  weightGrams: Figure;
  staleDays: number;
  dueKj: Figure;
  gotKj: Band;
  gotGrams: number;
  weekDueKj: number;
  weekGotKj: number;
  /** Missing when it is not known to have eaten here. */
  lastTookDay?: number;
  components: FishComponent[];
  warning: string | null;
  warningLevel: string | null;
}

export interface FeedingItem extends FoodGrams {
  kj: number;
  measure?: string;
  count?: number;
  supplements?: string[];
  fish?: string;
}

export interface Feeding {
  id: string;
  day: number;
  minute: number;
  by: string;
  source: "hand" | "feeder";
  items: FeedingItem[];
  grams: number;
  kj: number;
  leftoverGrams: number | null;
  refusedBy: string[];
  note: string | null;
  corrected: boolean;
  sent: boolean;
}

export interface Share {
  fish: string;
  grams: number;
  kj: number;
}

export interface Withdrawn {
  id: string;
  day: number;
  minute: number;
}

export interface Measure {
  key: string;
  name: string;
  food: string;
  grams: number;
  basis: "weighed" | "assumed";
}

export interface Finding {
  key: string;
  rule: string;
  severity: "high" | "medium" | "low";
  fish: string[];
  component: string | null;
  /** the key of the auto-feeder it concerns */
  about?: string;
  sinceDay: number;
  days: number;
  sure: "measured" | "practice" | "weak";
  source: string[];
  offer: FoodGrams[];
  facts: Record<string, number>;
  why: Step[];
}

export interface Matter {
  name: string;
  value: number;
  unit: string;
}

export interface Ration {
  /** what would change the ration most, as parts of it, heaviest first */
  matters: Matter[];
  /** what a steward chose to multiply the ration with */
  factor: number;
  /** what weighings say it should be, and how many pairs of them */
  learned: Figure;
  weighings: number;
  dueKj: Figure;
  givenKj: Figure;
  givenHandKj: number;
  givenFeederKj: number;
  remainingKj: Figure;
  percentOfBodyWeight: Band;
  foods: { food: string; grams: Band }[];
}

/** What can be held against another day; see engine/sums.js. */
export interface Sums extends Pick<Today, "days"> {
  fish: Pick<Fish, "id" | "weekDueKj" | "weekGotKj">[];
}

/** What a feeding can be tapped in from: a part of {@link Today} that is kept on the phone. */
export interface Glance extends Pick<Today, "day" | "minute" | "tank" | "feedings" | "measures" | "ownFoods" | "recipes"> {
  fish: Pick<Fish, "id" | "name" | "commonName" | "species" | "count">[];
}

export interface DayRation {
  day: number;
  dueKj: number;
  lowKj: number;
  highKj: number;
  givenKj: number;
}

export interface OwnFood {
  key: string;
  name: string;
  category: string;
  kjPerGram?: Figure;
}

export interface Recipe {
  key: string;
  name: string;
  items: { food: string; grams: number; supplements: string[] }[];
}

export interface Today {
  day: number;
  minute: number;
  tank: { name: string; volumeLitres: number; temperatureC: number; usualFoods: string[] };
  temperature: Figure;
  temperatureFlag: "inRange" | "outsideModel" | "alarm";
  biomassGrams: Figure;
  ration: Ration;
  fish: Fish[];
  feedings: Feeding[];
  withdrawn: Withdrawn[];
  lastFeeding: { day: number; minute: number; by: string } | null;
  measures: Measure[];
  ownFoods: OwnFood[];
  recipes: Recipe[];
  /** changes that wait for a person */
  conflicts: Conflict[];
  guarded: Guarded[];
  feeders: AutoFeeder[];
  /** how long nobody needs to come */
  away: { hopperDays?: number; lacks: { component: string; days: number; fish: string[] }[] };
  /** the part of the ration that is to come dry from feeders */
  dryPart: number;
  proposal?: Proposal;
  findings: Finding[];
  days: DayRation[];
}

export interface Guarded {
  record: string;
  key: string;
  field: string;
  place: number;
}

export interface ConflictSide {
  entry: string;
  by: string;
  value: unknown;
}

export interface Conflict {
  record: string;
  key: string;
  field: string;
  standing: ConflictSide;
  other: ConflictSide;
  /** the place a decision must have seen */
  seen: number;
}

export interface AutoFeeder {
  key: string;
  name: string;
  hopperGrams?: number;
  clearGrams?: number;
  share: number;
  running: boolean;
  times: { minute: number; drops: number }[];
  mix: { food: string; share: number }[];
  drops?: { gramsPerDrop: Band; standardDeviationGrams: number; coefficientOfVariation: number; weighings: number; dropsPerWeighing: number };
  weighedDay?: number;
  gramsPerDay: Figure;
  kjPerDay: number;
  levelGrams?: Band;
  hopperDays?: Band;
  levelEffect?: { ratio: number; chance: number };
  found?: { expectedGrams: Band; usedGrams: number; ratio: number; chance: number; verdict: "asExpected" | "jam" | "drift" };
}

export interface Proposal {
  targetKj: number;
  bringsKj: Band;
  feeders: { feeder: string; times: { minute: number; drops: number }[]; gramsPerDay: Band }[];
}

export interface Ion {
  ion: "nitrate" | "phosphate";
  wantedMgL: number;
  wished: boolean;
  inputMgLPerDay?: Figure;
  export?: Figure;
  now?: Band;
  inFourWeeks?: Band;
  points: { day: number; mgL: number }[];
  series: (Band & { day: number })[];
}

export interface Feed {
  gramsPerDay: number;
  proteinFraction: number;
  phosphorusFraction: number;
}

export interface Water {
  day: number;
  volumeLitres?: number;
  hand: Feed;
  feeders: Feed;
  dueKj: number;
  factors: { nitratePerNitrogen: number; phosphatePerPhosphorus: number; dkhPerMgL: number; dkhPerMeq: number };
  habit: { fraction: number; everyDays: number };
  ions: Ion[];
  fewestTests: number;
  tests: { day: number; minute: number; nitrateMgL?: number; phosphateMgL?: number; ammoniaMgL?: number; alkalinityDkh?: number;
    temperatureC?: number; salinityPpt?: number }[];
  exchanges: { day: number; litres: number }[];
  /** how often media or carbon were noted */
  dosings: number;
}

/* The parts of a database that the store works with */

export interface ObjectStore {
  get(key: unknown): Promise<any>;
  getAll(range?: unknown, limit?: number): Promise<any[]>;
  put(value: unknown, key?: unknown): Promise<unknown>;
  add(value: unknown, key?: unknown): Promise<unknown>;
  delete(key: unknown): Promise<void>;
  index(name: string): { getAll(range?: unknown): Promise<any[]>; getAllKeys(range?: unknown): Promise<any[]> };
  createIndex(name: string, keyPath: string | string[]): void;
}
export type Reached = (store: string) => ObjectStore;

export interface Transaction {
  done: Promise<void>;
  abort(): void;
  objectStore(name: string): ObjectStore;
}

export interface Database {
  get(store: string, key: unknown): Promise<any>;
  getAll(store: string, range?: unknown, limit?: number): Promise<any[]>;
  getAllFromIndex(store: string, index: string, range?: unknown, limit?: number): Promise<any[]>;
  getAllKeysFromIndex(store: string, index: string, range?: unknown): Promise<any[]>;
  transaction(stores: string[], mode?: "readonly" | "readwrite", options?: { durability: "strict" | "relaxed" }): Transaction;
  createObjectStore(name: string, options?: { keyPath: string | string[] }): ObjectStore;
  close(): void;
}
