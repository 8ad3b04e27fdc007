package provender.engine.today;

import java.util.List;
import provender.engine.food.Composition;
import provender.engine.food.Food;
import provender.engine.intake.Helping;
import provender.engine.journal.Exchange;
import provender.engine.journal.Feeding;
import provender.engine.journal.Journal;
import provender.engine.journal.Tank;
import provender.engine.journal.WaterTest;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.water.Exchanges;
import provender.engine.water.Ions;
import provender.engine.water.Load;

/** What feeding does to this tank's water, held against its tests. */
public final class WaterSide {
  private static final int MEAN_OVER_DAYS = 28;
  private static final double HUNDRED_GRAMS = 100;
  private static final double MG = 1000;

  private final Constants constants;
  private final Tank tank;
  private final List<WaterTest> tests;
  private final List<Exchange> exchanges;
  private final List<Moment> dosings;
  private final Daily byHand;
  private final Daily byFeeders;
  private final IonRun nitrate;
  private final IonRun phosphate;

  private WaterSide(Tank tank, List<Feeding> feedings, Journal journal, Reference reference, Moment now) {
    this.constants = reference.constants();
    this.tank = tank;
    this.tests = journal.waterTests();
    this.exchanges = journal.exchanges();
    this.dosings = journal.dosings();
    this.byHand = daily(feedings, false, now, constants);
    this.byFeeders = daily(feedings, true, now, constants);
    double proteinPerDay = byHand.protein() + byFeeders.protein();
    double phosphorusPerDay = byHand.phosphorus() + byFeeders.phosphorus();
    Ions ions = Ions.of(constants);
    double perProtein = ions.nitratePerNitrogen() * Load.nitrogen(1, constants) * MG / tank.volumeLitres();
    double perPhosphorus = ions.phosphatePerPhosphorus() * MG / tank.volumeLitres();
    this.nitrate =
        new IonRun(
            new IonRun.Ion("nitrate", WaterTest::nitrateMgL, Exchange::sourceNitrateMgL, f -> protein(f) * perProtein),
            tank.volumeLitres(), tests, exchanges, feedings, proteinPerDay * perProtein, now, constants);
    this.phosphate =
        new IonRun(
            new IonRun.Ion(
                "phosphate", WaterTest::phosphateMgL, Exchange::sourcePhosphateMgL, f -> phosphorus(f, constants) * perPhosphorus),
            tank.volumeLitres(), tests, exchanges, feedings, phosphorusPerDay * perPhosphorus, now, constants);
  }

  static WaterSide of(Tank tank, List<Feeding> feedings, Journal journal, Reference reference, Moment now) {
    return new WaterSide(tank, feedings, journal, reference, now);
  }

  /** Food of a usual day, in grams as offered, with what is in it. */
  public record Daily(double grams, double protein, double phosphorus) {}

  /** The mean of the last whole weeks, counted from the first feeding of any kind. */
  private static Daily daily(List<Feeding> feedings, boolean fromFeeder, Moment now, Constants constants) {
    double grams = 0;
    double protein = 0;
    double phosphorus = 0;
    int days = 1;
    for (Feeding feeding : feedings) {
      int ago = now.day().since(feeding.at().day());
      if (ago >= 1 && ago <= MEAN_OVER_DAYS) {
        days = Math.max(days, ago);
        if (feeding.fromFeeder() == fromFeeder) {
          grams += grams(feeding);
          protein += protein(feeding);
          phosphorus += phosphorus(feeding, constants);
        }
      }
    }
    return new Daily(grams / days, protein / days, phosphorus / days);
  }

  private static double grams(Feeding feeding) {
    double grams = 0;
    for (Helping helping : feeding.meal().helpings()) {
      grams += helping.grams();
    }
    return grams;
  }

  /** Protein of all that was given: what nobody ate rots in the tank too. */
  private static double protein(Feeding feeding) {
    double protein = 0;
    for (Helping helping : feeding.meal().helpings()) {
      Food food = helping.food();
      if (food != null) {
        protein += helping.grams() * food.edibleFraction() * food.composition().proteinGrams() / HUNDRED_GRAMS;
      }
    }
    return protein;
  }

  private static double phosphorus(Feeding feeding, Constants constants) {
    double phosphorus = 0;
    for (Helping helping : feeding.meal().helpings()) {
      Food food = helping.food();
      if (food != null) {
        Composition is = food.composition();
        double per100 =
            Double.isNaN(is.phosphorusMg())
                ? is.proteinGrams() * constants.value(Constant.PHOSPHORUS_PER_PROTEIN)
                : is.phosphorusMg() / MG;
        phosphorus += helping.grams() * food.edibleFraction() * per100 / HUNDRED_GRAMS;
      }
    }
    return phosphorus;
  }

  /** Net litres, NaN where nobody said. */
  public double volumeLitres() {
    return tank.volumeLitres();
  }

  public boolean knowsVolume() {
    return tank.volumeLitres() > 0;
  }

  public Daily byHand() {
    return byHand;
  }

  public Daily byFeeders() {
    return byFeeders;
  }

  public IonRun nitrate() {
    return nitrate;
  }

  public IonRun phosphate() {
    return phosphate;
  }

  public List<WaterTest> tests() {
    return tests;
  }

  public List<Exchange> exchanges() {
    return exchanges;
  }

  public List<Moment> dosings() {
    return dosings;
  }

  /** What a steward wishes nitrate to stay below, else what most keep it below. */
  public double wantedNitrate() {
    return Double.isNaN(tank.wantedNitrateMgL()) ? constants.value(Constant.WANTED_NITRATE) : tank.wantedNitrateMgL();
  }

  public double wantedPhosphate() {
    return Double.isNaN(tank.wantedPhosphateMgL()) ? constants.value(Constant.WANTED_PHOSPHATE) : tank.wantedPhosphateMgL();
  }

  /** Whether somebody wished so, or it is only what most do. */
  public boolean isWished() {
    return !Double.isNaN(tank.wantedNitrateMgL()) || !Double.isNaN(tank.wantedPhosphateMgL());
  }

  /** The exchanges of the last quarter as a habit; none where there were fewer than two. */
  public Exchanges habit() {
    return nitrate.habit();
  }
}
