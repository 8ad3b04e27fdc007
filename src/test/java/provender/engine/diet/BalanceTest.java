package provender.engine.diet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import provender.engine.diet.Balance.Verdict;
import provender.engine.fish.Band;
import provender.engine.food.Component;
import provender.engine.quantity.Day;

class BalanceTest {
  private static final Band BAND = new Band(Component.ALGAE, 0.4, 0.5, 0.8, 3, "x");
  private static final Day TODAY = Day.parse("2026-06-15");

  private static Balance of(double share, double daysSince) {
    return new Balance(BAND, share, daysSince);
  }

  @Test
  void inside_the_band_with_its_edges_all_is_well() {
    assertThat(of(0.4, 3).verdict(28)).isEqualTo(Verdict.IN_BAND);
    assertThat(of(0.8, 0).verdict(28)).isEqualTo(Verdict.IN_BAND);
    assertThat(of(0.39, 3).verdict(28)).isEqualTo(Verdict.TOO_LITTLE);
    assertThat(of(0.81, 3).verdict(28)).isEqualTo(Verdict.TOO_MUCH);
    assertThat(of(0.5, 4).verdict(28)).isEqualTo(Verdict.TOO_LONG_AGO);
    assertThat(of(0, Double.NaN).verdict(28)).isEqualTo(Verdict.TOO_LONG_AGO);
    assertThat(of(0.5, Double.NaN).verdict(3)).isEqualTo(Verdict.IN_BAND);
    assertThat(of(Double.NaN, Double.NaN).verdict(28)).isEqualTo(Verdict.NOTHING_EATEN);
  }

  @Test
  void the_further_outside_the_heavier_and_too_long_ago_before_too_little_before_too_much() {
    assertThat(of(0.5, 6).weight(28)).isEqualTo(2 + 6.0 / 3, offset(1e-12));
    assertThat(of(0.5, Double.NaN).weight(28)).isEqualTo(2 + 28.0 / 3, offset(1e-12));
    assertThat(of(0.1, 1).weight(28)).isEqualTo(1.75, offset(1e-12));
    assertThat(of(1, 1).weight(28)).isEqualTo(0.25, offset(1e-12));
    assertThat(of(0.5, 1).weight(28)).isZero();
    assertThat(Balance.ordered(List.of(of(0.5, 1), of(1, 1), of(0.1, 1), of(0.5, 6)), 28)).extracting(Balance::share, Balance::daysSince)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(0.5, 6.0), org.assertj.core.groups.Tuple.tuple(0.1, 1.0),
            org.assertj.core.groups.Tuple.tuple(1.0, 1.0), org.assertj.core.groups.Tuple.tuple(0.5, 1.0));
  }

  @Test
  void only_what_was_eaten_within_the_window_counts() {
    Intake intake = new Intake(TODAY, 7);
    double[] algae = new double[Component.values().length];
    algae[Component.ALGAE.ordinal()] = 0.75;
    intake.ate(TODAY.plus(1), 9, algae, List.of());
    intake.ate(TODAY.plus(-7), 9, algae, List.of());
    assertThat(intake.dryGrams()).isZero();
    assertThat(intake.share(Component.ALGAE)).isNaN();
    assertThat(intake.daysSince(Component.ALGAE)).isNaN();
    intake.ate(TODAY.plus(-6), 2, algae, List.of("thiamine"));
    intake.ate(TODAY.plus(-4), 2, algae, List.of("thiamine", "vitamin_e"));
    intake.ate(TODAY, 1, new double[Component.values().length], List.of());
    intake.ate(TODAY, 0, algae, List.of("nothing"));
    assertThat(intake.dryGrams()).isEqualTo(5);
    assertThat(intake.share(Component.ALGAE)).isEqualTo(0.6, offset(1e-12));
    assertThat(intake.daysSince(Component.ALGAE)).isEqualTo(4);
    assertThat(intake.daysSince(Component.SPONGE)).isNaN();
    assertThat(intake.supplements()).containsExactly(org.assertj.core.api.Assertions.entry("thiamine", 2.0), org.assertj.core.api.Assertions.entry("vitamin_e", 1.0));
  }
}
