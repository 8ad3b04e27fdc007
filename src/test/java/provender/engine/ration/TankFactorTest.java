package provender.engine.ration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static provender.engine.Log.helping;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.ration.TankFactor.Evidence;
import provender.engine.source.Constants;
import provender.engine.source.Figure;

/** Keeping practice: a prior of 0.35 and 0.40 for one pair of weighings, both on the logarithm; checked against the normal update worked by hand. */
class TankFactorTest {
  private static final Constants CONSTANTS = Log.REFERENCE.constants();

  @Test
  void without_weighings_the_prior_stands_alone_around_one() {
    Figure factor = TankFactor.learned(List.of(), CONSTANTS);
    assertThat(factor.value()).isEqualTo(1);
    assertThat(factor.range().low()).isEqualTo(Math.exp(-1.959963984540054 * 0.35), offset(1e-12));
    assertThat(factor.range().high()).isEqualTo(Math.exp(1.959963984540054 * 0.35), offset(1e-12));
    assertThat(factor.why().get(0).inputs().get(0).value()).isZero();
  }

  /** ln 2 weighed 1/0.16 against a prior weighed 1/0.1225: mean 0.6931 × 6.25 / 14.4133, sd 1/√14.4133. */
  @Test
  void one_fish_that_held_its_weight_on_twice_the_ration_moves_it_part_of_the_way() {
    Figure factor = TankFactor.learned(List.of(new Evidence(200, 100, 150, 0)), CONSTANTS);
    double mean = Math.log(2) * 6.25 / (6.25 + 1 / 0.1225);
    double sd = 1 / Math.sqrt(6.25 + 1 / 0.1225);
    assertThat(factor.value()).isEqualTo(Math.exp(mean), offset(1e-9));
    assertThat(factor.range().low()).isEqualTo(Math.exp(mean - 1.959963984540054 * sd), offset(1e-9));
    assertThat(factor.range().high()).isEqualTo(Math.exp(mean + 1.959963984540054 * sd), offset(1e-9));
    assertThat(factor.why().get(0).inputs().get(0).value()).isEqualTo(1);
  }

  @Test
  void what_went_into_growth_was_not_needed_and_what_a_loss_gave_was() {
    double price = 4.7 * Math.pow(100, 0.138) / 0.67;
    assertThat(new Evidence(100, 80, 100, 2).ratio(CONSTANTS)).isEqualTo((100 - 2 * price) / 80, offset(1e-12));
    assertThat(new Evidence(100, 80, 100, -2).ratio(CONSTANTS)).isEqualTo((100 + 2 * 8) / 80.0, offset(1e-12));
    assertThat(new Evidence(100, 80, 100, 0).ratio(CONSTANTS)).isEqualTo(1.25);
  }

  @Test
  void a_fish_that_cannot_have_lived_on_what_it_got_teaches_nothing() {
    assertThat(TankFactor.learned(List.of(new Evidence(1, 80, 100, 50), new Evidence(0, 80, 100, 0)), CONSTANTS).value()).isEqualTo(1);
  }

  /** Two weighings a fortnight apart of the only fish at the table: it got 14 × 0.8 g of nori and grew by 4 g. */
  @Test
  void weighings_in_the_log_are_gathered_when_they_lie_far_enough_apart() {
    Log log = new Log().tank(27, "nori_dried").fish("tang", "Zebrasoma flavescens", 100)
        .fedDaily(0, 20, "09:00", helping("nori_dried", 0.8))
        .saw(1, "tang", "weight", Map.of("grams", 100.0)).saw(15, "tang", "weight", Map.of("grams", 104.0));
    Map<?, ?> ration = (Map<?, ?>) log.today(20, "20:00").get("ration");
    double got = 14 * 0.8 * kjPerGramOfNori();
    double due = 14 * 1.3 * 40 * Math.pow(0.1, 0.8);
    double price = 4.7 * Math.pow(102, 0.138) / 0.67;
    double mean = Math.log((got - 4 * price) / due) * 6.25 / (6.25 + 1 / 0.1225);
    assertThat(((Map<?, ?>) ration.get("learned")).get("value")).asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.DOUBLE)
        .isEqualTo(Math.exp(mean), offset(1e-6));
    assertThat(ration.get("weighings")).isEqualTo(1.0);
  }

  @Test
  void weighings_thirteen_days_apart_are_not() {
    Log log = new Log().tank(27, "nori_dried").fish("tang", "Zebrasoma flavescens", 100)
        .fedDaily(0, 20, "09:00", helping("nori_dried", 0.8))
        .saw(5, "tang", "weight", Map.of("grams", 100.0)).saw(18, "tang", "weight", Map.of("grams", 104.0));
    assertThat(((Map<?, ?>) log.today(20, "20:00").get("ration")).get("weighings")).isEqualTo(0.0);
  }

  private static double kjPerGramOfNori() {
    return java.util.Objects.requireNonNull(Log.REFERENCE.food("nori_dried")).kjPerGram();
  }
}
