package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.diet.Case;
import provender.engine.diet.DatedMeal;
import provender.engine.diet.DietRules;
import provender.engine.diet.Finding;
import provender.engine.diet.FishDiet;
import provender.engine.diet.Review;
import provender.engine.feeder.AutoFeeder;
import provender.engine.fish.Weight;
import provender.engine.intake.Sightings;
import provender.engine.journal.Conflict;
import provender.engine.journal.Feeding;
import provender.engine.journal.Guarded;
import provender.engine.journal.Journal;
import provender.engine.journal.Tank;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.quantity.Range;
import provender.engine.ration.GrowthCost;
import provender.engine.ration.Model;
import provender.engine.ration.Ration;
import provender.engine.ration.TankFactor;
import provender.engine.reference.Reference;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** One tank at one moment. */
public final class Today {
  /** Feedings of earlier days count for nothing but the day on which the log began. */
  public static final int LOOK_BACK_DAYS = 92;

  private final Reference reference;
  private final Moment now;
  private final Tank tank;
  private final Warmth warmth;
  private final Figure temperature;
  private final List<Feeding> feedings;
  private final List<Feeding> withdrawn;
  private final List<Conflict> conflicts;
  private final List<Guarded> guarded;
  private final List<FeederToday> feeders;
  private final WaterSide water;
  private final Review review;
  private final List<FishToday> fish = new ArrayList<>();
  private final List<Ration.Eater> table = new ArrayList<>();
  private final Figure due;
  private final List<Finding> findings;

  private Today(Journal journal, Reference reference, Moment now) {
    this.reference = reference;
    this.now = now;
    this.tank = journal.tank();
    Constants constants = reference.constants();
    this.warmth = new Warmth(tank, journal.waterTests(), constants);
    this.temperature = warmth.on(now.day());
    Day first = now.day().plus(1 - LOOK_BACK_DAYS);
    this.conflicts = journal.conflicts();
    this.guarded = journal.guarded();
    List<AutoFeeder> running = journal.feeders();
    this.feedings =
        Dispensed.among(upTo(now.day(), journal.feedingsSince(first)), running, first, now, reference);
    this.feeders = FeederToday.all(running, now, reference);
    this.withdrawn = journal.withdrawnSince(first);
    Model model = Model.usual(constants).times(tank.rationFactor());
    double[] celsius = warmth.over(first, LOOK_BACK_DAYS);
    double prior = constants.value(Constant.PREFERENCE_PRIOR_SIGHTINGS);
    Sightings sightings = new Sightings(journal.sightingsSince(first), prior);
    this.review = Review.of(tank.fish(), meals(), sightings, celsius, now.day(), model, constants);
    lineUp(model, constants);
    this.due = Ration.ofAll(table, warmth.reckonedWith(temperature.value()), model);
    Case looked =
        new Case(
            review, reference, tank.usualFoods(), now.day(), begun(journal), temperature.value());
    this.findings = new ArrayList<>(DietRules.findings(looked));
    findings.addAll(new FeederRules(reference, now.day()).findings(feeders));
    this.water = WaterSide.of(tank, feedings, journal, reference, now);
    findings.addAll(new WaterRules(reference, now.day()).findings(water));
    findings.sort(Finding::byWeight);
  }

  /** Reads a journal at a moment of the tank's own clock. */
  public static Today of(Journal journal, Reference reference, Moment now) {
    return new Today(journal, reference, now);
  }

  /** A feeding of a day that has not come yet, from a phone with a wrong clock, waits for its day. */
  private static List<Feeding> upTo(Day today, List<Feeding> feedings) {
    List<Feeding> come = new ArrayList<>();
    for (Feeding feeding : feedings) {
      if (!today.isBefore(feeding.at().day())) {
        come.add(feeding);
      }
    }
    return come;
  }

  private @Nullable Day begun(Journal journal) {
    Day written = journal.firstFeedingDay();
    return written == null && !feedings.isEmpty() ? feedings.get(0).at().day() : written;
  }

  private List<DatedMeal> meals() {
    List<DatedMeal> meals = new ArrayList<>();
    for (Feeding feeding : feedings) {
      meals.add(new DatedMeal(feeding.at().day(), feeding.meal()));
    }
    return meals;
  }

  private void lineUp(Model model, Constants constants) {
    for (FishDiet diet : review.diets()) {
      if (diet.fish().wasHereOn(now.day())) {
        Weight weight = Weight.of(diet.fish(), now.day(), constants);
        Ration.Eater eater =
            new Ration.Eater(
                weight.grams(),
                diet.fish().count(),
                diet.fish().guild().rationFactor(),
                GrowthCost.usualKj(weight.grams().value(), weight.gainGrams(), constants).times(diet.fish().count()));
        Figure its = Ration.of(eater, warmth.reckonedWith(temperature.value()), model);
        fish.add(new FishToday(diet.fish(), weight, weight.isStale(constants), its, diet));
        if (!diet.fish().inIsolation()) {
          table.add(eater);
        }
      }
    }
  }

  public Moment now() {
    return now;
  }

