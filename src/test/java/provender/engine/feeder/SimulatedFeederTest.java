package provender.engine.feeder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.feeder.Reconciled.Verdict;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** A feeder whose true mean and spread are known to the simulation and not to the engine; seeded, so each run is the same. */
class SimulatedFeederTest {
  private static final int RUNS = 4_000;
  private static final double MEAN = 0.5;
  private static final double SPREAD = 0.06;
  private static final int DROPS_A_FILL = 300;
  private static final Constants CONSTANTS = Log.REFERENCE.constants();

  @Test
  void intervals_of_95_percent_hold_the_mean_and_the_next_drops_in_93_to_97_percent_of_runs() {
    assertThat(part(run -> {
      Random random = new Random(run);
      return holds(weighed(random, 10).interval(), MEAN);
    })).isBetween(0.93, 0.97);
    assertThat(part(run -> {
      Random random = new Random(run);
      Drops drops = weighed(random, 10);
      return holds(drops.prediction(8), fall(random, 8, 1));
    })).isBetween(0.93, 0.97);
  }

  @Test
  void a_feeder_that_works_is_accused_in_less_than_one_fill_of_a_hundred() {
    assertThat(part(run -> {
      Random random = new Random(run);
      return verdict(random, weighed(random, 10), 1) != Verdict.AS_EXPECTED;
    })).isLessThan(0.01);
  }

  @Test
  void a_feeder_that_lets_through_half_is_found_within_two_fills_in_95_percent_of_runs() {
    assertThat(part(run -> {
      Random random = new Random(run);
      Drops drops = weighed(random, 10);
      return verdict(random, drops, 0.5) == Verdict.JAM || verdict(random, drops, 0.5) == Verdict.JAM;
    })).isGreaterThan(0.95);
  }

  @Test
  void drops_a_third_heavier_after_a_change_of_food_are_drift_and_no_jam() {
    assertThat(part(run -> {
      Random random = new Random(run);
      return verdict(random, weighed(random, 20), 1.35) == Verdict.DRIFT;
    })).isGreaterThan(0.95);
  }

  private static Verdict verdict(Random random, Drops drops, double throughput) {
    double used = fall(random, DROPS_A_FILL, throughput);
    return Reconciled.of(used, DROPS_A_FILL, drops)
        .verdict(CONSTANTS.value(Constant.FEEDER_ALARM_CHANCE), CONSTANTS.value(Constant.FEEDER_JAM_RATIO));
  }

  private static Drops weighed(Random random, int weighings) {
    return Drops.weighed(IntStream.range(0, weighings).mapToDouble(i -> fall(random, 1, 1)).toArray(), 1, 0.95);
  }

  private static double fall(Random random, int drops, double throughput) {
    return IntStream.range(0, drops).mapToDouble(i -> throughput * (MEAN + SPREAD * random.nextGaussian())).sum();
  }

  private static boolean holds(provender.engine.quantity.Range range, double value) {
    return range.low() <= value && value <= range.high();
  }

  private static double part(IntPredicate holds) {
    return IntStream.range(0, RUNS).filter(holds).count() / (double) RUNS;
  }
}
