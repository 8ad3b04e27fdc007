import { FeedPage } from "./feeding/feed-page.js";
import { FeedingList } from "./feeding/feeding-list.js";
import { FeedingRow } from "./feeding/feeding-row.js";
import { FeedingTray } from "./feeding/feeding-tray.js";
import { DropScale } from "./feeder/drop-scale.js";
import { FeederCard } from "./feeder/feeder-card.js";
import { FeederPage } from "./feeder/feeder-page.js";
import { FoodTiles } from "./feeding/food-tiles.js";
import { MeasureSteps } from "./feeding/measure-steps.js";
import { FishDetail } from "./fish/fish-detail.js";
import { FishPage } from "./fish/fish-page.js";
import { FishRow } from "./fish/fish-row.js";
import { SameFeeding } from "./feeding/same-feeding.js";
import { FirstStart } from "./people/first-start.js";
import { HouseholdPeople } from "./people/household-people.js";
import { HouseholdTools } from "./people/household-tools.js";
import { JoinPage } from "./people/join-page.js";
import { MemberCard } from "./people/member-card.js";
import { OwnData } from "./people/own-data.js";
import { OwnPasskeys } from "./people/own-passkeys.js";
import { OwnPhones } from "./people/own-phones.js";
import { PeoplePage } from "./people/people-page.js";
import { QrCode } from "./people/qr-code.js";
import { ResetPage } from "./people/reset-page.js";
import { PlainAddress } from "./people/plain-address.js";
import { SignIn } from "./people/sign-in.js";
import { TankList } from "./people/tank-list.js";
import { RoundPage } from "./round/round-page.js";
import { RoundRow } from "./round/round-row.js";
import { VisitPlan } from "./round/visit-plan.js";
import { TrustPage } from "./people/trust-page.js";
import { FishAdder } from "./setup/fish-adder.js";
import { RecordForm } from "./setup/record-form.js";
import { HistoryPage } from "./records/history-page.js";
import { RecordsPage } from "./records/records-page.js";
import { SetupPage } from "./setup/setup-page.js";
import { SourcesPage } from "./sources/sources-page.js";
import { DayChart } from "./today/day-chart.js";
import { FindingCard } from "./today/finding-card.js";
import { RationPanel } from "./today/ration-panel.js";
import { TodayPage } from "./today/today-page.js";
import { ConflictList } from "./ui/conflict-list.js";
import { MorePage } from "./ui/more-page.js";
import { NavBar } from "./ui/nav-bar.js";
import { PageHead } from "./ui/page-head.js";
import { RefusedList } from "./ui/refused-list.js";
import { SyncMark } from "./ui/sync-mark.js";
import { TideLine } from "./ui/tide-line.js";
import { UndoToast } from "./ui/undo-toast.js";
import { WhyDialog } from "./ui/why-dialog.js";
import { LevelChart } from "./water/level-chart.js";
import { WeekChart } from "./week/week-chart.js";
import { WeekPage } from "./week/week-page.js";
import { WaterPage } from "./water/water-page.js";
import { WhatIf } from "./water/what-if.js";

/** Every element of our own, by its tag. */
export const elements = {
  "conflict-list": ConflictList,
  "day-chart": DayChart,
  "drop-scale": DropScale,
  "feed-page": FeedPage,
  "feeder-card": FeederCard,
  "feeder-page": FeederPage,
  "feeding-list": FeedingList,
  "feeding-row": FeedingRow,
  "feeding-tray": FeedingTray,
  "finding-card": FindingCard,
  "first-start": FirstStart,
  "fish-adder": FishAdder,
  "fish-detail": FishDetail,
  "fish-page": FishPage,
  "fish-row": FishRow,
  "food-tiles": FoodTiles,
  "household-people": HouseholdPeople,
  "history-page": HistoryPage,
  "household-tools": HouseholdTools,
  "join-page": JoinPage,
  "level-chart": LevelChart,
  "member-card": MemberCard,
  "measure-steps": MeasureSteps,
  "more-page": MorePage,
  "nav-bar": NavBar,
  "own-data": OwnData,
  "own-passkeys": OwnPasskeys,
  "own-phones": OwnPhones,
  "page-head": PageHead,
  "people-page": PeoplePage,
  "qr-code": QrCode,
  "plain-address": PlainAddress,
  "ration-panel": RationPanel,
  "record-form": RecordForm,
  "records-page": RecordsPage,
  "refused-list": RefusedList,
  "reset-page": ResetPage,
  "round-page": RoundPage,
  "round-row": RoundRow,
  "same-feeding": SameFeeding,
  "setup-page": SetupPage,
  "sign-in": SignIn,
  "sources-page": SourcesPage,
  "sync-mark": SyncMark,
  "tank-list": TankList,
  "tide-line": TideLine,
  "today-page": TodayPage,
  "trust-page": TrustPage,
  "undo-toast": UndoToast,
  "visit-plan": VisitPlan,
  "water-page": WaterPage,
  "week-chart": WeekChart,
  "week-page": WeekPage,
  "what-if": WhatIf,
  "why-dialog": WhyDialog,
};