  public Tank tank() {
    return tank;
  }

  public Figure temperature() {
    return temperature;
  }

  public Warmth.Flag temperatureFlag() {
    return warmth.flag(temperature.value());
  }

  /** The display's fish together, in grams; a fish in isolation eats elsewhere and is not in it. */
  public Figure biomass() {
    Range grams = Range.ZERO;
    for (Ration.Eater eater : table) {
      grams = grams.plusUnrelated(eater.grams().range().times(eater.count()));
    }
    Step sum =
        Step.of(
            "biomass", "Σ mass × count", grams.value(), "g", Step.ENTERED, Step.input("lines", table.size(), ""));
    return Figure.of(grams, Basis.ESTIMATED, sum);
  }

  /** Energy due to the display today. */
  public Figure due() {
    return due;
  }

  /** What would change {@link #due()} most. */
  public List<Step.Input> whatMatters() {
    return Ration.whatMatters(table, warmth.reckonedWith(temperature.value()), Model.usual(reference.constants()));
  }

  /** What the weighings of the last weeks say about this tank's own factor; applied by nobody but a steward. */
  public Figure learnedFactor() {
    return TankFactor.learned(evidence(), reference.constants());
  }

  /** How many pairs of weighings it was learned from. */
  public int weighings() {
    return evidence().size();
  }

  private List<TankFactor.Evidence> evidence() {
    return Learning.evidence(review, reference.constants());
  }

  /** Energy given to the display today, by hand or by feeders, less what was left over. */
  public Figure given(boolean byHand, boolean byFeeder) {
    Range kj = Range.ZERO;
    int count = 0;
    for (Feeding feeding : feedings) {
      if (feeding.at().day().equals(now.day()) && (feeding.fromFeeder() ? byFeeder : byHand)) {
        kj = kj.plus(FeedingToday.toDisplay(feeding, tank.fish()));
        count++;
      }
    }
    Step sum =
        Step.of(
            "givenToday", "Σ grams × kJ/g − left over", kj.value(), "kJ", Step.ENTERED, Step.input("feedings", count, ""));
    return Figure.of(kj, Basis.ESTIMATED, sum);
  }

  /** What is still due today; below zero when more was given than was due. */
  public Figure remaining() {
    Figure given = given(true, true);
    Range left = due.range().minus(given.range());
    Step step =
        Step.of(
            "remaining",
            "due − given",
            left.value(),
            "kJ",
            Step.ENTERED,
            Step.input("due", due.value(), "kJ"),
            Step.input("given", given.value(), "kJ"));
    return new Figure(left, Basis.ESTIMATED, due.whyThen(step));
  }

  /** Changes that wait for a person to decide. */
  public List<Conflict> conflicts() {
    return conflicts;
  }

  /** What stands in the fields that can harm. */
  public List<Guarded> guarded() {
    return guarded;
  }

  /** The tank's auto-feeders. */
  public List<FeederToday> feeders() {
    return feeders;
  }

  /** Portions that would make up the dry part of the ration; null where no feeder can be reckoned with. */
  public @Nullable Proposal proposal() {
    return Proposal.of(feeders, due.value() * dryPart());
  }

  /** How long nobody needs to come. */
  public Away away() {
    return Away.of(feeders, fish, reference, now.day());
  }

  /** The part of the ration that is to come dry from feeders. */
  public double dryPart() {
    return Double.isNaN(tank.feederPart()) ? reference.constants().value(Constant.FEEDER_PART) : tank.feederPart();
  }

  /** What feeding does to the water. */
  public WaterSide water() {
    return water;
  }

  public List<FishToday> fish() {
    return fish;
  }

  /** The feedings of the last days, newest first, each with who is reckoned to have eaten what. */
  public List<FeedingToday> feedings(int days) {
    List<FeedingToday> recent = new ArrayList<>();
    for (int i = feedings.size() - 1; i >= 0 && now.day().since(feedings.get(i).at().day()) < days; i--) {
      if (!feedings.get(i).isReckoned()) {
        recent.add(new FeedingToday(feedings.get(i), review.served().get(i), review));
      }
    }
    return recent;
  }

  /** The feedings of the last days that were taken back, newest first. */
  public List<Feeding> withdrawn(int days) {
    List<Feeding> recent = new ArrayList<>();
    for (int i = withdrawn.size() - 1; i >= 0 && now.day().since(withdrawn.get(i).at().day()) < days; i--) {
      recent.add(withdrawn.get(i));
    }
    return recent;
  }

  /** The last one somebody wrote down. */
  public @Nullable Feeding lastFeeding() {
    for (int i = feedings.size() - 1; i >= 0; i--) {
      if (!feedings.get(i).isReckoned()) {
        return feedings.get(i);
      }
    }
    return null;
  }

  public List<Finding> findings() {
    return findings;
  }

  public Review review() {
    return review;
  }

  public Reference reference() {
    return reference;
  }

  /** Days a diet's shares are reckoned over. */
  public int windowDays() {
    return (int) reference.constants().value(Constant.WINDOW_DAYS);
  }
}
