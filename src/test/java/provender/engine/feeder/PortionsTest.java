package provender.engine.feeder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.engine.feeder.Portions.Dispenser;

class PortionsTest {
  private static final Drops HALF_GRAM = new Drops(10, 1, 0.5, 0.03, 0.95);

  private static Dispenser dispenser(double grams, double share, int times, int least, int most) {
    return new Dispenser(new Drops(10, 1, grams, 0.06 * grams, 0.95), share, Slots.Bounds.alike(times, least, most));
  }

  /** The largest remainder (Hamilton): recomputed rows; 4.6 : 3.3 : 2.1 of 5 and 46.8 : 34.9 : 18.3 of 7. */
  @ParameterizedTest
  @CsvSource({"10,3.75,3.33,2.92,4 3 3", "5,2.30,1.65,1.05,2 2 1", "7,3.276,2.443,1.281,3 3 1"})
  void drops_go_where_the_remainder_is_largest(int drops, double a, double b, double c, String given) {
    int[] spread = Slots.spread(drops, new double[] {a, b, c}, Slots.Bounds.alike(3, 0, 100));
    assertThat(spread[0] + " " + spread[1] + " " + spread[2]).isEqualTo(given);
  }

  /** 3.0 g of 0.505 g drops need 5.941: six drops, 3.030 g. */
  @Test
  void three_grams_of_half_gram_drops_are_six_drops() {
    Portions portions = Portions.of(3, List.of(new Dispenser(new Drops(10, 1, 0.505, 0.03028, 0.95), 1, Slots.Bounds.alike(2, 0, 10))));
    assertThat(portions.drops(0)).isEqualTo(6);
    assertThat(portions.atEachTime(0)).containsExactly(3, 3);
    assertThat(portions.expectedGrams().value()).isEqualTo(3.030, offset(1e-9));
    assertThat(portions.expectedGrams().high()).isEqualTo(new Drops(10, 1, 0.505, 0.03028, 0.95).prediction(6).high(), offset(1e-9));
  }

  @Test
  void ten_thousand_small_cases_are_never_worse_than_every_case_tried_and_bounds_hold() {
    Random random = new Random(20261125);
    for (int round = 0; round < 10_000; round++) {
      List<Dispenser> feeders = new ArrayList<>();
      int count = 1 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        int least = random.nextInt(2);
        feeders.add(dispenser(0.1 + random.nextDouble(), random.nextDouble(), 1 + random.nextInt(3), least, least + random.nextInt(4)));
      }
      double target = 6 * random.nextDouble();
      Portions found = Portions.of(target, feeders);
      assertThat(found.badness()).as("case %d", round).isLessThanOrEqualTo(bestOfAll(target, feeders) + 1e-12);
      for (int i = 0; i < count; i++) {
        int[] times = found.atEachTime(i);
        int sum = 0;
        for (int time = 0; time < times.length; time++) {
          assertThat(times[time]).isBetween(feeders.get(i).bounds().least()[time], feeders.get(i).bounds().most()[time]);
          sum += times[time];
        }
        assertThat(sum).isEqualTo(found.drops(i));
      }
    }
  }

  @Test
  void drops_of_a_day_are_spread_as_evenly_as_every_spread_tried() {
    Random random = new Random(7);
    for (int round = 0; round < 2_000; round++) {
      int[] least = {random.nextInt(3), random.nextInt(3), random.nextInt(3)};
      int[] most = {least[0] + random.nextInt(4), least[1] + random.nextInt(4), least[2] + random.nextInt(4)};
      Slots.Bounds bounds = new Slots.Bounds(least, most);
      int drops = bounds.atLeast() + random.nextInt(bounds.atMost() - bounds.atLeast() + 1);
      double[] quotas = {5 * random.nextDouble(), 5 * random.nextDouble(), 5 * random.nextDouble()};
      double best = Double.MAX_VALUE;
      for (int a = least[0]; a <= most[0]; a++) {
        for (int b = least[1]; b <= most[1]; b++) {
          int c = drops - a - b;
          if (c >= least[2] && c <= most[2]) {
            best = Math.min(best, unevenness(new int[] {a, b, c}, quotas));
          }
        }
      }
      assertThat(unevenness(Slots.spread(drops, quotas, bounds), quotas)).isEqualTo(best, offset(1e-9));
    }
  }

  @Test
  void a_heavy_fall_at_one_time_stays_within_what_the_fish_clear() {
    int most = HALF_GRAM.mostWithin(2, 100);
    assertThat(HALF_GRAM.prediction(most).high()).isLessThanOrEqualTo(2);
    assertThat(HALF_GRAM.prediction(most + 1).high()).isGreaterThan(2);
    assertThat(HALF_GRAM.mostWithin(2, 1)).isEqualTo(1);
    assertThat(HALF_GRAM.mostWithin(0.1, 100)).isZero();
  }

  @Test
  void a_hopper_lasts_as_long_as_its_drops_and_surely_not_longer_than_light_ones() {
    var days = Hopper.days(provender.engine.quantity.Range.exactly(100), HALF_GRAM, 10);
    assertThat(days.value()).isEqualTo(20, offset(1e-9));
    assertThat(HALF_GRAM.prediction(days.low() * 10).high()).isEqualTo(100, offset(1e-6));
    assertThat(HALF_GRAM.prediction(days.high() * 10).low()).isEqualTo(100, offset(1e-6));
    assertThat(Hopper.days(new provender.engine.quantity.Range(0, 5, 5), HALF_GRAM, 10).low()).isZero();
  }

  @Test
  void without_shares_each_feeder_gives_alike() {
    Portions portions = Portions.of(4, List.of(dispenser(0.5, 0, 2, 0, 20), dispenser(0.5, 0, 2, 0, 20)));
    assertThat(portions.drops(0)).isEqualTo(4);
    assertThat(portions.drops(1)).isEqualTo(4);
    assertThat(Portions.of(0, List.of(dispenser(0.5, 1, 2, 0, 20))).expectedGrams().value()).isZero();
  }

  private static double bestOfAll(double target, List<Dispenser> feeders) {
    double shares = feeders.stream().mapToDouble(Dispenser::share).sum();
    double[] best = {Double.MAX_VALUE};
    tryAll(target, shares, feeders, 0, 0, 0, best);
    return best[0];
  }

  private static void tryAll(double target, double shares, List<Dispenser> feeders, int feeder, double grams, double off, double[] best) {
    if (feeder == feeders.size()) {
      best[0] = Math.min(best[0], (grams - target) * (grams - target) + off);
      return;
    }
    Dispenser one = feeders.get(feeder);
    for (int drops = one.bounds().atLeast(); drops <= one.bounds().atMost(); drops++) {
      double its = drops * one.drops().mean();
      double wanted = one.share() / shares * target;
      tryAll(target, shares, feeders, feeder + 1, grams + its, off + (its - wanted) * (its - wanted), best);
    }
  }

  private static double unevenness(int[] drops, double[] quotas) {
    double sum = 0;
    for (int i = 0; i < drops.length; i++) {
      sum += (drops[i] - quotas[i]) * (drops[i] - quotas[i]);
    }
    return sum;
  }
}
